package cornerbook.app.book.store;

import cornerbook.app.file.OwnerOnly;
import cornerbook.core.say.Said;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import java.util.function.Function;
import java.util.function.Supplier;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.TransactionMode;
import org.sqlite.SQLiteDataSource;
import org.sqlite.SQLiteOpenMode;

/** The SQLite file of a book: opens it, migrates it, runs transactions, and turns its failures into sentences. */
public final class BookFile implements BookStore {
    public static final String NAME = "book.sqlite";
    /** What SQLite keeps beside a file while it works on it: the file is not whole without the first two. */
    static final List<String> BESIDE = List.of("-wal", "-journal", "-shm");

    private static final String VENDOR = "sqlite";
    private static final int BUSY_MILLISECONDS = 3000;

    /** How long closing waits for work that is going on. */
    private static final int CLOSING_SECONDS = 10;

    static {
        DriverFolder.prepare();
    }

    private final Path name;
    private final BookFailure failure;
    private final FilePlace place;
    private final SQLiteDataSource reading;
    private final SQLiteDataSource writing;
    private final Jdbi readers;
    private final Jdbi writers;
    /** Work shares it, closing has it alone. */
    private final ReentrantReadWriteLock use = new ReentrantReadWriteLock();

    private @Nullable Connection kept;
    private volatile boolean closed;

    /** A book that is there; {@code name} is how people know it. */
    private BookFile(Path file, Path name) throws IOException {
        this(file, name, source(file, TransactionMode.DEFERRED), source(file, TransactionMode.IMMEDIATE));
    }

    /** For tests that need a source with limits. */
    BookFile(Path file, Path name, SQLiteDataSource reading, SQLiteDataSource writing) throws IOException {
        this.place = new FilePlace(file);
        this.name = name;
        this.failure = new BookFailure(name);
        this.reading = reading;
        this.writing = writing;
        this.readers = Jdbi.create(reading);
        this.writers = Jdbi.create(writing);
    }

