package cornerbook.app.book;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Copies a book out and in. A copy appears under its name only when it is whole. */
final class BookBackup {
    private BookBackup() {}

    static void write(BookStore book, Path target) {
        if (Files.exists(target)) {
            throw alreadyThere(target);
        }
        var folder = target.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw BookException.ofBackup(
                    "There is no folder %s for the backup, expected one that can be written".formatted(folder), null);
        }
        try {
            var trial = Files.createTempDirectory(folder, "new-backup");
            var unfinished = trial.resolve("unfinished");
            try {
                book.copyTo(unfinished, target);
                Files.move(unfinished, target);
            } finally {
                Files.deleteIfExists(unfinished);
                Files.deleteIfExists(trial);
            }
        } catch (FileAlreadyExistsException e) {
            throw alreadyThere(target);
        } catch (IOException e) {
            throw BookException.ofBackup(
                    "The backup cannot be written to %s, expected a folder that can be written".formatted(target), e);
        }
    }

    static void restore(Path backup, Path folder) {
        if (!Files.isRegularFile(backup)) {
            throw BookException.ofBackup(
                    "The file %s is not there, expected a backup of a book".formatted(backup), null);
        }
        if (Files.exists(folder.resolve(BookFile.NAME))) {
            throw hasBook(folder);
        }
        try {
            NewBook.place(folder, file -> {
                Files.copy(backup, file);
                refuseUnsound(file, backup);
            });
        } catch (FileAlreadyExistsException e) {
            throw hasBook(folder);
        } catch (IOException e) {
            throw new BookException(
                    "The backup cannot be put into %s, expected a folder that can be written".formatted(folder), e);
        }
    }

    private static void refuseUnsound(Path copy, Path backup) {
        try (var book = BookFile.openFile(copy, backup)) {
            var problems = BookCheck.problems(book);
            if (!problems.isEmpty()) {
                throw BookException.ofBackup(
                        "The backup %s is not sound: %s".formatted(backup, problems.getFirst()), null);
            }
        } catch (BookException e) {
            throw BookException.ofBackup(String.valueOf(e.getMessage()), e);
        }
    }

    private static BookException alreadyThere(Path target) {
        return BookException.ofBackup(
                "The file %s is there already, expected a new name for the backup".formatted(target), null);
    }

    private static BookException hasBook(Path folder) {
        return new BookException("The folder %s has a book already, expected one without".formatted(folder));
    }
}
