package cornerbook.app.cli;

import cornerbook.app.book.Book;
import java.nio.file.Path;
import picocli.CommandLine;

/** The option that says where the book is. */
final class BookFolder {
    @CommandLine.Option(
            names = "--data",
            paramLabel = "FOLDER",
            description = "Folder of the book (default: ${DEFAULT-VALUE}).")
    private Path folder;

    BookFolder() {
        this(Path.of("data", "book"));
    }

    /** With the folder that is meant when none is named. */
    BookFolder(Path folder) {
        this.folder = folder;
    }

    Path path() {
        return folder;
    }

    /** Opens the book; makes it when it is not there. */
    Book open() {
        return Book.open(folder);
    }

    /** Opens a book that is there. */
    Book openExisting() {
        if (!Book.isIn(folder)) {
            throw new CommandFailure(
                    CommandFailure.BOOK, "There is no book in %s, expected one; see --data.".formatted(folder));
        }
        return open();
    }
}
