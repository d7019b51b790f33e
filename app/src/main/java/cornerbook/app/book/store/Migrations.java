package cornerbook.app.book.store;

import java.io.IOException;
import java.net.JarURLConnection;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.jar.JarEntry;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfoService;
import org.flywaydb.core.api.MigrationState;

/** The migrations of a book: one folder for every database, and one for the little that each says in words of its own. */
public final class Migrations {
    /** What a database calls a column of bytes, by its folder. */
    private static final Map<String, String> BYTES = Map.of("sqlite", "blob", "postgresql", "bytea");

    private static final String FOLDER = "cornerbook/app/book/sql/";
    private static final Pattern FILE = Pattern.compile("V(\\d+(?:_\\d+)?)__\\w+\\.sql");

    private Migrations() {}

    public static Flyway of(DataSource source, String vendor) {
        return Flyway.configure()
                .dataSource(source)
                .placeholders(Map.of("bytes", String.valueOf(BYTES.get(vendor))))
                .locations("classpath:" + common(), "classpath:" + only(vendor))
                // In one transaction: a book is brought up to date whole or not at all, and goes to the disk once.
                .group(true)
                // Books are older than the quotation marks that PostgreSQL needs in V1; what it makes is the same.
                .validateOnMigrate(false)
                .load();
    }

    private static String common() {
        return FOLDER + "common";
    }

    private static String only(String vendor) {
        return FOLDER + "only/" + vendor;
    }

    /**
     * Whether a book has every migration of this program and no other, by what the migrating library notes in it. To ask the library
     * itself takes a fifth of a start with a book that is there.
     */
    static boolean isCurrent(DataSource source, String vendor) {
        try (var connection = source.getConnection();
                var statement = connection.createStatement();
                var rows = statement.executeQuery("select version, success from flyway_schema_history")) {
            var there = new HashSet<String>();
            while (rows.next()) {
                if (!rows.getBoolean("success") || !there.add(String.valueOf(rows.getString("version")))) {
                    return false;
                }
            }
            return there.equals(versions(vendor));
        } catch (SQLException | IOException e) {
            // No book, or a damaged one: the library says which.
            return false;
        }
    }

    /** The numbers of this program's migrations for a database. */
    private static Set<String> versions(String vendor) throws IOException {
        var versions = new HashSet<String>();
        for (var folder : List.of(common(), only(vendor))) {
            for (var file : files(folder)) {
                var named = FILE.matcher(file);
                if (named.matches()) {
                    versions.add(named.group(1).replace('_', '.'));
                }
            }
        }
        return versions;
    }

    /** Names of the files of a folder of resources, be they in a jar or on the disk. */
    private static List<String> files(String folder) throws IOException {
        var found = Objects.requireNonNull(Migrations.class.getClassLoader().getResource(folder), folder);
        if (found.openConnection() instanceof JarURLConnection jar) {
            return jar.getJarFile().stream()
                    .map(JarEntry::getName)
                    .filter(name -> name.startsWith(folder + "/"))
                    .map(name -> name.substring(folder.length() + 1))
                    .toList();
        }
        try (var files = Files.list(Path.of(URI.create(found.toString())))) {
            return files.map(file -> String.valueOf(file.getFileName())).toList();
        }
    }

    /** The version of a book that a newer program has migrated; empty when this program knows its form. */
    static Optional<String> findNewer(MigrationInfoService migrations) {
        return Stream.of(migrations.applied())
                .filter(each -> each.getState() == MigrationState.FUTURE_SUCCESS)
                .map(each -> String.valueOf(each.getVersion()))
                .reduce((first, last) -> last);
    }
}
