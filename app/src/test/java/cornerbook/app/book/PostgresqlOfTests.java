package cornerbook.app.book;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;

/**
 * A PostgreSQL server, registered by the tests that want one. It starts with the first of them and ends with the last; each makes
 * databases of its own. Where PostgreSQL is not installed they are left out.
 */
final class PostgresqlOfTests implements BeforeEachCallback {
    private @Nullable Running running;

    @Override
    public void beforeEach(ExtensionContext context) throws IOException {
        var programs = PostgresqlCluster.findPrograms();
        assumeTrue(programs.isPresent(), "PostgreSQL is not installed; Debian has it in the package postgresql");
        running = context.getRoot()
                .getStore(Namespace.create(PostgresqlOfTests.class))
                .computeIfAbsent(Running.class, key -> Running.start(programs.orElseThrow()), Running.class);
    }

    PostgresqlCluster cluster() {
        return running().cluster;
    }

    /** Makes an empty database; gives its address. */
    String database() throws IOException, InterruptedException {
        return cluster().database(running().newName());
    }

    /** Makes a database that has a book without entries; gives its address. */
    String book() throws IOException, InterruptedException {
        return cluster().copy(running().template(), running().newName());
    }

    private Running running() {
        return Objects.requireNonNull(running, "not registered");
    }

    private static final class Running implements AutoCloseable {
        private final PostgresqlCluster cluster;
        private @Nullable String template;
        private int databases;

        private Running(PostgresqlCluster cluster) {
            this.cluster = cluster;
        }

        static Running start(Path programs) {
            try {
                return new Running(PostgresqlCluster.start(programs));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } catch (InterruptedException e) {
                throw interrupted(e);
            }
        }

        String newName() {
            databases++;
            return "book" + databases;
        }

        /** The name of a database whose book is copied: the migrations, one after the other, take longer than many a test. */
        String template() throws IOException, InterruptedException {
            var made = template;
            if (made == null) {
                made = newName();
                Book.onServer(cluster.database(made)).close();
                template = made;
            }
            return made;
        }

        @Override
        public void close() throws IOException {
            try {
                cluster.stop();
            } catch (InterruptedException e) {
                throw interrupted(e);
            }
        }

        private static IllegalStateException interrupted(InterruptedException e) {
            Thread.currentThread().interrupt();
            return new IllegalStateException("interrupted while PostgreSQL started or stopped", e);
        }
    }
}
