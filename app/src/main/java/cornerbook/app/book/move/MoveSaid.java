package cornerbook.app.book.move;

import cornerbook.core.say.Said;

/** What people are told when a book cannot be moved. */
public interface MoveSaid extends Said {
    record HasBook(String folder) implements MoveSaid {}

    record HasEntries(String book) implements MoveSaid {}

    record NotTheSame(String book, String table) implements MoveSaid {}
}
