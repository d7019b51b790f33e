package cornerbook.app.book;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Prepares a book beside its place and moves it there when it is whole, so that a failure leaves nothing behind. */
final class NewBook {
    private NewBook() {}

    /** What turns the path of a file that is not there into a sound book. */
    interface Preparation {
        void prepare(Path file) throws IOException;
    }

    /**
     * Puts a book into a folder; makes the folder when it is not there.
     *
     * @throws FileAlreadyExistsException when another process was faster
     */
    static void place(Path folder, Preparation preparation) throws IOException {
        boolean folderIsNew = Files.notExists(folder);
        Files.createDirectories(folder);
        try {
            var trial = Files.createTempDirectory(folder, "new-book");
            var file = trial.resolve(BookFile.NAME);
            try {
                preparation.prepare(file);
                Files.move(file, folder.resolve(BookFile.NAME));
                folderIsNew = false;
            } finally {
                Files.deleteIfExists(file);
                Files.deleteIfExists(trial.resolve(BookFile.NAME + "-wal"));
                Files.deleteIfExists(trial.resolve(BookFile.NAME + "-shm"));
                Files.deleteIfExists(trial);
            }
        } finally {
            if (folderIsNew) {
                Files.deleteIfExists(folder);
            }
        }
    }
}
