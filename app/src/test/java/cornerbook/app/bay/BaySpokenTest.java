package cornerbook.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import com.ibm.icu.text.RuleBasedNumberFormat;
import cornerbook.app.cars.CarLibrary;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.WrittenReading;
import cornerbook.words.Catalogue;
import cornerbook.words.Language;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** What is said on sheets that the server makes, and in the numbers of a library, is understood by the tablet's modules. */
class BaySpokenTest {
    private static final long SLOWEST_SECONDS = 120;
    private static final int HIGHEST = 999;

    /** The factors of the modules have seven digits. */
    private static final double ROUNDING = 1e-3;

    @TempDir
    private Path folder;

    /** Outside check: numbers as ICU spells them (RuleBasedNumberFormat, SPELLOUT, icu4j 78.2, from CLDR), whole and with digits after the point. */
    @Test
    void numbersThatIcuSpellsAreUnderstood() throws Exception {
        var spelled = new LinkedHashMap<String, Map<String, String>>();
        for (var language : Language.values()) {
            var icu = new RuleBasedNumberFormat(language.locale(), RuleBasedNumberFormat.SPELLOUT);
            var numbers = new LinkedHashMap<String, String>();
            for (int whole = 0; whole <= HIGHEST; whole++) {
                numbers.put(icu.format(whole), String.valueOf(whole));
                for (int digits = whole % 7; digits < 100; digits += 13) {
                    // As a decimal, so that ICU spells no digits of a binary fraction.
                    var value = "%d.%02d".formatted(whole, digits).replaceFirst("0$", "");
                    numbers.put(icu.format(Double.parseDouble(value)), value.replaceFirst("\\.0?$", ""));
                }
            }
            spelled.put(language.tag(), numbers);
        }
        assertThat(spelled.get("en")).containsEntry("eight hundred eight point eight one", "808.81");
        assertThat(spelled.get("fr")).containsKey("quatre-vingt-dix-sept");
        run("spoken-numbers.mjs", spelled);
    }

    /** On the sheets of cars that together have all that can be measured, with an engine, drums, rivets, pistons and sensors. */
    @Test
    void anyReadingOfAnyMeasureSaidInAnyOfItsWaysComesBackAsItself() throws Exception {
        var cars = List.of(
                BayShop.untouched("demo-08"),
                BayShop.untouched("demo-03"),
                ofLibrary("parking-shoes-worn-in-disc"),
                ofLibrary("riveted-lining-below-law"),
                CarLibrary.car(CarLibrary.text("fixed-caliper-one-piston-seized")
                        .replace("\"pistons\": 4", "\"pistons\": 6")));
        var sheets = new ArrayList<JsonNode>();
        var measures = EnumSet.noneOf(Measure.class);
        for (var car : cars) {
            try (var shop = new BayShop(Files.createTempDirectory(folder, "shop"), List.of(car))) {
                var sheet = shop.get("/bay/visits/" + car.visits().getLast().id() + "/sheet.json");
                sheets.add(sheet);
                sheet.findValuesAsString("measure").forEach(measure -> measures.add(Measure.valueOf(measure)));
            }
        }
        assertThat(EnumSet.complementOf(measures)).isEmpty();
        var entered = BayShop.JSON.readTree(run("spoken-sheets.mjs", sheets));
        assertThat(entered.size()).isGreaterThan(10_000);
        // And the server reads each as a value that can be.
        for (var reading : entered) {
            var measure = Measure.valueOf(reading.get(0).stringValue());
            var written = reading.get(1).stringValue();
            assertThat(WrittenReading.valueOf(measure, written))
                    .as(measure + " " + written)
                    .isBetween(measure.lowest() - ROUNDING, measure.highest() + ROUNDING);
        }
    }

    private static CarHistory ofLibrary(String name) {
        return CarLibrary.car(CarLibrary.text(name));
    }

    /** By its name alone a measure could not be said. */
    @Test
    void eachMeasureHasWordsByWhichItIsSaidInEachLanguage() {
        for (var language : Language.values()) {
            var said = Catalogue.of("app/bay/modules").texts(language).getOrDefault("spoken-measure", "");
            for (var measure : Measure.values()) {
                assertThat(said).as(language.title()).containsPattern(" " + measure.name() + " \\{[^{}]+}");
            }
        }
    }

    private String run(String script, Object given) throws Exception {
        var file = Files.writeString(folder.resolve("given.json"), BayShop.JSON.writeValueAsString(given));
        var run = new ProcessBuilder("node", "src/test/js/" + script, file.toString())
                .redirectErrorStream(true)
                .start();
        var told = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(run.waitFor(SLOWEST_SECONDS, TimeUnit.SECONDS)).isTrue();
        assertThat(run.exitValue()).as(told).isZero();
        return told;
    }
}
