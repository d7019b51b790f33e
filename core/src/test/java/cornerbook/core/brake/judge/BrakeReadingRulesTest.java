package cornerbook.core.brake.judge;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.assess.VisitRules;
import cornerbook.core.brake.BrakeSpecification.Caliper;
import cornerbook.core.brake.caliper.CaliperFindings;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.MeasureName;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.WrittenReading;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BrakeReadingRulesTest {
    @Test
    void pinsOfTheOtherKindOfCaliperCannotBeReadAnew() {
        var slidePins = Cars.reading(Measure.SLIDE_PIN_MOVEMENT, Corner.LF, null, null, 0);
        assertThat(VisitRules.refuseNew(Cars.withBrake(Caliper.FIXED, true), slidePins))
                .contains(new BrakeSaid.WrongCaliper(
                        new MeasureName(Measure.SLIDE_PIN_MOVEMENT), Corner.LF, Caliper.FIXED));
        assertThat(VisitRules.refuseNew(Cars.withBrake(Caliper.SLIDING, true), slidePins))
                .isEmpty();
        assertThat(VisitRules.refuseNew(
                        Cars.withBrake(Caliper.SLIDING, true),
                        Cars.reading(Measure.RETAINING_PIN_MOVEMENT, Corner.RR, null, null, 0)))
                .contains(new BrakeSaid.WrongCaliper(
                        new MeasureName(Measure.RETAINING_PIN_MOVEMENT), Corner.RR, Caliper.SLIDING));
    }

    /** The kind of caliper was put right afterwards: what was read stays in the book and judges nothing. */
    @Test
    void pinsThatWereReadAtTheOtherKindOfCaliperStandAndAreNotUsed() {
        var car = Cars.withBrake(Caliper.FIXED, true);
        var seized = Cars.reading(Measure.SLIDE_PIN_MOVEMENT, Corner.LF, null, null, 2);
        assertThat(problem(car, seized)).isEmpty();
        var readings = new StandingReadings(List.of(seized));
        assertThat(BrakeReadingRules.notUsed(car, readings))
                .containsExactly(new BrakeSaid.NotUsedForCaliper(
                        Corner.LF, new MeasureName(Measure.SLIDE_PIN_MOVEMENT), Caliper.FIXED));
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
                .contains(new BrakeSaid.ThickerThanNew(
                        new MeasureName(Measure.PAD_THICKNESS), Spot.INNER, Corner.LF, mm(11.6), mm(11), mm(11.5)));
        assertThat(problem(Cars.reading(Measure.DISC_THICKNESS, Corner.LF, null, null, 28.4)))
                .contains(new BrakeSaid.ThickerThanNew(
                        new MeasureName(Measure.DISC_THICKNESS), null, Corner.LF, mm(28.4), mm(28), mm(28.3)));
        assertThat(problem(written(Measure.DISC_THICKNESS_VARIATION, "28.40 28.41 28.40 28.39 mm")))
                .hasValueSatisfying(problem ->
                        assertThat(((BrakeSaid.ThickerThanNew) problem).read()).isEqualTo(mm(28.41)));
    }

    @Test
    void theDiscMovesByFewerStudsThanThereAre() {
        assertThat(problem(Cars.reading(Measure.DISC_MOVED_BY, Corner.LF, null, null, 4)))
                .isEmpty();
        assertThat(problem(Cars.reading(Measure.DISC_MOVED_BY, Corner.LF, null, null, 5)))
                .contains(new BrakeSaid.MovedOnByNoStud(Corner.LF, new Amount(5, "studs", 0), 4, 5));
        assertThat(problem(Cars.reading(Measure.DISC_MOVED_BY, Corner.LF, null, null, 1.5)))
                .contains(new BrakeSaid.MovedOnByNoStud(Corner.LF, new Amount(1.5, "studs", 1), 4, 5));
    }

    @Test
    void theDialStandsFartherOutOnTheDisc() {
        var hub = Cars.reading(Measure.HUB_DIAL_RADIUS, Corner.LF, null, null, 130);
        var disc = Cars.reading(Measure.DISC_DIAL_RADIUS, Corner.LF, null, null, 60);
        assertThat(BrakeReadingRules.problem(Cars.vehicle(), new StandingReadings(List.of(hub, disc)), disc))
                .contains(
                        new BrakeSaid.DialNotFartherOut(Corner.LF, new Amount(60, "mm", 0), new Amount(130, "mm", 0)));
    }

    @Test
    void aCorrectedReadingBlocksNothing() {
        var mistake = Cars.reading(Measure.PAD_THICKNESS, Corner.LF, null, Spot.INNER, 12);
        var right = new Reading(
                "right", Measure.PAD_THICKNESS, Corner.LF, null, Spot.INNER, 10.2, "10.2 mm", mistake.id(), "misread");
        assertThat(BrakeReadingRules.problem(Cars.vehicle(), new StandingReadings(List.of(mistake, right)), mistake))
                .isEmpty();
    }

    private static Amount mm(double thicknessMm) {
        return new Amount(thicknessMm, "mm", 2);
    }

    private static Reading written(Measure measure, String text) {
        return new Reading(
                "r", measure, Corner.LF, null, null, WrittenReading.valueOf(measure, text), text, null, null);
    }

    private static Optional<Said> problem(Reading reading) {
        return problem(Cars.vehicle(), reading);
    }

    private static Optional<Said> problem(Vehicle vehicle, Reading reading) {
        return BrakeReadingRules.problem(vehicle, new StandingReadings(List.of(reading)), reading);
    }
}
