package cornerbook.app.book.backup;

import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.BookFile;
import cornerbook.app.book.store.BookStore;
import cornerbook.app.book.store.NewBook;
import cornerbook.app.file.OwnerOnly;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Copies a book out and in. A copy appears under its name only when it is whole. */
public final class BookBackup {
    private BookBackup() {}

    public static void write(BookStore book, Path target) {
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
                OwnerOnly.createFile(unfinished);
                book.copyTo(unfinished, target);
                BackupSeal.put(unfinished);
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

    public static Restored restore(Path backup, Path folder) {
        if (!Files.isRegularFile(backup) || !Files.isReadable(backup)) {
            throw BookException.ofBackup(
                    "There is no file %s that can be read, expected a backup of a book".formatted(backup), null);
        }
        var place = folder.resolve(BookFile.NAME);
        if (Files.exists(place)) {
            throw hasBook(folder);
        }
        Restored prepared;
        try {
            prepared = NewBook.place(folder, file -> prepare(backup, file));
        } catch (FileAlreadyExistsException e) {
            throw hasBook(folder);
        } catch (IOException e) {
            throw new BookException(
                    "The backup cannot be put into %s, expected a folder that can be written and has room"
                            .formatted(folder),
                    e);
        }
        confirm(place, prepared.counts());
        return prepared;
    }

    /** Without its seal, brought up to date and checked. */
    private static Restored prepare(Path backup, Path file) throws IOException {
        boolean sealed = BackupSeal.copyWithout(backup, file);
        try (var book = BookFile.openFile(file, backup)) {
            book.letReadersAndWriterWorkTogether();
            var problems = BookCheck.problems(book);
            if (!problems.isEmpty()) {
                throw BookException.ofBackup(
                        "The backup %s is not sound: %s".formatted(backup, problems.getFirst()), null);
            }
            return new Restored(book.read(BookCounts::of), sealed);
        } catch (BookException e) {
            throw BookException.ofBackup(String.valueOf(e.getMessage()), e);
        }
    }

    /** Looks at the book where it will be used. It stays, whatever is found: another process may have begun to use it. */
    private static void confirm(Path place, BookCounts expected) {
        try (var book = BookFile.openFile(place, place)) {
            if (!BookCheck.problems(book).isEmpty()
                    || !book.read(BookCounts::of).equals(expected)) {
                throw new BookException(
                        "The book %s is not what the backup has, as the disk may fail; do not use it, and restore into another folder"
                                .formatted(place));
            }
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
