package cornerbook.app.book.store;

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
            throw new BookException(
                    "The address %s has a user before its host, expected %s//HOST/DATABASE?user=NAME and the password by PGPASSWORD or in the file .pgpass"
                            .formatted(name, ServerAddress.SCHEME));
        }
        try {
            source.setUrl(url);
        } catch (IllegalArgumentException e) {
            throw new BookException(
                    "The address %s is not understood, expected %s//HOST/DATABASE"
                            .formatted(name, ServerAddress.SCHEME),
                    e);
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
        throw new BookException(
                "The book %s is on a server and is backed up with the server's own pg_dump, expected a book in a folder"
                        .formatted(name));
    }

    /** The server looks after its files itself. */
    @Override
    public List<String> damage(Handle handle) {
        return List.of();
    }

    /** The server allows none. */
    @Override
    public List<String> loosePointers(Handle handle) {
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
            return BookException.refusal(
                    "The book refuses this, as a value of it cannot stand there; nothing of it was saved", failure);
        }
        return state.startsWith("23") || state.equals(RAISED_BY_TRIGGER)
                ? BookException.refusal(BookFailure.REFUSED, failure)
                : new BookException(sentence(state), failure);
    }

    /** By the SQLSTATE, or its class: PostgreSQL's manual, appendix A. */
    private String sentence(String state) {
        return switch (state) {
            case "28P01", "08004" ->
                "The book %s refuses the password or has none for this user, expected one by PGPASSWORD or in the file .pgpass"
                        .formatted(name);
            case "3D000" ->
                "The server of the book %s has no such database, expected one that is there, empty or a book"
                        .formatted(name);
            case "42501" ->
                "The user may not do this with the book %s, expected the owner of its database".formatted(name);
            case "53300" -> "The server of the book %s takes no more connections; try again".formatted(name);
            case "57P01", "57P02", "57P03" ->
                "The server of the book %s stops or starts just now; try again".formatted(name);
            default -> sentenceByClass(state);
        };
    }

    private String sentenceByClass(String state) {
        return switch (state.substring(0, Math.min(2, state.length()))) {
            case "08" -> "The book %s cannot be reached, expected a running server there".formatted(name);
            case "28" -> "The book %s refuses access, expected a user that it knows".formatted(name);
            case "25" -> "The book %s can only be read here".formatted(name);
            case "40", "55" -> "The book %s is busy with other work; try again".formatted(name);
            case "53" -> "The server of the book %s has no room left; nothing of this was saved".formatted(name);
            default -> BookFailure.unknown(name, "PostgreSQL's code " + state);
        };
    }
}
