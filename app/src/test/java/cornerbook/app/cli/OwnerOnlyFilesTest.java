package cornerbook.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.Book;
import cornerbook.app.certificate.ShopCertificates;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.exchange.VisitFile;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the program writes of the shop and its customers is read by its owner only. */
class OwnerOnlyFilesTest {
    private final LocalDate today = LocalDate.now(ZoneId.systemDefault());

    @TempDir
    private Path folder;

    private Path visitFile;
    private Path written;

    @BeforeEach
    void write() throws IOException {
        visitFile = Files.writeString(
                folder.resolve("visit.json"),
                VisitFile.write(DemoShop.histories(today).getLast()));
        written = Files.createDirectory(
                folder.resolve("written"),
                PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
    }

    @Test
    void everyFileAndFolderIsItsOwnersOnly() throws IOException {
        var data = written.resolve("a/book");
        run("import", visitFile, "--data", data);
        run("backup", written.resolve("copy"), "--data", data);
        run("restore", written.resolve("copy"), "--data", written.resolve("restored"));
        run("export", "--all", "-o", written, "--data", data);
        run("handover", visitFile, "-o", written.resolve("sheet.pdf"));
        ShopCertificates.of(written.resolve("certificates"), "127.0.0.1", today);
        try (var book = Book.openToServe(data)) {
            book.knowledge().learn(today);
            assertThat(data.resolve("book.sqlite-wal")).exists();
            try (var all = Files.walk(written)) {
                assertThat(all.toList())
                        .hasSizeGreaterThan(12)
                        .allSatisfy(each -> assertThat(rights(each))
                                .isEqualTo(Files.isDirectory(each) ? "rwx------" : "rw-------"));
            }
        }
    }

    /** As books were made before; the folder stays as its owner has set it. */
    @Test
    void anOlderBookIsTakenFromOthersWhenItIsOpened() throws IOException {
        var data = written.resolve("book");
        run("import", visitFile, "--data", data);
        Files.setPosixFilePermissions(data, PosixFilePermissions.fromString("rwxr-xr-x"));
        Files.setPosixFilePermissions(data.resolve("book.sqlite"), PosixFilePermissions.fromString("rw-r--r--"));
        run("check", "--data", data);
        assertThat(rights(data.resolve("book.sqlite"))).isEqualTo("rw-------");
        assertThat(rights(data)).isEqualTo("rwxr-xr-x");
    }

    private static String rights(Path path) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
    }

    private static void run(Object... arguments) {
        var words = new StringWriter();
        var texts = new String[arguments.length];
        for (int i = 0; i < texts.length; i++) {
            texts[i] = arguments[i].toString();
        }
        assertThat(Main.run(Map.of(), new PrintWriter(words), new PrintWriter(words), texts))
                .as(words.toString())
                .isZero();
    }
}
