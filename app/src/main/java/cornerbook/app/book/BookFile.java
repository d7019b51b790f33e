package cornerbook.app.book;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Function;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** The SQLite file of a book: opens it, migrates it, runs transactions, and turns its failures into sentences. */
final class BookFile {
    static final String NAME = "book.sqlite";
    private static final int BUSY_MILLISECONDS = 3000;

    private final Path file;
    private final Jdbi jdbi;
    private final SQLiteDataSource source;

    private BookFile(Path file, SQLiteDataSource source) {
        this.file = file;
        this.source = source;
        this.jdbi = Jdbi.create(source);
    }

    static BookFile open(Path folder) {
        var file = folder.resolve(NAME);
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new BookException(
                    "The folder %s cannot be made or used, expected one that can be written".formatted(folder), e);
        }
        var book = new BookFile(file, source(file, BUSY_MILLISECONDS));
        book.migrate();
        return book;
    }

    static SQLiteDataSource source(Path file, int busyMilliseconds) {
        var config = new SQLiteConfig();
        config.enforceForeignKeys(true);
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setBusyTimeout(busyMilliseconds);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        var source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file);
        return source;
    }

    private void migrate() {
        try {
            Flyway.configure()
                    .dataSource(source)
                    .locations("classpath:cornerbook/app/book/migration")
                    .load()
                    .migrate();
        } catch (FlywayException e) {
            throw explain(e);
        }
    }

    <T> T read(Function<Handle, T> work) {
        try {
            return jdbi.withHandle(work::apply);
        } catch (JdbiException e) {
            throw explain(e);
        }
    }

    /** Runs the work in one transaction that is on the disk when this returns. */
    synchronized <T> T write(Function<Handle, T> work) {
        try {
            return jdbi.inTransaction(work::apply);
        } catch (JdbiException e) {
            throw explain(e);
        }
    }

    Path file() {
        return file;
    }

    private BookException explain(RuntimeException failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLiteException sqlite) {
                return new BookException(sentence(sqlite), failure);
            }
        }
        return new BookException("The book %s cannot be used: %s".formatted(file, firstLine(failure)), failure);
    }

    private String sentence(SQLiteException failure) {
        int code = failure.getResultCode().code & 0xff;
        if (code == SQLiteErrorCode.SQLITE_BUSY.code || code == SQLiteErrorCode.SQLITE_LOCKED.code) {
            return "The book %s is locked by another program; close that one or try again".formatted(file);
        }
        if (code == SQLiteErrorCode.SQLITE_NOTADB.code || code == SQLiteErrorCode.SQLITE_CORRUPT.code) {
            return "The file %s is damaged or no book; restore a backup into another folder".formatted(file);
        }
        if (code == SQLiteErrorCode.SQLITE_READONLY.code || code == SQLiteErrorCode.SQLITE_PERM.code) {
            return "The book %s can only be read here; make the file and its folder writable".formatted(file);
        }
        if (code == SQLiteErrorCode.SQLITE_FULL.code) {
            return "The disk of the book %s is full; nothing of this was saved, make room and try again"
                    .formatted(file);
        }
        if (code == SQLiteErrorCode.SQLITE_CANTOPEN.code) {
            return "The book %s cannot be opened, expected a file in a folder that can be written".formatted(file);
        }
        if (code == SQLiteErrorCode.SQLITE_CONSTRAINT.code) {
            return "The book refuses this, for it is there already or breaks a rule: %s".formatted(firstLine(failure));
        }
        return "The book %s failed: %s".formatted(file, firstLine(failure));
    }

    private static String firstLine(Throwable failure) {
        return String.valueOf(failure.getMessage()).lines().findFirst().orElse("no reason given");
    }
}
