package cornerbook.core.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Corner;
import cornerbook.core.why.Step;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What must not be lifted. An invented car of 1600 kg, the same on both axles and sides: by symmetry 400 kg on each arm, and 800 kg
 * on two of them when one pad bears nothing.
 */
class ArmLoadsTest {
    private static final CarMass CAR = new CarMass(800, 800, 2700, 0.5, 1550);
    private static final LiftPoints POINTS = LiftPoints.symmetric(600, 2100, 1500);

    /** 800 kg on an arm rated 800 kg, 1600 kg on a hoist rated 1600 kg: at a rating is not above it. */
    @Test
    void aRatingMayBeReached() {
        var loads = ArmLoads.of(CAR, POINTS, List.of(), 800, 1600);
        assertThat(loads.arm(Corner.LR).mostKg()).isCloseTo(800, within(1e-9));
        assertThat(loads.holds()).isTrue();
        assertThat(loads.cautions()).isEqualTo(LiftCautions.ALWAYS);
    }

    @Test
    void anArmAboveItsRatingIsNamed() {
        var loads = ArmLoads.of(CAR, POINTS, List.of(), new HoistRating(4000, 799, 1000));
        assertThat(loads.holds()).isFalse();
        assertThat(loads.cautions())
                .contains(
                        "The arm at LF may carry 800 kg, more than its rating: do not lift.",
                        "The arm at RF may carry 800 kg, more than its rating: do not lift.")
                .hasSize(2 + LiftCautions.ALWAYS.size());
    }

    @Test
    void aCarHeavierThanTheHoistIsNotLifted() {
        var loads = ArmLoads.of(CAR, POINTS, List.of(), 5000, 1599);
        assertThat(loads.holds()).isFalse();
        assertThat(loads.cautions()).contains("The car is heavier than the hoist's rating: do not lift.");
        assertThat(loads.hoistShare()).isCloseTo(1600 / 1599.0, within(1e-12));
    }

    /** The centre of gravity lies 1350 mm behind the front axle; 150 mm inside the points are asked (common practice, no source). */
    @ParameterizedTest
    @CsvSource({"1200, false", "1201, true", "1300, true"})
    void nearTheEdgeOfThePointsItIsPlacedAnew(double frontMm, boolean anew) {
        var loads = ArmLoads.of(CAR, LiftPoints.symmetric(frontMm, 2500, 1500), List.of(), 5000, 5000);
        assertThat(loads.marginMm()).isCloseTo(1350 - frontMm, within(1e-9));
        assertThat(loads.cautions().stream().anyMatch(caution -> caution.contains("place the car anew")))
                .isEqualTo(anew);
    }

    @Test
    void outsideThePointsItTips() {
        assertThatThrownBy(() -> ArmLoads.of(CAR, LiftPoints.symmetric(1500, 2600, 1500), List.of(), 5000, 5000))
                .hasMessageContaining("150 mm outside the lift points: the car would tip, do not lift");
        assertThatThrownBy(() -> ArmLoads.of(CAR, LiftPoints.symmetric(1350, 2600, 1500), List.of(), 5000, 5000))
                .as("on the line it balances on two pads")
                .hasMessageContaining("do not lift");
    }

    /**
     * Points set too far back and to the right: the load comes near one corner of the rectangle, and the pad across from it hangs in
     * the air. Farther than a quarter of the diagonal from the middle (square table, Timoshenko, from memory).
     */
    @Test
    void aPadThatHangsInTheAirIsNamed() {
        var points = new LiftPoints(
                new LiftPoint(1250, 100),
                new LiftPoint(1250, -900),
                new LiftPoint(2250, 100),
                new LiftPoint(2250, -900));
        var loads = ArmLoads.of(CAR, points, List.of(), 5000, 5000);
        assertThat(loads.arm(Corner.RR).loadKg()).isZero();
        assertThat(loads.cautions()).contains("The pad at RR carries nothing, so the car can rock.");
        assertThat(loads.cautions())
                .filteredOn(caution -> caution.contains("can rock"))
                .hasSize(1);
    }

