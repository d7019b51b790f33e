package cornerbook.app.book;

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
    /** Class of SQLSTATE (ISO/IEC 9075-2, integrity constraint violation). */
    private static final String BROKEN_RULE = "23";

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

    static BookException newer(Object book, String version) {
        return new BookException(
                "The book %s has the form %s of a newer Cornerbook, which this one does not know; use the newer one"
                        .formatted(book, version));
    }

    static String unknown(Object book, Throwable failure) {
        return "The book %s cannot be used: %s".formatted(book, firstLine(failure));
    }

    BookException explain(Throwable failure) {
        return new BookException(
                findSqlite(failure).map(this::sentence).orElseGet(() -> unknown(book, failure)), failure);
    }

    private String sentence(SQLiteException failure) {
        return switch (primaryCode(failure)) {
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
            case SQLITE_CONSTRAINT ->
                "The book refuses this, for it is there already or breaks a rule: %s".formatted(firstLine(failure));
            default -> unknown(book, failure);
        };
    }

    /** Whether what was written broke a rule of the tables, which it would do again. */
    static boolean isOfARule(Throwable failure) {
        return Stream.iterate(failure, Objects::nonNull, Throwable::getCause)
                .anyMatch(each -> (each instanceof SQLiteException sqlite
                                && primaryCode(sqlite) == SQLiteErrorCode.SQLITE_CONSTRAINT)
                        || (each instanceof SQLException sql
                                && String.valueOf(sql.getSQLState()).startsWith(BROKEN_RULE)));
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

    private static String firstLine(Throwable failure) {
        return String.valueOf(failure.getMessage()).lines().findFirst().orElse("no reason given");
    }
}
