package cornerbook.app.book.store;

import cornerbook.app.file.OwnerOnly;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Prepares a book beside its place and moves it there when it is whole, so that a failure leaves nothing behind. */
public final class NewBook {
    private NewBook() {}

    /** What turns an empty file into a sound book, and what it tells of it. */
    public interface Preparation<T> {
        T prepare(Path file) throws IOException;
    }

    /**
     * Puts a book into a folder; makes the folder when it is not there.
     *
     * @throws FileAlreadyExistsException when another process was faster
     * @throws BookException when a book that is gone has left its last entries there
     */
    public static <T> T place(Path folder, Preparation<T> preparation) throws IOException {
        refuseLeftovers(folder);
        boolean folderIsNew = Files.notExists(folder);
        OwnerOnly.createFolders(folder);
        try {
            var trial = Files.createTempDirectory(folder, "new-book");
            var file = trial.resolve(BookFile.NAME);
            try {
                OwnerOnly.createFile(file);
                T prepared = preparation.prepare(file);
                Files.move(file, folder.resolve(BookFile.NAME));
                folderIsNew = false;
                return prepared;
            } finally {
                Files.deleteIfExists(file);
                for (var suffix : BookFile.BESIDE) {
                    Files.deleteIfExists(Path.of(file + suffix));
                }
                Files.deleteIfExists(trial);
            }
        } finally {
            if (folderIsNew) {
                Files.deleteIfExists(folder);
            }
        }
    }

    /** SQLite would play them into the new book, and damage it. */
    private static void refuseLeftovers(Path folder) {
        for (var suffix : BookFile.BESIDE) {
            var left = folder.resolve(BookFile.NAME + suffix);
            if (Files.exists(left)) {
                throw new BookException(new StoreSaid.Leftovers(folder.toString(), String.valueOf(left.getFileName())));
            }
        }
    }
}