    /** Opens the book in a folder; makes folder and book when they are not there, and brings an older book up to date. */
    public static BookFile open(Path folder) {
        var file = folder.resolve(NAME);
        try {
            if (!Files.exists(file)) {
                NewBook.place(folder, empty -> {
                    make(empty, file).close();
                    return empty;
                });
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

    /**
     * Makes a book in a folder of what is put into it; it appears there when that is done, and not when it fails.
     *
     * @throws BookException when the folder has a book, or cannot take one
     */
    public static <T> T make(Path folder, Function<BookFile, T> fill) {
        try {
            return NewBook.place(folder, empty -> {
                try (var book = make(empty, folder.resolve(NAME))) {
                    return fill.apply(book);
                }
            });
        } catch (IOException e) {
            throw BookFailure.ofFolder(folder, e);
        }
    }

    /** Makes a book without entries of a file that is empty; {@code name} is how people will know it. */
    public static BookFile make(Path empty, Path name) throws IOException {
        var book = new BookFile(empty, name);
        book.migrate();
        book.keepOpen();
        return book;
    }

    /** Opens the book in a file that is there. */
    public static BookFile openFile(Path file, Path name) {
        try {
            var book = new BookFile(file, name);
            if (Files.size(file) == 0) {
                throw book.failure.noBook();
            }
            BESIDE.forEach(suffix -> OwnerOnly.tighten(Path.of(file + suffix)));
            OwnerOnly.tighten(file);
            book.refuseForeign();
            book.keepOpen();
            return book;
        } catch (IOException e) {
            throw BookFailure.ofFolder(file.toAbsolutePath().getParent(), e);
        }
    }

    public static SQLiteDataSource source(Path file, TransactionMode mode) {
        var config = new SQLiteConfig();
        config.enforceForeignKeys(true);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setBusyTimeout(BUSY_MILLISECONDS);
        config.setTransactionMode(mode);
        // What is erased must not be found by who reads the file.
        config.setPragma(SQLiteConfig.Pragma.SECURE_DELETE, "true");
        // A book that was removed must not come back empty.
        config.resetOpenMode(SQLiteOpenMode.CREATE);
        var source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file);
        return source;
    }

    /** Refuses what is no book or a newer one before anything is written to it, and migrates an older one. */
    private void refuseForeign() {
        if (Migrations.isCurrent(reading, VENDOR)) {
            return;
        }
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
        } catch (IllegalArgumentException | DateTimeException e) {
            throw failure.damaged(e);
        }
    }

    private void migrate() {
        letReadersAndWriterWorkTogether();
        try {
            Migrations.of(writing, VENDOR).migrate();
        } catch (FlywayException e) {
            throw failure.explain(e);
        }
    }

    /** By a log beside the file, and for good: a copy of a book has lost it. */
    public void letReadersAndWriterWorkTogether() {
        try (var connection = writing.getConnection();
                var statement = connection.createStatement()) {
            statement.execute("pragma journal_mode = wal");
        } catch (SQLException e) {
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

    /** Waits for work that is going on and refuses what comes later; then the file alone is the whole book. */
    @Override
    public void close() {
        boolean alone = waitForWork();
        try {
            closed = true;
            var connection = kept;
            if (connection != null) {
                connection.close();
            }
            if (place.isTaken()) {
                setLogAside();
            }
        } catch (SQLException e) {
            throw failure.explain(e);
        } catch (IOException e) {
            throw BookFailure.ofFolder(name.getParent(), e);
        } finally {
            if (alone) {
                use.writeLock().unlock();
            }
        }
    }

    /** The log of the book that was replaced has its last entries, and must not be played into the one that stands there now. */
    private void setLogAside() throws IOException {
        var log = Path.of(name + BESIDE.getFirst());
        if (Files.exists(log)) {
            var aside = Path.of(name + "-of-the-book-before-wal");
            Files.move(log, aside);
            throw failure.leftAside(aside);
        }
    }

    private boolean waitForWork() {
        try {
            return use.writeLock().tryLock(CLOSING_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** Runs work on the book that was opened, and on no other. */
    private <T> T work(Supplier<T> work) {
        if (use.getReadHoldCount() > 0) {
            // It would not see what the other has written, and stay when the other is taken back.
            throw new IllegalStateException("a transaction of its own inside another, expected Transactions.within");
        }
        use.readLock().lock();
        try {
            if (closed) {
                throw failure.closed();
            }
            requireKept();
            return work.get();
        } catch (JdbiException e) {
            throw failure.explain(e);
        } finally {
            use.readLock().unlock();
        }
    }

    private void requireKept() {
        if (!place.isKept()) {
            throw failure.replaced();
        }
    }

    @Override
    public <T> T read(Function<Handle, T> work) {
        return work(() -> readers.inTransaction(work::apply));
    }

    @Override
    public synchronized <T> T write(Function<Handle, T> work) {
        return work(() -> {
            T done = writers.inTransaction(work::apply);
            // What was saved meanwhile into a file that is gone must not be acknowledged.
            requireKept();
            return done;
        });
    }

    @Override
    public void copyTo(Path copy, Path target) {
        work(() -> {
            vacuumInto(copy, target);
            return copy;
        });
    }

    private void vacuumInto(Path copy, Path target) {
        try (var connection = writing.getConnection();
                var statement = connection.prepareStatement("vacuum into ?")) {
            statement.setString(1, copy.toString());
            statement.execute();
        } catch (SQLException e) {
            throw BookFailure.isOfTheBook(e)
                    ? failure.explain(e)
                    : BookException.ofBackup(new StoreSaid.NoRoomForBackup(target.toString()), e);
        }
    }

    @Override
    public List<Said> damage(Handle handle) {
        if (!handle.select("pragma integrity_check").mapTo(String.class).list().equals(List.of("ok"))) {
            // What SQLite tells of its pages helps nobody.
            return List.of(new StoreSaid.FileDamaged());
        }
        return List.of();
    }

    @Override
    public List<Said> loosePointers(Handle handle) {
        return handle.select("pragma foreign_key_check")
                .<Said>map(
                        (row, context) -> new StoreSaid.LoosePointer(row.getString("table"), row.getString("parent")))
                .list();
    }
}
