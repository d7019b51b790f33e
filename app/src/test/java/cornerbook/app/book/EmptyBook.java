package cornerbook.app.book;

import cornerbook.app.book.store.BookFile;
import cornerbook.app.book.store.TemplateBook;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A book without entries that is made once and copied: the migrations, one after the other, take longer than most tests. Books
 * that are made as a shop makes them are those of {@link BookTest} and of the commands.
 */
public final class EmptyBook {
    private EmptyBook() {}

    /** Opens the book in a folder, as {@link Book#open}; where there is none, puts an empty one there. */
    public static Book open(Path folder) {
        var file = folder.resolve(BookFile.NAME);
        if (!Files.exists(file)) {
            try {
                Files.createDirectories(folder);
                Files.write(file, Made.CONTENT);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return Book.open(folder);
    }

    /** The file that a closed book leaves: a copy made by the book itself has lost how readers and writer work together. */
    private static final class Made {
        private static final byte[] CONTENT = make();

        private static byte[] make() {
            var folder = TemplateBook.newFolder();
            try {
                Book.open(folder).close();
                return Files.readAllBytes(folder.resolve(BookFile.NAME));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } finally {
                TemplateBook.delete(folder);
            }
        }
    }
}
