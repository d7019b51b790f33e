package cornerbook.app.book.store;

import cornerbook.core.say.Said;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;
import org.postgresql.ds.PGSimpleDataSource;

/** The PostgreSQL database of a book that several programs share. */
public final class BookServer implements BookStore {
    private static final String RAISED_BY_TRIGGER = "P0001";

    private final String name;
    private final PGSimpleDataSource source;
    private final Jdbi jdbi;

    /** As {@code psql} looks for it: in the address, in PGPASSWORD, in the file .pgpass, where the driver itself looks. */
    private BookServer(String url) {
        this.name = ServerAddress.shown(url);
        this.source = new PGSimpleDataSource();
        if (ServerAddress.namesUserBeforeHost(url)) {
            throw new BookException(new StoreSaid.UserBeforeHost(name, ServerAddress.SCHEME));
        }
        try {
            source.setUrl(url);
        } catch (IllegalArgumentException e) {
            throw new BookException(new StoreSaid.NoAddress(name, ServerAddress.SCHEME), e);
        }
        var password = System.getenv("PGPASSWORD");
        if (password != null && !ServerAddress.hasPassword(url)) {
            source.setPassword(password);
        }
        this.jdbi = Jdbi.create(source);
    }

    /** Opens the book in a database; fills an empty database, and brings an older book up to date. */
    public static BookServer open(String url) {
        var server = new BookServer(url);
        server.migrate();
        return server;
    }

    private void migrate() {
        try {
            var flyway = Migrations.of(source, "postgresql");
            Migrations.findNewer(flyway.info()).ifPresent(version -> {
                throw BookFailure.newer(name, version);
            });
            flyway.migrate();
        } catch (FlywayException e) {
            throw explain(e);
        }
    }

    @Override
    public <T> T read(Function<Handle, T> work) {
        try {
            return jdbi.inTransaction(TransactionIsolationLevel.REPEATABLE_READ, work::apply);
        } catch (JdbiException e) {
            throw explain(e);
        }
    }

    @Override
    public <T> T write(Function<Handle, T> work) {
        try {
            return jdbi.inTransaction(handle -> {
                // Lets readers through and makes writers wait, as SQLite does.
                handle.execute("lock table vehicle in exclusive mode");
                return work.apply(handle);
            });
        } catch (JdbiException e) {
            throw explain(e);
        }
    }

    @Override
    public void copyTo(Path copy, Path target) {
        throw new BookException(new StoreSaid.BackedUpByServer(name));
    }

    /** The server looks after its files itself. */
    @Override
    public List<Said> damage(Handle handle) {
        return List.of();
    }

    /** The server allows none. */
    @Override
    public List<Said> loosePointers(Handle handle) {
        return List.of();
    }

    private BookException explain(RuntimeException failure) {
        var state = Stream.iterate((Throwable) failure, Objects::nonNull, Throwable::getCause)
                .filter(SQLException.class::isInstance)
                .map(cause -> ((SQLException) cause).getSQLState())
                .filter(Objects::nonNull)
                .findFirst()
                .orElse("unknown");
        if (state.startsWith("22")) {
            return BookException.refusal(new StoreSaid.ValueCannotStand(), failure);
        }
        return state.startsWith("23") || state.equals(RAISED_BY_TRIGGER)
                ? BookException.refusal(new StoreSaid.BreaksRule(), failure)
                : new BookException(sentence(state), failure);
    }

    /** By the SQLSTATE, or its class: PostgreSQL's manual, appendix A. */
    private Said sentence(String state) {
        return switch (state) {
            case "28P01", "08004" -> new StoreSaid.PasswordRefused(name);
            case "3D000" -> new StoreSaid.NoDatabase(name);
            case "42501" -> new StoreSaid.NotTheOwner(name);
            case "53300" -> new StoreSaid.TooManyConnections(name);
            case "57P01", "57P02", "57P03" -> new StoreSaid.StopsOrStarts(name);
            default -> sentenceByClass(state);
        };
    }

    private Said sentenceByClass(String state) {
        return switch (state.substring(0, Math.min(2, state.length()))) {
            case "08" -> new StoreSaid.NotReached(name);
            case "28" -> new StoreSaid.AccessRefused(name);
            case "25" -> new StoreSaid.OnlyRead(name);
            case "40", "55" -> new StoreSaid.Busy(name);
            case "53" -> new StoreSaid.NoRoom(name);
            default -> new StoreSaid.Unknown(name, new StoreSaid.PostgresqlCode(state));
        };
    }
}
