package cornerbook.app.desk.visit;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.desk.BrakeDust;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.app.door.ServedShop;
import cornerbook.core.car.Reading;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The brakes as they are entered: what stands, what is refused, and what follows from it on the other pages. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BrakeEntryTest {
    /** Sliding calipers all round; its brakes are not read yet. Nobody looked up its masses. */
    private static final String VISIT = "demo-08-v7";
    /** Fixed calipers in front, sliding ones behind; all was looked up. */
    private static final String OTHER = "demo-05-v7";

    @AutoClose
    private ServedShop shop;

    @BeforeAll
    void start(@TempDir Path folder) {
        shop = new ServedShop(folder, ServedShop.cars());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "PAD_THICKNESS.LF.INNER. | 12.5 | Pad thickness 12.50 mm inner at LF is above new (11.00 mm), expected at most 11.50 mm.",
                "DISC_THICKNESS_VARIATION.LF.. | 25.4 25.5 25.4 | 3 points around the disc, expected 4 to 36, or one value.",
                "DISC_RUNOUT.LF.. | -0.03 | −0.03 mm cannot be, expected 0 to 5 mm.",
                "PAD_MOVEMENT.LF.INNER. | loose | expected one of free, tight, seized.",
                "DISC_MOVED_BY.LF.. | 5 | expected 1 to 4 of 5.",
                "BRAKE_FLUID_WATER... | 12 % | 12 % cannot be, expected 0 to 10 %.",
                "PEDAL_PUMPED... | maybe | expected one of not done, done."
            })
    void whatCannotBeIsRefusedAtItsFieldAndNothingIsStored(String field, String typed, String sentence)
            throws Exception {
        var before = shop.readings(VISIT);
        var answer = shop.post(VisitLinks.visit(VISIT), Map.of("form", "f", field, typed, "DISC_LIP.RF..", "0.4"));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("id=\"error." + field + "\"", sentence);
        assertThat(shop.readings(VISIT)).isEqualTo(before);
    }

    @Test
    void fieldsFitTheCaliperAndTheParkingBrake() throws Exception {
        var fixed = shop.get(VisitLinks.visit(OTHER)).body();
        assertThat(fixed)
                .contains("name=\"RETAINING_PIN_MOVEMENT.LF..\"", "name=\"SLIDE_PIN_MOVEMENT.LR..\"")
                .doesNotContain("name=\"SLIDE_PIN_MOVEMENT.LF..\"", "name=\"RETAINING_PIN_MOVEMENT.LR..\"");
        assertThat(fixed).contains("never blow it off", "Slide pins: rubber-safe grease", "Pump the pedal");
    }

    @Test
    void wordsAndPointsAreStoredAsTheyWereWritten() throws Exception {
        var visit = "demo-11-v7";
        var answer = shop.post(
                VisitLinks.visit(visit),
                Map.of(
                        "form", "g",
                        "PAD_EDGE_LIFT.RF.OUTER.", "slight",
                        "DISC_RUNOUT.RF..", "0 20 40 20 0 -20 -40 -20 µm",
                        "BRACKET_CLEANED.RF..", "done"));
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(shop.readings(visit))
                .extracting(Reading::asWritten)
                .contains("slight", "0 20 40 20 0 -20 -40 -20 µm", "done");
        assertThat(shop.get(VisitLinks.findings(visit)).body())
                .contains("friction material lifts off its plate", "The caliper at RF is not closed.");
    }

    /** The same value is no change, whichever mark parts its digits. */
    @Test
    void inFrenchWhatIsStoredShowsWithACommaAndStandsWhenItIsSentBack() throws Exception {
        var visit = "demo-11-v7";
        var first = shop.post(
                VisitLinks.visit(visit),
                Map.of("form", "i", "DISC_LIP.LF..", "0.4", "DISC_RUNOUT.LF..", "0 0.02 0.04 0.02"));
        assertThat(first.statusCode()).isEqualTo(303);
        var before = shop.readings(visit);
        var page = shop.send(shop.request(VisitLinks.visit(visit)).header("Accept-Language", "fr-CA"))
                .body();
        assertThat(page).contains("value=\"0,4\"", "value=\"0 0,02 0,04 0,02\"");
        var again = shop.post(
                VisitLinks.visit(visit),
                Map.of("form", "k", "DISC_LIP.LF..", "0,4", "DISC_RUNOUT.LF..", "0 0,02 0,04 0,02"));
        assertThat(again.statusCode()).isEqualTo(303);
        assertThat(shop.readings(visit)).isEqualTo(before);
    }

    @Test
    void brakePairsOfTheWeekAreCountedForTheDustRule() throws Exception {
        var count = BrakeDust.ofWeek(shop.book(), ServedShop.TODAY).pairs();
        assertThat(shop.get("/").body())
                .contains("Brake pairs worked on this week: " + count + ".", "29 CFR 1910.1001");
        shop.post(
                VisitLinks.visit(VISIT),
                Map.of("form", "h", "BRACKET_CLEANED.LF..", "done", "BRACKET_CLEANED.RF..", "done"));
        assertThat(BrakeDust.ofWeek(shop.book(), ServedShop.TODAY).pairs())
                .as("one axle is one pair")
                .isEqualTo(count + 1);
        assertThat(BrakeDust.ofWeek(shop.book(), ServedShop.TODAY.plusDays(7)).pairs())
                .isZero();
        assertThat(new BrakeDust(5).isOver()).isFalse();
        assertThat(new BrakeDust(6).sentence()).contains("enclosure");
    }

    @Test
    void burnishIsPlannedFromTheCarOrAsksForWhatItLacks() throws Exception {
        assertThat(shop.get(VisitLinks.burnish(OTHER)).body())
                .contains("Slow down moderately", "Temperature of a front disc", "Keep regeneration out");
        var asked = shop.get(VisitLinks.burnish(VISIT));
        assertThat(asked.statusCode()).isEqualTo(200);
        assertThat(asked.body()).contains("There is no plan yet").doesNotContain("Slow down moderately");
        var typed =
                "?mass=1500&frontShare=60&frontDiscMass=7&frontDiscDiameter=300&rearDiscMass=6&rearDiscDiameter=290&air=";
        assertThat(shop.get(VisitLinks.burnish(VISIT) + typed + "10").body()).contains("Slow down moderately");
        var refused = shop.get(VisitLinks.burnish(VISIT) + typed + "warm");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("id=\"error.air\"", "is not a quantity");
    }
}
