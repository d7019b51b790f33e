package cornerbook.app.book.store;

import cornerbook.core.say.Said;
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
    private final Path book;

    /** Of the book that people know by this path. */
    BookFailure(Path book) {
        this.book = book;
    }

    static BookException ofFolder(@Nullable Path folder, Throwable cause) {
        return new BookException(new StoreSaid.FolderUnusable(String.valueOf(folder)), cause);
    }

    BookException noBook() {
        return new BookException(new StoreSaid.NoBook(book.toString()));
    }

    /** Of a value in the file that can be nowhere. */
    BookException damaged(Throwable cause) {
        return new BookException(sentence(SQLiteErrorCode.SQLITE_CORRUPT), cause);
    }

    BookException replaced() {
        return BookException.failure(new StoreSaid.TakenAway(book.toString()));
    }

    BookException leftAside(Path log) {
        return BookException.failure(new StoreSaid.LeftAside(book.toString(), log.toString(), BookFile.NAME + "-wal"));
    }

    BookException closed() {
        return BookException.failure(new StoreSaid.Closed(book.toString()));
    }

    static BookException newer(Object book, String version) {
        return new BookException(new StoreSaid.Newer(book.toString(), version));
    }

    BookException explain(Throwable failure) {
        var code = findSqlite(failure).map(BookFailure::primaryCode).orElse(SQLiteErrorCode.UNKNOWN_ERROR);
        return code == SQLiteErrorCode.SQLITE_CONSTRAINT
                ? BookException.refusal(new StoreSaid.BreaksRule(), failure)
                : new BookException(sentence(code), failure);
    }

    /** The database's own words name tables and statements, which help nobody but who has the log. */
    private Said sentence(SQLiteErrorCode code) {
        var name = book.toString();
        return switch (code) {
            case SQLITE_BUSY, SQLITE_LOCKED -> new StoreSaid.Locked(name);
            case SQLITE_NOTADB, SQLITE_CORRUPT -> new StoreSaid.Damaged(name);
            case SQLITE_READONLY, SQLITE_PERM -> new StoreSaid.ReadOnly(name);
            case SQLITE_FULL -> new StoreSaid.DiskFull(name);
            case SQLITE_CANTOPEN -> new StoreSaid.CannotOpen(name);
            case SQLITE_IOERR -> new StoreSaid.DiskFails(name);
            default -> new StoreSaid.Unknown(name, Said.verbatim(code.name()));
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
