package cornerbook.app.cli;

import cornerbook.app.book.Book;
import cornerbook.app.book.store.ServerAddress;
import cornerbook.app.log.Log;
import java.nio.file.Path;
import java.util.function.Function;
import picocli.CommandLine;

/** The option that says where the book is. */
final class BookFolder {
    @CommandLine.Option(names = "--data", paramLabel = "${bundle:label-folder}", descriptionKey = "option-data")
    private String place;

    BookFolder() {
        this(Path.of("data", "book"));
    }

    /** With the folder that is meant when none is named. */
    BookFolder(Path folder) {
        this.place = folder.toString();
    }

    /** Where the book is, as it may be shown: an address without a password. */
    String shown() {
        return isOnServer() ? ServerAddress.shown(place) : place;
    }

    /** The folder, for what is only done with one. */
    Path path() {
        if (isOnServer()) {
            throw new CommandFailure(CommandLine.ExitCode.USAGE, new CliSaid.OnServer(shown()));
        }
        return Path.of(place);
    }

    /** Where the certificates for tablets are kept: beside the book, or on this machine when the book is on a server. */
    Path certificates() {
        return ofThisMachine().resolve("certificates");
    }

    /** What belongs to the book and not into it. */
    private Path ofThisMachine() {
        return isOnServer() ? Path.of("data") : path();
    }

    /** Opens the book; makes it when it is not there. The log is kept beside it from now on. */
    Book open() {
        var book = isOnServer() ? Book.onServer(place) : Book.open(path());
        Log.keepIn(ofThisMachine());
        return book;
    }

    /** Makes a book of what is put into it; when that fails, or the program is stopped, there is none. */
    <T> T make(Function<Book, T> fill) {
        T filled = Book.make(path(), fill);
        Log.keepIn(ofThisMachine());
        return filled;
    }

    /** Opens it for the one process that serves it; a server looks after many itself. */
    Book openToServe() {
        var book = isOnServer() ? Book.onServer(place) : Book.openToServe(path());
        Log.keepIn(ofThisMachine());
        return book;
    }

    /** Opens a book that is there. */
    Book openExisting() {
        if (!isThere()) {
            throw new CommandFailure(CommandFailure.BOOK, new CliSaid.NoBook(place));
        }
        return open();
    }

    /** Whether the book is there, or is on a server, which may have it. */
    boolean isThere() {
        return isOnServer() || Book.isIn(path());
    }

    private boolean isOnServer() {
        return ServerAddress.is(place);
    }
}