    /** What is on the axles, what came off, and what each arm bears can be followed. */
    @Test
    void theWorkingShowsMassesAndArms() {
        var loads = ArmLoads.of(CAR, POINTS, PartOff.wheels(20, 2700), 1000, 4000);
        assertThat(loads.steps())
                .filteredOn(step -> step.unit().equals("kg"))
                .extracting(Step::what, step -> Math.rint(step.value()))
                .containsExactlyInAnyOrder(
                        tuple("car on its wheels", 1600.0),
                        tuple("front wheels off", -40.0),
                        tuple("rear wheels off", -40.0),
                        tuple("arm at LF", 380.0),
                        tuple("arm at RF", 380.0),
                        tuple("arm at LR", 380.0),
                        tuple("arm at RR", 380.0));
        assertThat(loads.totalKg()).isCloseTo(1520, within(1e-9));
    }

    /** Points written down at the wrong corner would turn the whole picture round. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2100 750 600 -750 2100 750 2100 -750 | lift point LF is not ahead of LR, expected the front ones ahead",
                "600 750 2100 -750 2100 750 2100 -750 | lift point RF is not ahead of RR, expected the front ones ahead",
                "600 -750 600 -750 2100 750 2100 -750 | lift point LF is not left of RF, expected the left ones further left",
                "600 750 600 -750 2100 -750 2100 -750 | lift point LR is not left of RR, expected the left ones further left"
            })
    void pointsAtTheWrongCornerAreRefused(String places, String message) {
        var at = List.of(places.split(" ")).stream().map(Double::valueOf).toList();
        assertThatThrownBy(() -> new LiftPoints(
                        new LiftPoint(at.get(0), at.get(1)),
                        new LiftPoint(at.get(2), at.get(3)),
                        new LiftPoint(at.get(4), at.get(5)),
                        new LiftPoint(at.get(6), at.get(7))))
                .hasMessage(message);
    }

    /** By moments: 52 % on the left of a track of 1550 mm are 31 mm; 100 kg less at 300 mm left bring it to 19 600/1500 mm. */
    @Test
    void theCentreMovesAwayFromWhatCameOff() {
        var car = new CarMass(800, 800, 2700, 0.52, 1550);
        assertThat(CentreOfGravity.of(car, List.of()).leftOfCentreMm()).isCloseTo(31, within(1e-9));
        var off = CentreOfGravity.of(car, List.of(new PartOff("battery", 100, 1350, 300)));
        assertThat(off.leftOfCentreMm()).isCloseTo(19_600 / 1500.0, within(1e-9));
        assertThat(off.behindFrontAxleMm()).isCloseTo(1350, within(1e-9));
    }

    @Test
    void aCarIsNotTakenApartAltogether() {
        var half = new PartOff("half", 800, 1350, 0);
        assertThatThrownBy(() -> CentreOfGravity.of(CAR, List.of(half, half))).hasMessageContaining("expected less");
    }

    /** Arm 120 mm, adapter 40 mm and 10 mm of play under a point at 140 mm: 30 mm are missing, and 30 mm of blocks are enough. */
    @ParameterizedTest
    @CsvSource({"0, false", "29, false", "30, true"})
    void theArmGoesUnderWithEnoughBlocks(double blocksMm, boolean goesUnder) {
        var stack = LiftStack.of(140, 160, 120, 40, blocksMm);
        assertThat(stack.neededMm()).isEqualTo(30);
        assertThat(stack.goesUnder()).isEqualTo(goesUnder);
        assertThat(stack.cautions()
                        .contains(
                                "The arm does not go under: drive the car onto blocks of 30 mm under all four wheels."))
                .isNotEqualTo(goesUnder);
    }

    @Test
    void heightsThatNoShopHasAreRefused() {
        var rating = new HoistRating(4000, 1000, 1000);
        assertThatThrownBy(() -> new Hoist(4, rating, List.of(501.0), List.of()))
                .hasMessageContaining("adapter");
        assertThatThrownBy(() -> new Hoist(4, rating, List.of(), List.of(301.0)))
                .hasMessageContaining("blocks");
        assertThat(new Hoist(4, rating, List.of(80.0, 40.0), List.of(30.0, 60.0)).highestBlocksMm())
                .isEqualTo(60);
    }
}
