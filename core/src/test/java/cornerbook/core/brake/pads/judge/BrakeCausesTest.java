package cornerbook.core.brake.pads.judge;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.brake.BrakeDetails;
import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.brake.pads.BrakeCause;
import cornerbook.core.brake.pads.BrakeSign;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Evidence;
import cornerbook.core.say.Listed;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which signs of an invented car's brake lead to which cause: brake parts makers' service literature, else common practice. */
class BrakeCausesTest {
    /** Words in their order: free, tight, seized. */
    @ParameterizedTest
    @CsvSource({"0, PAD_FREE", "1, PAD_TIGHT", "2, PAD_STUCK"})
    void aPadMovedByHandIsASign(double place, BrakeSign sign) {
        assertThat(signs(Corner.RR, Cars.reading(Measure.PAD_MOVEMENT, Corner.RR, null, Spot.INNER, place)))
                .containsExactly(sign);
    }

    /** The other side of the axle, and not the other axle, is what a corner is held against. */
    @Test
    void theOtherSideOfTheAxleIsASign() {
        assertThat(signs(Corner.LF, pad(Corner.LF, 5), pad(Corner.RF, 8)))
                .containsExactly(BrakeSign.WORN_FASTER_THAN_OTHER_SIDE);
        assertThat(signs(Corner.RF, pad(Corner.LF, 5), pad(Corner.RF, 8)))
                .containsExactly(BrakeSign.WORN_SLOWER_THAN_OTHER_SIDE);
        assertThat(signs(Corner.LF, pad(Corner.LF, 5), pad(Corner.LR, 8))).isEmpty();
        assertThat(signs(Corner.LR, pad(Corner.LR, 5), pad(Corner.RR, 8)))
                .containsExactly(BrakeSign.WORN_FASTER_THAN_OTHER_SIDE);
    }

    /** Rust is written in percent of a face, from 15 % on it counts; one face alone is no comparison. */
    @Test
    void rustOnTheFacesIsASign() {
        assertThat(signs(Corner.RR, rust(Spot.INNER, 20), rust(Spot.OUTER, 14)))
                .containsExactly(BrakeSign.ONE_FACE_RUSTIER);
        assertThat(signs(Corner.RR, rust(Spot.INNER, 14), rust(Spot.OUTER, 14))).containsExactly(BrakeSign.FACES_CLEAN);
        assertThat(signs(Corner.RR, rust(Spot.INNER, 20))).isEmpty();
    }

    /** The wedge is that of the pad that is worn most unevenly. */
    @Test
    void theWorseWedgeIsTheSign() {
        assertThat(signs(
                        Corner.RR,
                        edge(Measure.PAD_THICKNESS, Spot.INNER, 8),
                        edge(Measure.PAD_THICKNESS_TRAILING, Spot.INNER, 7.9),
                        edge(Measure.PAD_THICKNESS, Spot.OUTER, 7),
                        edge(Measure.PAD_THICKNESS_TRAILING, Spot.OUTER, 8)))
                .contains(BrakeSign.PAD_TAPERED);
    }

    /** Faster than the other side, a piston that stays, a free pad: at the rear the parking brake may drag, at the front there is none. */
    @Test
    void onlyAnAxleWithAParkingBrakeHasOneThatDrags() {
        assertThat(told(Cars.vehicle(), Corner.RR))
                .extracting(PadSaid.CauseChance::cause)
                .contains(BrakeCause.PARKING_BRAKE_DRAGGING);
        assertThat(told(Cars.vehicle(), Corner.RF))
                .extracting(PadSaid.CauseChance::cause)
                .doesNotContain(BrakeCause.PARKING_BRAKE_DRAGGING);
        var none = Cars.withBrake(new BrakeDetails(BrakeDetails.ParkingBrake.DRUM_IN_DISC, null, null, null, null));
        assertThat(told(none, Corner.RF))
                .extracting(PadSaid.CauseChance::cause)
                .contains(BrakeCause.PARKING_BRAKE_DRAGGING);
    }

    private static List<PadSaid.CauseChance> told(Vehicle vehicle, Corner corner) {
        var other = corner == Corner.RR ? Corner.LR : Corner.LF;
        var readings = List.of(
                pad(corner, 5),
                Cars.reading(Measure.PAD_THICKNESS, corner, null, Spot.INNER, 2.9),
                pad(other, 8),
                Cars.reading(Measure.PISTON_RETURN, corner, null, null, 0.01),
                Cars.reading(Measure.SLIDE_PIN_MOVEMENT, corner, null, null, 0),
                Cars.reading(Measure.PAD_MOVEMENT, corner, null, Spot.INNER, 0),
                Cars.reading(Measure.DISC_RUST, corner, null, Spot.INNER, 1),
                Cars.reading(Measure.DISC_RUST, corner, null, Spot.OUTER, 1));
        return ((Listed) causes(vehicle, corner, readings).getFirst().value())
                .items().stream().map(PadSaid.CauseChance.class::cast).toList();
    }

    /** At most three causes are told, each of at least 5 %, likeliest first. */
    @Test
    void onlyWhatIsWorthTellingIsTold() {
        var percents = told(Cars.vehicle(), Corner.RR).stream()
                .map(told -> told.chance().value())
                .toList();
        assertThat(percents).hasSizeBetween(1, 3).allMatch(percent -> percent >= 5);
        assertThat(percents).isSortedAccordingTo(Comparator.reverseOrder());
        assertThat(percents.stream().mapToDouble(Double::doubleValue).sum()).isBetween(80.0, 100.0);
    }

    private static List<BrakeSign> signs(Corner corner, Reading... readings) {
        return causes(Cars.vehicle(), corner, List.of(readings)).stream()
                .map(Evidence::what)
                .filter(PadSaid.SignSeen.class::isInstance)
                .map(what -> ((PadSaid.SignSeen) what).sign())
                .toList();
    }

    private static List<Evidence> causes(Vehicle vehicle, Corner corner, List<Reading> readings) {
        return BrakeCauses.of(new BrakeCorner(corner, vehicle, new StandingReadings(readings)))
                .evidence();
    }

    private static Reading pad(Corner corner, double thicknessMm) {
        return Cars.reading(Measure.PAD_THICKNESS, corner, null, Spot.OUTER, thicknessMm);
    }

    private static Reading edge(Measure measure, Spot side, double thicknessMm) {
        return Cars.reading(measure, Corner.RR, null, side, thicknessMm);
    }

    private static Reading rust(Spot face, double percent) {
        return Cars.reading(Measure.DISC_RUST, Corner.RR, null, face, percent);
    }
}
