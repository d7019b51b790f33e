package cornerbook.core.lift;

import static cornerbook.core.lift.Ratings.rated;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Corner;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Facts;
import cornerbook.core.say.Said;
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

    /** 400 kg on an arm rated 400 kg, 1600 kg on a hoist rated 1600 kg: at a rating is not above it. */
    @Test
    void aRatingMayBeReached() {
        var loads = ArmLoads.of(CAR, POINTS, List.of(), rated(400, 1600));
        assertThat(loads.arm(Corner.LR).loadKg()).isCloseTo(400, within(1e-9));
        assertThat(loads.arm(Corner.LR).overloaded()).isFalse();
        assertThat(loads.holds()).isTrue();
    }

    /** 800 kg when one pad bears nothing: on an arm rated 800 kg nothing is said, on one rated 799 kg it is, and the car is lifted. */
    @Test
    void anArmThatOnlyUnevenPadsWouldOverloadIsACautionWithItsNumber() {
        assertThat(ArmLoads.of(CAR, POINTS, List.of(), rated(800, 1600)).cautions())
                .isEqualTo(LiftCautions.ALWAYS);
        var loads = ArmLoads.of(CAR, POINTS, List.of(), new HoistRating(1600, 1000.0, 799.0));
        assertThat(loads.holds()).isTrue();
        assertThat(loads.cautions())
                .extracting(Facts::of)
                .anyMatch(caution -> caution.matches("ArmUneven\\([LR]R, 800 kg, 100.1 %\\)"))
                .hasSize(1 + LiftCautions.ALWAYS.size());
    }

    @Test
    void anArmAboveItsRatingIsNamed() {
        var loads = ArmLoads.of(CAR, POINTS, List.of(), new HoistRating(4000, 399.0, 1000.0));
        assertThat(loads.holds()).isFalse();
        assertThat(loads.cautions())
                .extracting(Facts::of)
                .contains("ArmOverloaded(LF, 400 kg, 399 kg)", "ArmOverloaded(RF, 400 kg, 399 kg)")
                .hasSize(2 + LiftCautions.ALWAYS.size());
    }

    /** A quarter of the hoist's rating, where nobody read the plate of an arm, and that is said. */
    @Test
    void anArmWithoutAPlateIsAQuarterOfTheHoist() {
        var loads = ArmLoads.of(CAR, POINTS, List.of(), new HoistRating(4000, null, 1200.0));
        assertThat(loads.arm(Corner.LF).ratingKg()).isEqualTo(1000);
        assertThat(loads.arm(Corner.LR).ratingKg()).isEqualTo(1200);
        assertThat(loads.cautions()).contains(LiftSaid.Sentence.ARM_PLATES_NOT_READ);
    }

    /** Without lift points each arm has half of its axle, whatever the wheelbase, and the place of the centre of gravity is left out. */
    @Test
    void withoutLiftPointsThePadsAreUnderTheAxles() {
        for (double wheelbaseMm : new double[] {2400, 3200}) {
            var loads = ArmLoads.of(new CarMass(900, 700, wheelbaseMm, 0.5, 1550), null, List.of(), rated(1000, 4000));
            assertThat(loads.arm(Corner.LF).loadKg()).isCloseTo(450, within(1e-9));
            assertThat(loads.arm(Corner.RR).loadKg()).isCloseTo(350, within(1e-9));
            assertThat(loads.arm(Corner.LF).mostKg()).isCloseTo(800, within(1e-9));
            assertThat(loads.marginMm()).isNull();
            assertThat(loads.cautions()).contains(LiftSaid.Sentence.PADS_UNDER_AXLES);
            assertThat(loads.steps()).extracting(step -> step.what()).doesNotContain(LiftSaid.Label.MARGIN);
        }
    }

    @Test
    void aCarHeavierThanTheHoistIsNotLifted() {
        var loads = ArmLoads.of(CAR, POINTS, List.of(), rated(5000, 1599));
        assertThat(loads.holds()).isFalse();
        assertThat(loads.cautions()).contains(LiftSaid.Sentence.TOO_HEAVY);
        assertThat(loads.hoistShare()).isCloseTo(1600 / 1599.0, within(1e-12));
    }

    /** The centre of gravity lies 1350 mm behind the front axle; 150 mm inside the points are asked (common practice, no source). */
    @ParameterizedTest
    @CsvSource({"1200, false", "1201, true", "1300, true"})
    void nearTheEdgeOfThePointsItIsPlacedAnew(double frontMm, boolean anew) {
        var loads = ArmLoads.of(CAR, LiftPoints.symmetric(frontMm, 2500, 1500), List.of(), rated(5000, 5000));
        assertThat(loads.marginMm()).isCloseTo(1350 - frontMm, within(1e-9));
        assertThat(loads.cautions().stream().anyMatch(LiftSaid.BadlyPlaced.class::isInstance))
                .isEqualTo(anew);
    }

    @Test
    void outsideThePointsItTips() {
        assertThat(Facts.refused(
                        () -> ArmLoads.of(CAR, LiftPoints.symmetric(1500, 2600, 1500), List.of(), rated(5000, 5000))))
                .isEqualTo("WouldTip(1350 mm, 0 mm, 150 mm)");
        assertThat(Facts.refused(
                        () -> ArmLoads.of(CAR, LiftPoints.symmetric(1350, 2600, 1500), List.of(), rated(5000, 5000))))
                .as("on the line it balances on two pads")
                .startsWith("WouldTip(1350 mm, 0 mm, ");
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
        var loads = ArmLoads.of(CAR, points, List.of(), rated(5000, 5000));
        assertThat(loads.arm(Corner.RR).loadKg()).isZero();
        assertThat(loads.cautions()).contains(new LiftSaid.CarriesNothing(Corner.RR));
        assertThat(loads.cautions())
                .filteredOn(LiftSaid.CarriesNothing.class::isInstance)
                .hasSize(1);
    }

    /** What is on the axles, what came off, and what each arm bears can be followed. */
    @Test
    void theWorkingShowsMassesAndArms() {
        var loads = ArmLoads.of(CAR, POINTS, PartOff.wheels(20, 2700), rated(1000, 4000));
        assertThat(loads.steps())
                .filteredOn(step -> step.unit().equals("kg"))
                .extracting(step -> Facts.of(step.what()), step -> Math.rint(step.value()))
                .containsExactlyInAnyOrder(
                        tuple("CAR_ON_WHEELS", 1600.0),
                        tuple("PartIsOff(FRONT_WHEELS)", -40.0),
                        tuple("PartIsOff(REAR_WHEELS)", -40.0),
                        tuple("ArmAt(LF)", 380.0),
                        tuple("ArmAt(RF)", 380.0),
                        tuple("ArmAt(LR)", 380.0),
                        tuple("ArmAt(RR)", 380.0));
        assertThat(loads.totalKg()).isCloseTo(1520, within(1e-9));
    }

    /** Points written down at the wrong corner would turn the whole picture round. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2100 750 600 -750 2100 750 2100 -750 | NotAhead(LF, LR)",
                "600 750 2100 -750 2100 750 2100 -750 | NotAhead(RF, RR)",
                "600 -750 600 -750 2100 750 2100 -750 | NotLeft(LF, RF)",
                "600 750 600 -750 2100 -750 2100 -750 | NotLeft(LR, RR)"
            })
    void pointsAtTheWrongCornerAreRefused(String places, String message) {
        var at = List.of(places.split(" ")).stream().map(Double::valueOf).toList();
        assertThat(Facts.refused(() -> new LiftPoints(
                        new LiftPoint(at.get(0), at.get(1)),
                        new LiftPoint(at.get(2), at.get(3)),
                        new LiftPoint(at.get(4), at.get(5)),
                        new LiftPoint(at.get(6), at.get(7)))))
                .isEqualTo(message);
    }

    /** By moments: 52 % on the left of a track of 1550 mm are 31 mm; 100 kg less at 300 mm left bring it to 19 600/1500 mm. */
    @Test
    void theCentreMovesAwayFromWhatCameOff() {
        var car = new CarMass(800, 800, 2700, 0.52, 1550);
        assertThat(CentreOfGravity.of(car, List.of()).leftOfCentreMm()).isCloseTo(31, within(1e-9));
        var off = CentreOfGravity.of(car, List.of(new PartOff(Said.verbatim("battery"), 100, 1350, 300)));
        assertThat(off.leftOfCentreMm()).isCloseTo(19_600 / 1500.0, within(1e-9));
        assertThat(off.behindFrontAxleMm()).isCloseTo(1350, within(1e-9));
    }

    @Test
    void aCarIsNotTakenApartAltogether() {
        var half = new PartOff(Said.verbatim("half"), 800, 1350, 0);
        assertThat(Facts.refused(() -> CentreOfGravity.of(CAR, List.of(half, half))))
                .isEqualTo("PARTS_TOO_HEAVY");
    }

    /** Arm 120 mm, adapter 40 mm and 10 mm of play under a point at 140 mm: 30 mm are missing, and 30 mm of blocks are enough. */
    @ParameterizedTest
    @CsvSource({"0, false", "29, false", "30, true"})
    void theArmGoesUnderWithEnoughBlocks(double blocksMm, boolean goesUnder) {
        var stack = LiftStack.of(140, 160, 120, 40, blocksMm);
        assertThat(stack.neededMm()).isEqualTo(30);
        assertThat(stack.goesUnder()).isEqualTo(goesUnder);
        assertThat(stack.cautions().contains(new LiftSaid.NeedsBlocks(new Amount(30, "mm", 0))))
                .isNotEqualTo(goesUnder);
    }

    /** Base plate 60 mm and 10 mm of play under 70 mm of clearance: just over; under 69 mm it would touch. */
    @ParameterizedTest
    @CsvSource({"70, true", "69, false"})
    void aLowCarMayNotGetToItsPlace(double clearanceMm, boolean drivesOver) {
        var over = DriveOver.of(clearanceMm, 60);
        assertThat(over.spareMm()).isEqualTo(clearanceMm - 70);
        assertThat(over.clears()).isEqualTo(drivesOver);
        assertThat(over.cautions()).hasSize(drivesOver ? 0 : 1);
    }

    /** Ceiling 3500 mm, gap 100 mm, roof 1400 mm above the lift point, adapter 40 mm: pads to 1960 mm. */
    @ParameterizedTest
    @CsvSource({"1900, 1900, false", "1960, 1960, false", "1961, 1960, true", "2100, 1960, true"})
    void aCeilingEndsTheLift(double raisedMm, double padsMm, boolean limited) {
        var raise = LiftRaise.of(180, 40, raisedMm, 1580, 3500);
        assertThat(raise.padsMm()).isEqualTo(padsMm);
        assertThat(raise.underMm()).isEqualTo(padsMm + 40 - 180);
        assertThat(raise.limited()).isEqualTo(limited);
        assertThat(raise.cautions()).hasSize(limited ? 1 : 0);
    }

    @Test
    void heightsThatNoShopHasAreRefused() {
        var rating = rated(1000, 4000);
        assertThat(Facts.refused(() -> new Hoist(4, rating, List.of(), 5001.0, List.of(), null, null)))
                .isEqualTo("OutOfRange(ADAPTER_RATING, 5001 kg, 200 to 5000 kg)");
        assertThat(Facts.refused(() -> new Hoist(4, rating, List.of(), null, List.of(), 4.0, null)))
                .isEqualTo("OutOfRange(DRIVE_OVER_HEIGHT, 4 mm, 5 to 300 mm)");
        assertThat(Facts.refused(() -> new Hoist(4, rating, List.of(), null, List.of(), null, 1700.0)))
                .isEqualTo("OutOfRange(CEILING, 1700 mm, 1800 to 10000 mm)");
        assertThat(Facts.refused(() -> new Hoist(4, rating, List.of(501.0), List.of())))
                .isEqualTo("OutOfRange(ADAPTER_HEIGHT, 501 mm, 0 to 500 mm)");
        assertThat(Facts.refused(() -> new Hoist(4, rating, List.of(), List.of(301.0))))
                .isEqualTo("OutOfRange(BLOCK_HEIGHT, 301 mm, 0 to 300 mm)");
        assertThat(new Hoist(4, rating, List.of(80.0, 40.0), List.of(30.0, 60.0)).highestBlocksMm())
                .isEqualTo(60);
    }
}
