package cornerbook.app.book.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import cornerbook.app.InEnglish;
import cornerbook.app.book.Book;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.BookFile;
import cornerbook.app.demo.DemoShop;
import cornerbook.core.car.CarHistory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RestoreTest {
    private static final CarHistory CAR =
            DemoShop.histories(LocalDate.of(2026, 11, 25)).getFirst();

    @TempDir
    private Path parent;

    private Path folder;
    private Path backup;

    @BeforeEach
    void write() {
        folder = parent.resolve("target");
        backup = parent.resolve("backup");
        try (var book = Book.open(parent.resolve("source"))) {
            book.records().addCar(CAR);
            book.backup(backup);
        }
    }

    /** What a book that is gone has left may be the last entries of it, and would be played into the one that comes. */
    @ParameterizedTest
    @ValueSource(strings = {"-wal", "-journal", "-shm"})
    void nothingIsPutBesideWhatIsLeftOfAnotherBook(String suffix) throws IOException {
        Files.createDirectory(folder);
        var left = Files.writeString(folder.resolve(BookFile.NAME + suffix), "last entries");
        for (var attempt : List.<Runnable>of(() -> Book.restore(backup, folder), () -> Book.open(folder))) {
            assertThatThrownBy(attempt::run)
                    .isInstanceOf(BookException.class)
                    .extracting(InEnglish::told, STRING)
                    .contains("no book but " + BookFile.NAME + suffix);
            assertThat(left).hasContent("last entries");
            try (var files = Files.list(folder)) {
                assertThat(files).containsExactly(left);
            }
        }
    }

    @Test
    void aRestoredBookTakesEntriesWhileOthersReadIt() throws SQLException {
        Book.restore(backup, folder);
        try (var book = Book.open(folder);
                var connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(BookFile.NAME));
                var statement = connection.createStatement();
                var mode = statement.executeQuery("pragma journal_mode")) {
            assertThat(mode.getString(1)).isEqualTo("wal");
            assertThat(book.check()).isEmpty();
        }
    }

    @Test
    void theCheckComparesEachValueWithWhatWasWritten() throws SQLException {
        Book.restore(backup, folder);
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(BookFile.NAME));
                var statement = connection.createStatement()) {
            statement.execute("drop trigger reading_is_never_updated");
            statement.execute(
                    "update reading set amount = amount + 2 where measure = 'PRESSURE_SET' and id = (select min(id) from reading where measure = 'PRESSURE_SET')");
        }
        try (var book = Book.open(folder)) {
            assertThat(book.check())
                    .singleElement()
                    .extracting(InEnglish::say, STRING)
                    .contains("kPa\"");
        }
    }
}
