package cornerbook.app.book;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.function.Function;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.TransactionMode;
import org.sqlite.SQLiteDataSource;

/** The SQLite file of a book: opens it, migrates it, runs transactions, and turns its failures into sentences. */
final class BookFile implements BookStore {
    static final String NAME = "book.sqlite";
    private static final String VENDOR = "sqlite";
    private static final int BUSY_MILLISECONDS = 3000;

    private final Path name;
    private final BookFailure failure;
    private final SQLiteDataSource reading;
    private final SQLiteDataSource writing;
    private final Jdbi readers;
    private final Jdbi writers;
    private @Nullable Connection kept;

    /** A book that is there; {@code name} is how people know it. */
    private BookFile(Path file, Path name) {
        this(name, source(file, TransactionMode.DEFERRED), source(file, TransactionMode.IMMEDIATE));
    }

    /** For tests that need a source with limits. */
    BookFile(Path name, SQLiteDataSource reading, SQLiteDataSource writing) {
        this.name = name;
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
                var made = new BookFile(file, file);
                made.keepOpen();
                return made;
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
        book.keepOpen();
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
            var migrations = Migrations.of(reading, VENDOR).info();
            if (migrations.current() == null) {
                throw failure.noBook();
            }
            Migrations.findNewer(migrations).ifPresent(version -> {
                throw BookFailure.newer(name, version);
            });
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
            Migrations.of(writing, VENDOR).migrate();
        } catch (FlywayException e) {
            throw failure.explain(e);
        }
    }

    /** The last connection that closes writes the log back into the file and deletes it: not after each piece of work. */
    private void keepOpen() {
        try {
            var connection = reading.getConnection();
            kept = connection;
            try (var statement = connection.createStatement()) {
                statement.executeQuery("select count(*) from sqlite_schema").close();
            }
        } catch (SQLException e) {
            throw failure.explain(e);
        }
    }

    @Override
    public void close() {
        var connection = kept;
        try {
            if (connection != null) {
                connection.close();
            }
        } catch (SQLException e) {
            throw failure.explain(e);
        }
    }

    @Override
    public <T> T read(Function<Handle, T> work) {
        try {
            return readers.inTransaction(work::apply);
        } catch (JdbiException e) {
            throw failure.explain(e);
        }
    }

    @Override
    public synchronized <T> T write(Function<Handle, T> work) {
        try {
            return writers.inTransaction(work::apply);
        } catch (JdbiException e) {
            throw failure.explain(e);
        }
    }

    @Override
    public void copyTo(Path copy, Path target) {
        try (var connection = writing.getConnection();
                var statement = connection.prepareStatement("vacuum into ?")) {
            statement.setString(1, copy.toString());
            statement.execute();
        } catch (SQLException e) {
            throw BookFailure.isOfTheBook(e)
                    ? failure.explain(e)
                    : BookException.ofBackup(
                            "The backup cannot be written to %s, expected a folder that can be written and has room"
                                    .formatted(target),
                            e);
        }
    }

    @Override
    public List<String> damage(Handle handle) {
        if (!handle.select("pragma integrity_check").mapTo(String.class).list().equals(List.of("ok"))) {
            // What SQLite tells of its pages helps nobody.
            return List.of("The file of the book is damaged; restore a backup into another folder");
        }
        return List.of();
    }

    @Override
    public List<String> loosePointers(Handle handle) {
        return handle.select("pragma foreign_key_check")
                .map((row, context) -> "A row of %s points to a row of %s that is not there"
                        .formatted(row.getString("table"), row.getString("parent")))
                .list();
    }
}
