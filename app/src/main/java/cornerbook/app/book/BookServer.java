package cornerbook.app.book;

import java.nio.file.Path;
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
import org.postgresql.util.PSQLException;

/** The PostgreSQL database of a book that several programs share. */
final class BookServer implements BookStore {
    private static final String SCHEME = "jdbc:postgresql:";

    private final String name;
    private final PGSimpleDataSource source;
    private final Jdbi jdbi;

    private BookServer(String url) {
        // What follows the question mark may be a password.
        this.name = url.replaceFirst("\\?.*", "");
        this.source = new PGSimpleDataSource();
        try {
            source.setUrl(url);
        } catch (IllegalArgumentException e) {
            throw new BookException(
                    "The address %s is not understood, expected %s//HOST/DATABASE".formatted(name, SCHEME), e);
        }
        this.jdbi = Jdbi.create(source);
    }

    /** Opens the book in a database; fills an empty database, and brings an older book up to date. */
    static BookServer open(String url) {
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
                .filter(PSQLException.class::isInstance)
                .map(cause -> String.valueOf(((PSQLException) cause).getSQLState()))
                .findFirst()
                .orElse("");
        return new BookException(sentence(state, failure), failure);
    }

    /** By the class of the SQLSTATE: PostgreSQL's manual, appendix A. */
    private String sentence(String state, RuntimeException failure) {
        return switch (state.substring(0, Math.min(2, state.length()))) {
            case "08" -> "The book %s cannot be reached, expected a running server there".formatted(name);
            case "28", "3D" ->
                "The book %s refuses access, expected a user and a database that it knows".formatted(name);
            case "25" -> "The book %s can only be read here".formatted(name);
            case "53" -> "The server of the book %s has no room left; nothing of this was saved".formatted(name);
            default -> BookFailure.unknown(name, failure);
        };
    }
}
