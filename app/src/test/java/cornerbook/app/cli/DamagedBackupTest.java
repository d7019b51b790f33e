package cornerbook.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.Book;
import cornerbook.app.book.Notes;
import cornerbook.app.demo.DemoShop;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A backup that is not as it was written is refused with one sentence, and leaves nothing behind. */
class DamagedBackupTest {
    private static final int FLIPS = 300;
    private static final int CUTS = 40;

    @TempDir
    private Path folder;

    private Path target;
    private byte[] backup = {};

    @BeforeEach
    void write() throws IOException {
        target = folder.resolve("target");
        var copy = folder.resolve("copy");
        try (var book = Book.open(folder.resolve("book"))) {
            book.records()
                    .add(List.of(new Notes(4)
                            .ofCar(DemoShop.histories(LocalDate.of(2026, 11, 25))
                                    .getFirst())));
            book.backup(copy);
        }
        backup = Files.readAllBytes(copy);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void aFlippedByteIsFoundWhereverItIs(long seed) throws IOException {
        var random = new Random(seed);
        for (int i = 0; i < FLIPS; i++) {
            var flipped = backup.clone();
            int at = random.nextInt(flipped.length);
            flipped[at] ^= (byte) (1 + random.nextInt(255));
            assertRefused("byte %d of seed %d".formatted(at, seed), flipped);
        }
    }

    @Test
    void whatIsCutShortIsFound() throws IOException {
        var random = new Random(5);
        for (int i = 0; i < CUTS; i++) {
            int length = random.nextInt(backup.length);
            assertRefused("cut to " + length, Arrays.copyOf(backup, length));
        }
    }

    @Test
    void whatIsNoBackupIsFound() throws IOException {
        var random = new Random(6);
        for (int length : List.of(0, 1, 100, 4096, 100_000)) {
            var bytes = new byte[length];
            random.nextBytes(bytes);
            assertRefused("random", bytes);
        }
        assertRefused("text", "this is a letter\n".repeat(300).getBytes(StandardCharsets.UTF_8));
        Files.createDirectory(folder.resolve("damaged"));
        assertRefused("folder", folder.resolve("damaged"));
    }

    private void assertRefused(String what, byte[] content) throws IOException {
        assertRefused(what, Files.write(folder.resolve("damaged"), content));
        Files.delete(folder.resolve("damaged"));
    }

    private void assertRefused(String what, Path file) {
        var out = new StringWriter();
        var err = new StringWriter();
        int exitCode = Main.run(
                Map.of(),
                new PrintWriter(out),
                new PrintWriter(err),
                "restore",
                file.toString(),
                "--data",
                target.toString());
        assertThat(exitCode).as(what + ": " + out + err).isEqualTo(CommandFailure.FILE_OR_PORT);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString().strip().lines()).singleElement().asString().contains(file.toString());
        assertThat(err.toString()).doesNotContain("Exception", "null", "SQL", "statement");
        assertThat(target).doesNotExist();
    }
}
