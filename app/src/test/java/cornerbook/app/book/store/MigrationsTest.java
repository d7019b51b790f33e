package cornerbook.app.book.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.SQLException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sqlite.SQLiteConfig.TransactionMode;
import org.sqlite.SQLiteDataSource;

/** A book that is said to be current is one with which the migrating library has nothing to do. */
class MigrationsTest {
    private static final String VENDOR = "sqlite";

    @TempDir
    private Path folder;

    private SQLiteDataSource made() {
        BookFile.open(folder).close();
        return BookFile.source(folder.resolve(BookFile.NAME), TransactionMode.IMMEDIATE);
    }

    @Test
    void aNewBookIsCurrent() {
        var source = made();
        assertThat(Migrations.isCurrent(source, VENDOR)).isTrue();
        assertThat(Migrations.of(source, VENDOR).info().pending()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "delete from flyway_schema_history where version = '56'",
                "delete from flyway_schema_history where version = '2'",
                "update flyway_schema_history set version = '9999' where version = '56'",
                "update flyway_schema_history set success = 0 where version = '56'",
                "insert into flyway_schema_history select 9999, '9999', description, type, script, checksum, installed_by, installed_on, execution_time, success from flyway_schema_history where version = '56'",
                "drop table flyway_schema_history"
            })
    void anOlderANewerAndADamagedOneIsNot(String change) throws SQLException {
        var source = made();
        try (var connection = source.getConnection();
                var statement = connection.createStatement()) {
            statement.executeUpdate(change);
        }
        assertThat(Migrations.isCurrent(source, VENDOR)).isFalse();
    }

    @Test
    void anEmptyFileIsNot() {
        assertThat(Migrations.isCurrent(BookFile.source(folder.resolve("absent"), TransactionMode.DEFERRED), VENDOR))
                .isFalse();
    }
}
