package cornerbook.app.book.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import cornerbook.app.InEnglish;
import cornerbook.app.book.Book;
import cornerbook.app.demo.DemoShop;
import cornerbook.core.car.CarHistory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sqlite.SQLiteConfig.Pragma;
import org.sqlite.SQLiteConfig.TransactionMode;
import org.sqlite.SQLiteDataSource;

/** Books that cannot be used, or not now: one sentence, and nothing half-written. */
class UnusableBookTest {
    private static final List<CarHistory> SHOP = DemoShop.histories(LocalDate.of(2026, 11, 25));
    private static final int PAGE_BYTES = 4096;

    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void nameTheFile() {
        file = folder.resolve(BookFile.NAME);
    }

    @Test
    void aDamagedFileIsNamed() throws IOException {
        Files.writeString(file, "this is no book ".repeat(500));
        assertRefused(() -> Book.open(folder), "damaged or no book");
        assertRefused(() -> Book.restore(file, folder.resolve("new")), "damaged or no backup");
        assertThat(folder.resolve("new")).doesNotExist();
    }

    @Test
    void damagedPagesAreFoundByTheCheckAndNamedWhereTheyAreRead() throws IOException {
        writeShop();
        var bytes = Files.readAllBytes(file);
        Arrays.fill(bytes, bytes.length / 4 * 3, bytes.length, (byte) 0x5a);
        Files.write(file, bytes);
        try (var book = Book.open(folder)) {
            assertThat(book.check()).hasOnlyElementsOfType(StoreSaid.FileDamaged.class);
            assertRefused(book.cars()::listHistories, "damaged or no book");
        }
        assertRefused(() -> Book.restore(file, folder.resolve("new")), "is not sound: The file of the book is damaged");
        assertThat(folder.resolve("new")).doesNotExist();
    }

    @Test
    void aFileCutShortIsNamed() throws IOException {
        writeShop();
        Files.write(file, Arrays.copyOf(Files.readAllBytes(file), 20 * PAGE_BYTES));
        assertRefused(() -> Book.open(folder), "restore a backup");
    }

    @Test
    void anEmptyFileIsNoBook() throws IOException {
        Files.createFile(file);
        assertRefused(() -> Book.open(folder), "is empty or no book");
        assertThat(file).isEmptyFile();
        assertRefused(() -> Book.restore(file, folder.resolve("new")), "is empty or no book");
        assertThat(folder.resolve("new")).doesNotExist();
    }

    @Test
    void aDatabaseOfAnotherProgramIsNoBookAndStaysAsItIs() throws Exception {
        execute("create table note (line text)");
        var before = Files.readAllBytes(file);
        assertRefused(() -> Book.open(folder), "is empty or no book");
        assertThat(file).hasBinaryContent(before);
        assertRefused(() -> Book.restore(file, folder.resolve("new")), "is empty or no book");
        assertThat(folder.resolve("new")).doesNotExist();
    }

    @Test
    void aBookOfANewerProgramIsRefused() throws Exception {
        writeShop();
        execute("insert into flyway_schema_history select 99, '99', 'later', type, script, checksum, installed_by, "
                + "installed_on, execution_time, success from flyway_schema_history where installed_rank = 1");
        assertRefused(() -> Book.open(folder), "has the form 99 of a newer Cornerbook");
        assertRefused(() -> Book.restore(file, folder.resolve("new")), "has the form 99 of a newer Cornerbook");
        assertThat(folder.resolve("new")).doesNotExist();
    }

    /** SQLite's file format, section 1.3.3: a file with a write version above 2 can only be read. */
    @Test
    void aBookThatCanOnlyBeReadIsRead() throws IOException {
        writeShop();
        var bytes = Files.readAllBytes(file);
        bytes[18] = 3;
        Files.write(file, bytes);
        try (var book = Book.open(folder)) {
            assertThat(book.cars().listHistories()).hasSize(SHOP.size() - 1);
            assertRefused(() -> book.records().addCar(SHOP.getFirst()), "can only be read here");
        }
        assertThat(file).hasBinaryContent(bytes);
    }

    @Test
    void onAFullDiskNothingIsSavedAndTheBookStaysSound() throws Exception {
        writeShop();
        try (var book = new Book(new BookFile(file, file, limited(), limited()))) {
            assertRefused(() -> book.records().addCar(SHOP.getFirst()), "is full");
            assertThat(book.cars().list()).hasSize(SHOP.size() - 1);
            assertThat(book.check()).isEmpty();
        }
    }

    @Test
    void aLockedBookIsNamed() throws Exception {
        try (var book = Book.open(folder);
                var other = BookFile.source(file, TransactionMode.DEFERRED).getConnection();
                var statement = other.createStatement()) {
            statement.execute("begin exclusive");
            assertRefused(() -> book.records().addCar(SHOP.getFirst()), "locked by another program");
            statement.execute("rollback");
            book.records().addCar(SHOP.getFirst());
        }
    }

    @Test
    void aFileInPlaceOfTheFolderIsNamed() throws IOException {
        var blocked = Files.writeString(folder.resolve("file"), "x");
        assertRefused(() -> Book.open(blocked), "The folder " + blocked);
        Files.createDirectories(file.resolve("inside"));
        assertRefused(() -> Book.open(folder), "book.sqlite");
    }

    @Test
    void aBackupThatCannotBeWrittenBlamesItsTarget() {
        try (var book = Book.open(folder.resolve("book"))) {
            assertRefused(() -> book.backup(folder.resolve("missing/copy")), "no folder " + folder.resolve("missing"));
        }
        assertThat(folder.resolve("missing")).doesNotExist();
    }

    @Test
    void aCopyThatSqliteCannotWriteNamesTheTarget() {
        var book = BookFile.open(folder);
        var target = folder.resolve("copy");
        assertRefused(
                () -> book.copyTo(folder.resolve("missing/unfinished"), target), "cannot be written to " + target);
    }

    /** All cars but the first. */
    private void writeShop() {
        try (var book = Book.open(folder)) {
            book.records().addCars(SHOP.subList(1, SHOP.size()));
        }
    }

    /** As on a disk that has no room for another page. */
    private SQLiteDataSource limited() {
        var source = BookFile.source(file, TransactionMode.IMMEDIATE);
        source.getConfig().setPragma(Pragma.MAX_PAGE_COUNT, "1");
        return source;
    }

    private void execute(String sql) throws SQLException {
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                var statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    private static void assertRefused(ThrowingCallable work, String part) {
        assertThatThrownBy(work)
                .isInstanceOf(BookException.class)
                .extracting(InEnglish::told, STRING)
                .contains(part)
                .doesNotContain("\n", "[SQLITE");
    }
}
