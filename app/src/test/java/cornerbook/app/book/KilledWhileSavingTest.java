package cornerbook.app.book;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.demo.DemoShop;
import cornerbook.core.visit.Measure;
import cornerbook.core.visit.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KilledWhileSavingTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @TempDir
    private Path folder;

    /** Another process saves readings one by one and says each that was acknowledged, until it is killed. */
    @ParameterizedTest
    @ValueSource(ints = {1, 17, 60})
    void everythingAcknowledgedIsThere(int acknowledgedBeforeKill) throws Exception {
        try (var book = Book.open(folder)) {
            book.addAll(DemoShop.histories(TODAY));
        }
        var said = folder.resolve("said");
        var saver = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "--enable-native-access=ALL-UNNAMED",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Saver.class.getName(),
                        folder.toString())
                .redirectOutput(said.toFile())
                .start();
        while (acknowledged(said).size() < acknowledgedBeforeKill && saver.isAlive()) {
            Thread.sleep(5);
        }
        saver.destroyForcibly().waitFor();

        var acknowledged = acknowledged(said);
        assertThat(acknowledged).hasSizeGreaterThanOrEqualTo(acknowledgedBeforeKill);
        try (var book = Book.open(folder)) {
            assertThat(book.check()).isEmpty();
            var visit = visitId();
            var kept =
                    book.findHistoryOfVisit(visit).orElseThrow().getVisit(visit).readings();
            assertThat(kept).extracting(Reading::id).containsAll(acknowledged);
        }
    }

    /** The whole lines of what the process said. */
    private static List<String> acknowledged(Path said) throws IOException {
        if (Files.notExists(said)) {
            return List.of();
        }
        var text = Files.readString(said);
        return text.substring(0, text.lastIndexOf('\n') + 1).lines().toList();
    }

    private static String visitId() {
        return DemoShop.histories(TODAY).getFirst().visits().getLast().id();
    }

    /** The process that gets killed. */
    static final class Saver {
        private Saver() {}

        public static void main(String[] arguments) {
            try (var book = Book.open(Path.of(arguments[0]))) {
                for (int i = 0; i < 100_000; i++) {
                    var id = "saved-" + i;
                    book.addReadings(
                            visitId(),
                            List.of(new Reading(
                                    id, Measure.BATTERY_VOLTAGE, null, null, null, 12.5, "12.5 V", null, null)));
                    System.out.println(id);
                }
            }
        }
    }
}
