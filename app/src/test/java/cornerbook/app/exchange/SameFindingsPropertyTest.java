package cornerbook.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.door.JavaProcess;
import cornerbook.app.door.ServedShop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A car has the same findings, byte for byte, in whatever order its file stands, and on whatever machine they are made. */
class SameFindingsPropertyTest {
    private static final Map<String, String> FILES = new TreeMap<>();
    private static Map<String, String> found;

    @TempDir
    private Path folder;

    @BeforeAll
    static void find() throws IOException {
        var cars = ServedShop.cars();
        for (int i = 0; i < cars.size(); i += 2) {
            FILES.put(cars.get(i).vehicle().id(), VisitFile.write(cars.get(i)));
        }
        for (var example : new String[] {"first-visit", "seasonal-visit"}) {
            FILES.put(example, Files.readString(Path.of("..", "docs", "examples", example + ".json")));
        }
        found = FindingsOfFiles.of(FILES, 0);
    }

    /** Turkish has letters of its own, and on Kiritimati it is tomorrow. */
    @Test
    void inAnotherOrderAndPlaceTheFindingsAreTheSame() {
        var locale = Locale.getDefault();
        var zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.of("tr", "TR"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            assertThat(differences(FindingsOfFiles.of(FILES, 1))).isEmpty();
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    /** Another process walks what has no order of its own in another order; Arabic has digits of its own. */
    @ParameterizedTest
    @CsvSource({"2, de, DE, Pacific/Auckland", "3, ar, EG, America/St_Johns"})
    void anotherMachineFindsTheSame(String seed, String language, String country, String zone) throws Exception {
        var files = Files.createDirectories(folder.resolve("files"));
        for (var file : FILES.entrySet()) {
            Files.writeString(files.resolve(file.getKey()), file.getValue());
        }
        var findings = Files.createDirectories(folder.resolve("findings"));
        var process = JavaProcess.of(
                        List.of("-Duser.language=" + language, "-Duser.country=" + country, "-Duser.timezone=" + zone),
                        FindingsOfFiles.class,
                        files.toString(),
                        findings.toString(),
                        seed)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said").toFile())
                .start();
        assertThat(process.waitFor()).as(this::said).isZero();
        var there = new TreeMap<String, String>();
        try (var written = Files.list(findings)) {
            for (var file : written.toList()) {
                there.put(file.getFileName().toString(), Files.readString(file));
            }
        }
        assertThat(differences(there)).isEmpty();
    }

    /** The first line that differs of each. */
    private static List<String> differences(Map<String, String> there) {
        assertThat(there).hasSameSizeAs(found);
        var differences = new ArrayList<String>();
        found.forEach((name, text) -> {
            var here = text.lines().toList();
            var other = there.getOrDefault(name, "").lines().toList();
            for (int i = 0; i < Math.max(here.size(), other.size()); i++) {
                var line = i < here.size() ? here.get(i) : "";
                var otherLine = i < other.size() ? other.get(i) : "";
                if (!line.equals(otherLine)) {
                    differences.add("%s, line %s:%n%s%n%s".formatted(name, i + 1, line, otherLine));
                    break;
                }
            }
        });
        return differences;
    }

    private String said() {
        try {
            return Files.readString(folder.resolve("said"));
        } catch (IOException e) {
            return e.toString();
        }
    }
}
