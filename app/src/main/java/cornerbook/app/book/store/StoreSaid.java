package cornerbook.app.book.store;

import cornerbook.core.say.Said;

/** What people are told of the place where a book is kept. A book is named by its path or its address. */
public interface StoreSaid extends Said {
    record BreaksRule() implements StoreSaid {}

    record FolderUnusable(String folder) implements StoreSaid {}

    record NoBook(String book) implements StoreSaid {}

    record TakenAway(String book) implements StoreSaid {}

    /**
     * The book was replaced.
     *
     * @param log file with the last entries of the one before
     * @param name under which it belongs beside that one
     */
    record LeftAside(String book, String log, String name) implements StoreSaid {}

    record Closed(String book) implements StoreSaid {}

    record Newer(String book, String version) implements StoreSaid {}

    record Unknown(String book, Said code) implements StoreSaid {}

    record Locked(String book) implements StoreSaid {}

    record Damaged(String book) implements StoreSaid {}

    record ReadOnly(String book) implements StoreSaid {}

    record DiskFull(String book) implements StoreSaid {}

    record CannotOpen(String book) implements StoreSaid {}

    record DiskFails(String book) implements StoreSaid {}

    record NoRoomForBackup(String target) implements StoreSaid {}

    record FileDamaged() implements StoreSaid {}

    record LoosePointer(String table, String other) implements StoreSaid {}

    record Leftovers(String folder, String file) implements StoreSaid {}

    record ServedAlready(String folder) implements StoreSaid {}

    record UserBeforeHost(String address, String scheme) implements StoreSaid {}

    record NoAddress(String address, String scheme) implements StoreSaid {}

    record BackedUpByServer(String book) implements StoreSaid {}

    record ValueCannotStand() implements StoreSaid {}

    record PasswordRefused(String book) implements StoreSaid {}

    record NoDatabase(String book) implements StoreSaid {}

    record NotTheOwner(String book) implements StoreSaid {}

    record TooManyConnections(String book) implements StoreSaid {}

    record StopsOrStarts(String book) implements StoreSaid {}

    record NotReached(String book) implements StoreSaid {}

    record AccessRefused(String book) implements StoreSaid {}

    record OnlyRead(String book) implements StoreSaid {}

    record Busy(String book) implements StoreSaid {}

    record NoRoom(String book) implements StoreSaid {}

    record PostgresqlCode(String state) implements StoreSaid {}

    record CarTaken(String car) implements StoreSaid {}

    record WheelTaken(String wheel, String car, String other) implements StoreSaid {}

    record VisitTaken(String visit, String car, String other) implements StoreSaid {}

    record ReadingTaken(String reading, String visit, String other) implements StoreSaid {}
}
