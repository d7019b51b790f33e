package cornerbook.core.brake.judge;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.assess.VisitRules;
import cornerbook.core.brake.BrakeSpecification.Caliper;
import cornerbook.core.brake.caliper.CaliperFindings;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.WrittenReading;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;

class BrakeReadingRulesTest {
    @Test
    void pinsOfTheOtherKindOfCaliperCannotBeReadAnew() {
        var slidePins = Cars.reading(Measure.SLIDE_PIN_MOVEMENT, Corner.LF, null, null, 0);
        assertThat(VisitRules.refuseNew(Cars.withBrake(Caliper.FIXED, true), slidePins))
                .contains(
                        "slide pin movement at LF cannot be where the caliper is fixed, expected none, or another caliper in the car's data");
        assertThat(VisitRules.refuseNew(Cars.withBrake(Caliper.SLIDING, true), slidePins))
                .isEmpty();
        assertThat(VisitRules.refuseNew(
                        Cars.withBrake(Caliper.SLIDING, true),
                        Cars.reading(Measure.RETAINING_PIN_MOVEMENT, Corner.RR, null, null, 0)))
                .hasValueSatisfying(problem -> assertThat(problem).contains("retaining pin movement at RR"));
    }

    /** The kind of caliper was put right afterwards: what was read stays in the book and judges nothing. */
    @Test
    void pinsThatWereReadAtTheOtherKindOfCaliperStandAndAreNotUsed() {
        var car = Cars.withBrake(Caliper.FIXED, true);
        var seized = Cars.reading(Measure.SLIDE_PIN_MOVEMENT, Corner.LF, null, null, 2);
        assertThat(problem(car, seized)).isEmpty();
        var readings = new StandingReadings(List.of(seized));
        assertThat(BrakeReadingRules.notUsed(car, readings))
                .containsExactly("LF slide pin movement: not used, as the caliper is fixed by the car's data");
        assertThat(CaliperFindings.of(new BrakeCorner(Corner.LF, car, readings)))
                .isEmpty();
        assertThat(CaliperFindings.of(new BrakeCorner(Corner.LF, Cars.vehicle(), readings)))
                .hasValueSatisfying(finding -> assertThat(finding.verdict()).isEqualTo(Verdict.SPENT));
    }

    @Test
    void nothingIsThickerThanNew() {
        assertThat(problem(Cars.reading(Measure.PAD_THICKNESS, Corner.LF, null, Spot.INNER, 11.5)))
                .as("what a gauge may err by")
                .isEmpty();
        assertThat(problem(Cars.reading(Measure.PAD_THICKNESS, Corner.LF, null, Spot.INNER, 11.6)))
                .isEqualTo("pad thickness 11.60 mm inner at LF is above new (11.0 mm), expected at most 11.5 mm");
        assertThat(problem(Cars.reading(Measure.DISC_THICKNESS, Corner.LF, null, null, 28.4)))
                .contains("above new (28.0 mm)");
        assertThat(problem(written(Measure.DISC_THICKNESS_VARIATION, "28.40 28.41 28.40 28.39 mm")))
                .contains("28.41 mm at LF is above new");
    }

    @Test
    void theDiscMovesByFewerStudsThanThereAre() {
        assertThat(problem(Cars.reading(Measure.DISC_MOVED_BY, Corner.LF, null, null, 4)))
                .isEmpty();
        assertThat(problem(Cars.reading(Measure.DISC_MOVED_BY, Corner.LF, null, null, 5)))
                .contains("expected 1 to 4 of 5");
        assertThat(problem(Cars.reading(Measure.DISC_MOVED_BY, Corner.LF, null, null, 1.5)))
                .contains("expected 1 to 4 of 5");
    }

    @Test
    void theDialStandsFartherOutOnTheDisc() {
        var hub = Cars.reading(Measure.HUB_DIAL_RADIUS, Corner.LF, null, null, 130);
        var disc = Cars.reading(Measure.DISC_DIAL_RADIUS, Corner.LF, null, null, 60);
        assertThat(BrakeReadingRules.problem(Cars.vehicle(), Cars.visit(List.of(hub, disc)), disc))
                .hasValueSatisfying(problem -> assertThat(problem).contains("expected it farther out on the disc"));
    }

    @Test
    void aCorrectedReadingBlocksNothing() {
        var mistake = Cars.reading(Measure.PAD_THICKNESS, Corner.LF, null, Spot.INNER, 12);
        var right = new Reading(
                "right", Measure.PAD_THICKNESS, Corner.LF, null, Spot.INNER, 10.2, "10.2 mm", mistake.id(), "misread");
        assertThat(BrakeReadingRules.problem(Cars.vehicle(), Cars.visit(List.of(mistake, right)), mistake))
                .isEmpty();
    }

    private static Reading written(Measure measure, String text) {
        return new Reading(
                "r", measure, Corner.LF, null, null, WrittenReading.valueOf(measure, text), text, null, null);
    }

    private static String problem(Reading reading) {
        return problem(Cars.vehicle(), reading);
    }

    private static String problem(Vehicle vehicle, Reading reading) {
        return BrakeReadingRules.problem(vehicle, Cars.visit(List.of(reading)), reading)
                .orElse("");
    }
}
