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
            throw BookException.ofBackup(new BackupSaid.NoFolder(String.valueOf(folder)), null);
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
            throw BookException.ofBackup(new BackupSaid.NotWritten(target.toString()), e);
        }
    }

    public static Restored restore(Path backup, Path folder) {
        if (!Files.isRegularFile(backup) || !Files.isReadable(backup)) {
            throw BookException.ofBackup(new BackupSaid.NoBackup(backup.toString()), null);
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
            throw new BookException(new BackupSaid.NotPutInto(folder.toString()), e);
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
                throw BookException.ofBackup(new BackupSaid.NotSound(backup.toString(), problems.getFirst()), null);
            }
            return new Restored(book.read(BookCounts::of), sealed);
        } catch (BookException e) {
            throw BookException.ofBackup(e.said(), e);
        }
    }

    /** Looks at the book where it will be used. It stays, whatever is found: another process may have begun to use it. */
    private static void confirm(Path place, BookCounts expected) {
        try (var book = BookFile.openFile(place, place)) {
            if (!BookCheck.problems(book).isEmpty()
                    || !book.read(BookCounts::of).equals(expected)) {
                throw new BookException(new BackupSaid.NotAsBackedUp(place.toString()));
            }
        }
    }

    private static BookException alreadyThere(Path target) {
        return BookException.ofBackup(new BackupSaid.ThereAlready(target.toString()), null);
    }

    private static BookException hasBook(Path folder) {
        return new BookException(new BackupSaid.HasBook(folder.toString()));
    }
}
