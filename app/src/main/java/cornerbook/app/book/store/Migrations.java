package cornerbook.app.book.store;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfoService;
import org.flywaydb.core.api.MigrationState;

/** The migrations of a book: one folder for every database, and one for the little that each says in words of its own. */
public final class Migrations {
    /** What a database calls a column of bytes, by its folder. */
    private static final Map<String, String> BYTES = Map.of("sqlite", "blob", "postgresql", "bytea");

    private static final String FOLDER = "classpath:cornerbook/app/book/sql/";

    private Migrations() {}

    public static Flyway of(DataSource source, String vendor) {
        return Flyway.configure()
                .dataSource(source)
                .placeholders(Map.of("bytes", String.valueOf(BYTES.get(vendor))))
                .locations(FOLDER + "common", FOLDER + "only/" + vendor)
                // In one transaction: a book is brought up to date whole or not at all, and goes to the disk once.
                .group(true)
                // Books are older than the quotation marks that PostgreSQL needs in V1; what it makes is the same.
                .validateOnMigrate(false)
                .load();
    }

    /** The version of a book that a newer program has migrated; empty when this program knows its form. */
    static Optional<String> findNewer(MigrationInfoService migrations) {
        return Stream.of(migrations.applied())
                .filter(each -> each.getState() == MigrationState.FUTURE_SUCCESS)
                .map(each -> String.valueOf(each.getVersion()))
                .reduce((first, last) -> last);
    }
}
