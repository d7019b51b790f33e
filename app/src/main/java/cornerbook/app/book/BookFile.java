package cornerbook.app.book;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.function.Function;
import java.util.stream.Stream;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.MigrationState;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.TransactionMode;
import org.sqlite.SQLiteDataSource;

/** The SQLite file of a book: opens it, migrates it, runs transactions, and turns its failures into sentences. */
final class BookFile {
    static final String NAME = "book.sqlite";
    static final int BUSY_MILLISECONDS = 3000;

    private final BookFailure failure;
    private final SQLiteDataSource reading;
    private final SQLiteDataSource writing;
    private final Jdbi readers;
    private final Jdbi writers;

    /** A book that is there; {@code name} is how people know it. */
    private BookFile(Path file, Path name) {
        this(name, source(file, TransactionMode.DEFERRED), source(file, TransactionMode.IMMEDIATE));
    }

    /** For tests that need a source with limits. */
    BookFile(Path name, SQLiteDataSource reading, SQLiteDataSource writing) {
        this.failure = new BookFailure(name);
        this.reading = reading;
        this.writing = writing;
        this.readers = Jdbi.create(reading);
        this.writers = Jdbi.create(writing);
    }

    /** Opens the book in a folder; makes folder and book when they are not there, and brings an older book up to date. */
    static BookFile open(Path folder) {
        var file = folder.resolve(NAME);
        try {
            if (!Files.exists(file)) {
                NewBook.place(folder, unfinished -> new BookFile(unfinished, file).migrate());
            }
        } catch (FileAlreadyExistsException e) {
            // Another process has just made it; it is the one to use. What stands in the way as a folder is told below.
            if (!Files.exists(file)) {
                throw BookFailure.ofFolder(folder, e);
            }
        } catch (IOException e) {
            throw BookFailure.ofFolder(folder, e);
        }
        return openFile(file, file);
    }

    /** Opens the book in a file that is there. */
    static BookFile openFile(Path file, Path name) {
        var book = new BookFile(file, name);
        try {
            if (Files.size(file) == 0) {
                throw book.failure.noBook();
            }
        } catch (IOException e) {
            throw BookFailure.ofFolder(file.toAbsolutePath().getParent(), e);
        }
        book.refuseForeign();
        return book;
    }

    static SQLiteDataSource source(Path file, TransactionMode mode) {
        var config = new SQLiteConfig();
        config.enforceForeignKeys(true);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setBusyTimeout(BUSY_MILLISECONDS);
        config.setTransactionMode(mode);
        var source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file);
        return source;
    }

    /** Refuses what is no book or a newer one before anything is written to it, and migrates an older one. */
    private void refuseForeign() {
        try {
            var migrations = flyway(reading).info();
            var current = migrations.current();
            if (current == null) {
                throw failure.noBook();
            }
            if (Stream.of(migrations.applied()).anyMatch(each -> each.getState() == MigrationState.FUTURE_SUCCESS)) {
                throw failure.newer(String.valueOf(current.getVersion()));
            }
            if (migrations.pending().length > 0) {
                migrate();
            }
        } catch (FlywayException e) {
            throw failure.explain(e);
        }
    }

    private void migrate() {
        try (var connection = writing.getConnection();
                var statement = connection.createStatement()) {
            // Stays with the file: readers and a writer do not wait for each other.
            statement.execute("pragma journal_mode = wal");
        } catch (SQLException e) {
            throw failure.explain(e);
        }
        try {
            flyway(writing).migrate();
        } catch (FlywayException e) {
            throw failure.explain(e);
        }
    }

    private static Flyway flyway(SQLiteDataSource source) {
        return Flyway.configure()
                .dataSource(source)
                .locations("classpath:cornerbook/app/book/migration")
                .load();
    }

    /** Runs the work on the book as it stands at one moment. */
    <T> T read(Function<Handle, T> work) {
        try {
            return readers.inTransaction(work::apply);
        } catch (JdbiException e) {
            throw failure.explain(e);
        }
    }

    /** Runs the work in one transaction that is on the disk when this returns. */
    synchronized <T> T write(Function<Handle, T> work) {
        try {
            return writers.inTransaction(work::apply);
        } catch (JdbiException e) {
            throw failure.explain(e);
        }
    }

    /** Writes a copy of the book, as it stands at one moment, to a file that is not there. */
    void copyTo(Path copy) {
        try (var connection = writing.getConnection();
                var statement = connection.prepareStatement("vacuum into ?")) {
            statement.setString(1, copy.toString());
            statement.execute();
        } catch (SQLException e) {
            throw BookFailure.isOfTheBook(e)
                    ? failure.explain(e)
                    : BookException.ofBackup(
                            "The backup cannot be written to %s, expected a folder that can be written and has room"
                                    .formatted(copy.getParent()),
                            e);
        }
    }
}
