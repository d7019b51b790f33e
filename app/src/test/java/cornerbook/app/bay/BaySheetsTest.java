package cornerbook.app.bay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.app.book.shop.SheetStep;
import cornerbook.app.book.shop.StepOrder;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** What a sheet expects and shows, in the units of each person. */
class BaySheetsTest {
    private final CarHistory car = BayShop.untouched("demo-08");
    private final String visitId = car.visits().getLast().id();

    @AutoClose
    private BayShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = new BayShop(folder, List.of(car));
    }

    @Test
    void sheetExpectsWhatTheQuestionOfTheEntryPageExpects() throws Exception {
        var sheets = shop.get("/bay/visits/" + visitId + "/sheet.json");
        var sheet = sheets.path("en").path("metric");
        var expected = sheet.path("wheels").path(wheel()).path("expected").path("TREAD_DEPTH.OUTER");
        assertThat(expected.path("low").doubleValue())
                .isLessThan(expected.path("high").doubleValue());
        assertThat(expected.path("asks").stringValue()).startsWith("Expected ").contains("read it again");
        assertThat(last(sheet)).matches("\\d\\.\\d");
        var us = sheets.path("en").path("us");
        assertThat(Double.parseDouble(last(us)))
                .as("in 32nds of an inch of 25.4 mm (NIST SP 811, appendix B.8)")
                .isCloseTo(Double.parseDouble(last(sheet)) * 32 / 25.4, within(0.05));
        var inUs = us.path("wheels").path(wheel()).path("expected").path("TREAD_DEPTH.OUTER");
        assertThat(inUs.path("low").doubleValue())
                .isCloseTo(expected.path("low").doubleValue() * 32 / 25.4, within(1e-9));
        assertThat(inUs.path("asks").stringValue()).contains("/32\u00a0in after the visits before");
    }

    /** 1.6 mm of tread are 2.016/32 in of 25.4 mm (NIST SP 811, appendix B.8); 95 % of 120 N·m are 84.08 lbf·ft of 1.355818 N·m. */
    @Test
    void limitsComeInTheUnitsAndTheLanguageOfEachPersonGravestFirst() throws Exception {
        var sheets = shop.get("/bay/visits/" + visitId + "/sheet.json");
        var us = limit(sheets.path("en").path("us"), "TREAD_DEPTH");
        assertThat(us.path("low").doubleValue()).isCloseTo(2.0157, within(1e-4));
        assertThat(us.path("unsafe").booleanValue()).isTrue();
        assertThat(us.path("point").stringValue()).isEqualTo("UNSAFE.WHEEL_SET");
        var torque = limit(sheets.path("fr").path("us"), "WHEEL_TORQUE");
        assertThat(torque.path("low").doubleValue()).isCloseTo(84.08, within(0.01));
        assertThat(torque.path("sentence").stringValue()).startsWith("Pas assez serrée. Régler la clé à ");
        assertThat(torque.path("point").stringValue()).startsWith("UNSAFE.WHEEL_TORQUE.");
        assertThat(sheets.path("en")
                        .path("metric")
                        .path("limits")
                        .valueStream()
                        .map(each -> each.path("measure").stringValue()))
                .as("what to set changes with the temperatures and comes with the state")
                .doesNotContain("PRESSURE_SET");
    }

    private static JsonNode limit(JsonNode sheet, String measure) {
        return sheet.path("limits")
                .valueStream()
                .filter(each -> each.path("measure").stringValue().equals(measure))
                .findFirst()
                .orElseThrow();
    }

    /** Without its wheels a brake is seen and reached; a shop that looks at it through the rims says so. */
    @Test
    void stepsStandInTheOrderOfTheShopAndEachKindInItsOwn() throws Exception {
        assertThat(order()).startsWith("RECEIVE", "LIFT", "OFF", "BRAKE.LF").endsWith("DEPART");
        var orders = shop.book.stepOrders();
        orders.put(null, StepOrder.USUAL.moved(SheetStep.BRAKES, true, null));
        assertThat(order()).startsWith("RECEIVE", "LIFT", "BRAKE.LF").containsSubsequence("BRAKE.RR", "OFF", "PEDAL");
        orders.put(car.vehicle(), StepOrder.USUAL.moved(SheetStep.BATTERY, true, car.vehicle()));
        assertThat(order()).startsWith("RECEIVE", "LIFT", "OFF").containsSubsequence("PRESSURE", "BATTERY", "TORQUE");
        orders.remove(car.vehicle());
        assertThat(order()).startsWith("RECEIVE", "LIFT", "BRAKE.LF");
    }

    private List<String> order() throws Exception {
        return shop.get("/bay/visits/" + visitId + "/sheet.json")
                .path("en")
                .path("metric")
                .path("steps")
                .valueStream()
                .map(step -> step.path("id").stringValue())
                .toList();
    }

    /** A pressure that is found is compared with the one that was set when the wheel was last on the car. */
    @Test
    void belowAPressureThatIsFoundStandsWhatWasSetLast() throws Exception {
        var last = shop.get("/bay/visits/" + visitId + "/sheet.json")
                .path("en")
                .path("metric")
                .path("wheels")
                .path(wheel())
                .path("last");
        assertThat(last.path("PRESSURE_SET.").path("written").stringValue()).isNotEmpty();
        assertThat(last.path("PRESSURE_FOUND.")).isEqualTo(last.path("PRESSURE_SET."));
    }

    /** The last visit asked for a leak to be found: that stands at the top until it is judged anew. */
    @Test
    void whatTheLastVisitAskedForComesWithTheSheet() throws Exception {
        var matters = shop.get("/bay/visits/" + visitId + "/sheet.json")
                .path("fr")
                .path("metric")
                .path("matters");
        assertThat(matters.path(0).path("words").stringValue()).isNotEmpty();
        assertThat(matters.path(0).path("day").stringValue()).contains("2026");
    }

    @Test
    void sheetIsThereInEachLanguageWithTheNamesOfItsUnits() throws Exception {
        var sheets = shop.get("/bay/visits/" + visitId + "/sheet.json");
        assertThat(step(sheets.path("en").path("metric"), "OFF").path("title").stringValue())
                .isEqualTo("Wheels off");
        var off = step(sheets.path("fr").path("us"), "RECEIVE");
        assertThat(off.path("title").stringValue()).isEqualTo("Réception");
        var pressure = off.path("groups").path(0).path("fields").path(0);
        assertThat(pressure.path("unit").stringValue()).isEqualTo("lb/po²");
        assertThat(pressure.path("suffix").stringValue())
                .as("what is kept is read by every reader")
                .isEqualTo(" psi");
    }

    /** The car comes on its winter set in winter: the plan leaves it where it is, but another set may go on all the same. */
    @Test
    void whicheverWheelsGoOnHaveTheirPlaces() throws Exception {
        var visit = car.visits().getLast();
        var winter = car.sets().stream()
                .filter(set -> set.season() == SeasonKind.WINTER)
                .findFirst()
                .orElseThrow();
        var onWinter = new EnumMap<Corner, String>(Corner.class);
        for (var corner : Corner.values()) {
            onWinter.put(corner, winter.wheels().get(corner.ordinal()).tag());
        }
        shop.book
                .visits()
                .add(
                        car.vehicle().id(),
                        new Visit("on-winter", visit.date(), visit.odometerKm() + 1, onWinter, Map.of(), List.of()));
        var sheets = shop.get("/bay/visits/on-winter/sheet.json");
        var sheet = sheets.path("en").path("metric");
        assertThat(sheet.path("planned").path("LF").stringValue())
                .startsWith(winter.wheels().getFirst().tag().substring(0, 3));
        var fields = step(sheet, "ON").path("groups").path(0).path("fields");
        assertThat(fields.size())
                .as("three grooves and the pressure of four wheels")
                .isEqualTo(16);
        assertThat(sheet.path("fills").size()).isEqualTo(car.sets().size());
        assertThat(sheet.path("fills").path(0).path("hint").stringValue()).startsWith("Filled in");
        assertThat(sheets.path("fr")
                        .path("metric")
                        .path("fills")
                        .path(0)
                        .path("hint")
                        .stringValue())
                .startsWith("Rempli");
        assertThat(sheets.path("fr").path("metric").path("plannedHint").stringValue())
                .startsWith("Rempli");
    }

    /** A caution read twice is not read: hands, orange cables and dust stand once on each screen, each with its source. */
    @Test
    void noScreenSaysACautionTwice() throws Exception {
        var sheets = shop.get("/bay/visits/" + visitId + "/sheet.json");
        for (var language : List.of("en", "fr")) {
            long sourced = 0;
            for (var step : sheets.path(language).path("metric").path("steps")) {
                var lines = new ArrayList<JsonNode>();
                step.path("cautions").forEach(lines::add);
                step.path("groups").forEach(group -> group.path("hints").forEach(lines::add));
                assertThat(lines)
                        .as(step.path("id").stringValue())
                        .extracting(line -> line.path("words").stringValue())
                        .doesNotContain("")
                        .doesNotHaveDuplicates();
                sourced += lines.stream()
                        .filter(line -> !line.path("source").stringValue().isEmpty())
                        .count();
            }
            assertThat(sourced).isGreaterThan(30);
        }
    }

    private static JsonNode step(JsonNode sheet, String id) {
        for (var step : sheet.path("steps")) {
            if (step.path("id").stringValue().equals(id)) {
                return step;
            }
        }
        throw new AssertionError("no step " + id);
    }

    private String last(JsonNode sheet) {
        return sheet.path("wheels")
                .path(wheel())
                .path("last")
                .path("TREAD_DEPTH.OUTER")
                .path("written")
                .stringValue();
    }

    /** Which values are expected is tested at the model; here only that they reach the tablet, in its units. */
    @Test
    void padsAndDiscsAreExpectedByTheirWear() throws Exception {
        var sheets = shop.get("/bay/visits/" + visitId + "/sheet.json");
        for (var measure : List.of("PAD_THICKNESS", "DISC_THICKNESS")) {
            var metric = field(sheets.path("en").path("metric"), measure);
            double lowMm = metric.path("expected").path("low").doubleValue();
            double highMm = metric.path("expected").path("high").doubleValue();
            assertThat(Double.parseDouble(metric.path("last").path("written").stringValue()))
                    .as("not far from the last one")
                    .isBetween(lowMm, highMm + 1);
            double perMm = measure.equals("PAD_THICKNESS") ? 32 / 25.4 : 1 / 25.4;
            assertThat(field(sheets.path("en").path("us"), measure)
                            .path("expected")
                            .path("high")
                            .doubleValue())
                    .isCloseTo(highMm * perMm, within(1e-9));
            assertThat(metric.path("expected").path("asks").stringValue()).contains("or was the part replaced?");
        }
    }

    private static JsonNode field(JsonNode sheet, String measure) {
        for (var step : sheet.path("steps")) {
            for (var group : step.path("groups")) {
                for (var field : group.path("fields")) {
                    if (field.path("measure").stringValue().equals(measure) && field.has("expected")) {
                        return field;
                    }
                }
            }
        }
        throw new AssertionError("nothing is expected of " + measure);
    }

    private String wheel() {
        return String.valueOf(car.visits().getLast().arrivedOn().get(Corner.LF));
    }
}
