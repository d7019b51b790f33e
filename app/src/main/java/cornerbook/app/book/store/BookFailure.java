package cornerbook.app.book.store;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Turns what SQLite reports about a book into one sentence that says where, what, and what to do. */
final class BookFailure {
    /** What a constraint or a trigger of the database has refused. */
    static final String REFUSED =
            "The book refuses this, for it is there already or breaks a rule of the book; nothing of it was saved";

    private final Path book;

    /** Of the book that people know by this path. */
    BookFailure(Path book) {
        this.book = book;
    }

    static BookException ofFolder(@Nullable Path folder, Throwable cause) {
        return new BookException(
                "The folder %s cannot be made or used, expected one that can be written".formatted(folder), cause);
    }

    BookException noBook() {
        return new BookException("The file %s is empty or no book, expected one that Cornerbook wrote".formatted(book));
    }

    /** Of a value in the file that can be nowhere. */
    BookException damaged(Throwable cause) {
        return new BookException(sentence(SQLiteErrorCode.SQLITE_CORRUPT), cause);
    }

    BookException replaced() {
        return BookException.failure(
                "The book %s was removed or replaced while Cornerbook had it open, and nothing of this was saved; stop Cornerbook, put the book or a backup there, and start it again"
                        .formatted(book));
    }

    BookException leftAside(Path log) {
        return BookException.failure(
                "The book %s was replaced while Cornerbook had it open; the last entries of the one before may be in %s, which belongs beside that one under the name %s-wal"
                        .formatted(book, log, BookFile.NAME));
    }

    BookException closed() {
        return BookException.failure(
                "The book %s is closed, as Cornerbook stops; nothing of this was saved".formatted(book));
    }

    static BookException newer(Object book, String version) {
        return new BookException(
                "The book %s has the form %s of a newer Cornerbook, which this one does not know; use the newer one"
                        .formatted(book, version));
    }

    /** The database's own words name tables and statements, which help nobody but who has the log. */
    static String unknown(Object book, String code) {
        return "The book %s cannot be used, for a reason that has no words here (%s); nothing of this was saved"
                .formatted(book, code);
    }

    BookException explain(Throwable failure) {
        var code = findSqlite(failure).map(BookFailure::primaryCode).orElse(SQLiteErrorCode.UNKNOWN_ERROR);
        return code == SQLiteErrorCode.SQLITE_CONSTRAINT
                ? BookException.refusal(REFUSED, failure)
                : new BookException(sentence(code), failure);
    }

    private String sentence(SQLiteErrorCode code) {
        return switch (code) {
            case SQLITE_BUSY, SQLITE_LOCKED ->
                "The book %s is locked by another program; close that one or try again".formatted(book);
            case SQLITE_NOTADB, SQLITE_CORRUPT ->
                "The file %s is damaged or no book; restore a backup into another folder".formatted(book);
            case SQLITE_READONLY, SQLITE_PERM ->
                "The book %s can only be read here; make the file and its folder writable".formatted(book);
            case SQLITE_FULL ->
                "The disk of the book %s is full; nothing of this was saved, make room and try again".formatted(book);
            case SQLITE_CANTOPEN ->
                "The book %s cannot be opened, expected a file in a folder that can be written".formatted(book);
            case SQLITE_IOERR ->
                "The disk of the book %s fails, or the file is cut short; restore a backup into another folder"
                        .formatted(book);
            default -> unknown(book, code.name());
        };
    }

    /** Whether a copy failed because of the book that was copied, and not because of the copy's own place. */
    static boolean isOfTheBook(SQLException failure) {
        return findSqlite(failure)
                .map(BookFailure::primaryCode)
                .filter(EnumSet.of(
                        SQLiteErrorCode.SQLITE_BUSY,
                        SQLiteErrorCode.SQLITE_LOCKED,
                        SQLiteErrorCode.SQLITE_NOTADB,
                        SQLiteErrorCode.SQLITE_CORRUPT)::contains)
                .isPresent();
    }

    /** SQLite tells the case in the low byte of a longer code. */
    private static SQLiteErrorCode primaryCode(SQLiteException failure) {
        return SQLiteErrorCode.getErrorCode(failure.getResultCode().code & 0xff);
    }

    private static Optional<SQLiteException> findSqlite(Throwable failure) {
        return Stream.iterate(failure, Objects::nonNull, Throwable::getCause)
                .filter(SQLiteException.class::isInstance)
                .map(SQLiteException.class::cast)
                .findFirst();
    }
}
