package cornerbook.app.book;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Copies a book out and in. A copy appears under its name only when it is whole. */
final class BookBackup {
    private BookBackup() {}

    static void write(BookFile book, Path target) {
        if (Files.exists(target)) {
            throw new BookException(
                    "The file %s is there already, expected a new name for the backup".formatted(target));
        }
        var unfinished = beside(target);
        try {
            Files.deleteIfExists(unfinished);
            book.read(handle -> handle.execute("vacuum into ?", unfinished.toString()));
            Files.move(unfinished, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            throw new BookException(
                    "The backup cannot be written to %s, expected a folder that can be written".formatted(target), e);
        }
    }

    static void restore(Path backup, Path folder) {
        if (!Files.isRegularFile(backup)) {
            throw new BookException("The file %s is not there, expected a backup of a book".formatted(backup));
        }
        var target = folder.resolve(BookFile.NAME);
        if (Files.exists(target)) {
            throw new BookException("The folder %s has a book already, expected one without".formatted(folder));
        }
        try {
            Files.createDirectories(folder);
            var trial = Files.createTempDirectory(folder, "restoring");
            var copy = trial.resolve(BookFile.NAME);
            try {
                Files.copy(backup, copy);
                var problems = BookFile.open(trial).read(BookCheck::problems);
                if (!problems.isEmpty()) {
                    throw new BookException("The backup %s is not sound: %s".formatted(backup, problems.getFirst()));
                }
                Files.move(copy, target, StandardCopyOption.ATOMIC_MOVE);
            } finally {
                Files.deleteIfExists(copy);
                Files.deleteIfExists(trial.resolve(BookFile.NAME + "-wal"));
                Files.deleteIfExists(trial.resolve(BookFile.NAME + "-shm"));
                Files.deleteIfExists(trial);
            }
        } catch (IOException e) {
            throw new BookException(
                    "The backup cannot be put into %s, expected a folder that can be written".formatted(folder), e);
        }
    }

    private static Path beside(Path target) {
        return target.resolveSibling(target.getFileName() + ".unfinished");
    }
}
