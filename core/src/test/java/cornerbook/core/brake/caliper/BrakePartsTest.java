package cornerbook.core.brake.caliper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import cornerbook.core.assess.BrakeFindings;
import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.brake.caliper.CaliperSaid.ParkingBrakeState;
import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.brake.judge.BrakeSaid;
import cornerbook.core.brake.judge.BrakeSaid.Pair;
import cornerbook.core.brake.pads.judge.PadSaid;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Cases;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Pads in their brackets, calipers, axles as pairs and the parking brake of an invented car. What hand and eye say is common practice,
 * no source.
 */
class BrakePartsTest {
    private static final LocalDate NEXT = Cars.AUTUMN.plusDays(180);

    /** The worse side decides; words of the scale in their order: free, tight, seized. */
    @ParameterizedTest
    @CsvSource({"1, RUNS_OUT, 0.5", "2, SPENT, 0"})
    void aPadThatDoesNotMoveFreelyIsFound(double place, Verdict verdict, double lifeLeft) {
        assertThat(stuck(movement(Spot.OUTER, place), movement(Spot.INNER, 0))).hasValueSatisfying(finding -> {
            assertThat(finding.verdict()).isEqualTo(verdict);
            assertThat(finding.lifeLeft()).isEqualTo(lifeLeft);
            assertThat(finding.horizon()).isNull();
            assertThat(finding.title()).isEqualTo(new CaliperSaid.StuckTitle(Corner.RR, Spot.OUTER, place == 2, false));
            assertThat(finding.subject()).isEqualTo(new Subject(Subject.Part.PAD, Corner.RR, null, null));
        });
        assertThat(stuck(movement(Spot.OUTER, 0), movement(Spot.INNER, 0))).isEmpty();
    }

    /** What was freed is looked at again at the next visit; what is tight after its service was not freed. */
    @ParameterizedTest
    @CsvSource({"1, 0, RUNS_OUT, true", "2, 0, RUNS_OUT, true", "2, 1, SPENT, false", "1, 1, RUNS_OUT, false"})
    void aPadThatWasFreedIsLookedAtAgain(double found, double after, Verdict verdict, boolean freed) {
        assertThat(stuck(movement(Spot.INNER, found), corner(Measure.PAD_MOVEMENT_AFTER_SERVICE, after)))
                .hasValueSatisfying(finding -> {
                    assertThat(finding.verdict()).isEqualTo(verdict);
                    assertThat(Optional.ofNullable(finding.horizon()))
                            .isEqualTo(freed ? Optional.of(NEXT) : Optional.empty());
                    assertThat(finding.plainWords()).isEqualTo(new CaliperSaid.Stuck(Corner.RR, found == 2, freed));
                    assertThat(finding.lifeLeft()).isEqualTo(freed ? 1 : found == 2 ? 0 : 0.5);
                });
    }

    @Test
    void newPadsAreFree() {
        assertThat(stuck(movement(Spot.INNER, 2), corner(Measure.PADS_REPLACED, 1)))
                .map(Finding::verdict)
                .contains(Verdict.RUNS_OUT);
        assertThat(findings(
                        corner(Measure.PADS_REPLACED, 1),
                        Cars.reading(Measure.PAD_EDGE_LIFT, Corner.RR, null, Spot.INNER, 2)))
                .noneMatch(finding -> finding.source() == PadSaid.Ground.REJECT_ON_EDGE_LIFT);
    }

    /** Words in their order: sound, worn, damaged; free, tight, seized. Boots, piston and clips alike. */
    @ParameterizedTest
    @EnumSource(
            value = Measure.class,
            names = {"SLIDE_PIN_MOVEMENT", "PISTON_MOVEMENT", "BRAKE_HARDWARE", "BRAKE_BOOTS"})
    void eachPartOfACaliperIsJudgedByItsWord(Measure measure) {
        assertThat(caliper(corner(measure, 0)).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(caliper(corner(measure, 0)).lifeLeft()).isEqualTo(1);
        var light = caliper(corner(measure, 1));
        assertThat(light.verdict()).isEqualTo(Verdict.RUNS_OUT);
        assertThat(light.lifeLeft()).isEqualTo(0.5);
        assertThat(light.title())
                .isEqualTo(new CaliperSaid.FaultsTitle(
                        Corner.RR, Listed.commas(List.of(new CaliperSaid.Fault(measure, 1)))));
        var grave = caliper(corner(measure, 2));
        assertThat(grave.verdict()).isEqualTo(Verdict.SPENT);
        assertThat(grave.lifeLeft()).isZero();
        assertThat(grave.evidence()).extracting(Evidence::what).containsExactly(new CaliperSaid.Looked(measure));
    }

    /** Pins that were cleaned and clips that were replaced are put right; the same service does nothing for piston or boots. */
    @Test
    void whatWasPutRightIsNoFault() {
        var service = corner(Measure.PAD_MOVEMENT_AFTER_SERVICE, 0);
        assertThat(caliper(corner(Measure.SLIDE_PIN_MOVEMENT, 2), service).verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(caliper(corner(Measure.SLIDE_PIN_MOVEMENT, 2), corner(Measure.PAD_MOVEMENT_AFTER_SERVICE, 1))
                        .verdict())
                .isEqualTo(Verdict.SPENT);
        assertThat(caliper(corner(Measure.PISTON_MOVEMENT, 2), service).verdict())
                .isEqualTo(Verdict.SPENT);
        assertThat(caliper(corner(Measure.BRAKE_HARDWARE, 2), corner(Measure.BRAKE_HARDWARE_REPLACED, 1))
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(caliper(corner(Measure.BRAKE_HARDWARE, 2), service).verdict())
                .isEqualTo(Verdict.SPENT);
    }

    /** A piston comes back by more than the runout allowed, 0.05 mm on this car: makers' service advice. */
    @ParameterizedTest
    @CsvSource({"0.05, RUNS_OUT", "0.06, HOLDS", "0, RUNS_OUT"})
    void aPistonHasToComeBack(double returnMm, Verdict verdict) {
        assertThat(caliper(corner(Measure.PISTON_RETURN, returnMm)).verdict()).isEqualTo(verdict);
    }

    /** Mineral paste swells the rubber of slide pins; the retaining pins of a fixed caliper have none. */
    @Test
    void metalPasteDoesNotBelongOnSlidePins() {
        assertThat(caliper(corner(Measure.PIN_LUBRICANT, 2)).verdict()).isEqualTo(Verdict.RUNS_OUT);
        assertThat(caliper(corner(Measure.PIN_LUBRICANT, 1)).verdict()).isEqualTo(Verdict.HOLDS);
        var fixed = new BrakeCorner(
                Corner.RR,
                Cars.withBrake(BrakeSpecification.Caliper.FIXED, true),
                new StandingReadings(List.of(corner(Measure.PIN_LUBRICANT, 2))));
        assertThat(CaliperFindings.of(fixed)).map(Finding::verdict).contains(Verdict.HOLDS);
    }

    @Test
    void aCaliperThatNobodyLookedAtHasNoFinding() {
        assertThat(CaliperFindings.of(at())).isEmpty();
    }

    /** An axle brakes evenly only with the same pads, or discs, on both sides. */
    @Test
    void whatEndsOnOneSideIsReplacedOnBoth() {
        var worn = findings(pads(2.5, 8, 8, 8));
        assertThat(pairs(worn)).singleElement().satisfies(pair -> {
            assertThat(pair.title()).isEqualTo(new BrakeSaid.ReplacePair(Axle.FRONT, Pair.PADS));
            assertThat(pair.plainWords()).isEqualTo(askedFor(Corner.LF));
            assertThat(pair.verdict()).isEqualTo(Verdict.SPENT);
            assertThat(pair.evidence())
                    .extracting(Evidence::what, Evidence::value)
                    .containsExactly(
                            tuple(Corner.LF, new Amount(2.5, "mm", 1)), tuple(Corner.RF, new Amount(8, "mm", 1)));
        });
        assertThat(pairs(findings(pads(2.5, 2.6))).getFirst().plainWords()).isEqualTo(askedFor(Corner.LF, Corner.RF));
        assertThat(pairs(findings(pads(8, 8)))).isEmpty();
    }

    @Test
    void oneSideReplacedAsksForTheOther() {
        assertThat(pairs(findings(Cars.reading(Measure.PADS_REPLACED, Corner.LR, null, null, 1))))
                .singleElement()
                .satisfies(pair -> {
                    assertThat(pair.title()).isEqualTo(new BrakeSaid.ReplacePair(Axle.REAR, Pair.PADS));
                    assertThat(pair.plainWords())
                            .isEqualTo(new BrakeSaid.PairReplacedOnOneSide(Axle.REAR, Pair.PADS, Corner.LR));
                    assertThat(pair.evidence())
                            .extracting(Evidence::value, Evidence::how)
                            .containsExactly(
                                    tuple(BrakeSaid.Label.NOT_MEASURED, BrakeSaid.Ground.REPLACED_AT_THIS_VISIT),
                                    tuple(BrakeSaid.Label.NOT_MEASURED, BrakeSaid.Ground.THINNEST_READING));
                });
        assertThat(pairs(findings(
                        Cars.reading(Measure.PADS_REPLACED, Corner.LR, null, null, 1),
                        Cars.reading(Measure.PADS_REPLACED, Corner.RR, null, null, 1))))
                .isEmpty();
    }

    /** A disc below its minimum asks for both discs; one that is only cracked slightly does so too; a pad stuck by hand does not. */
    @Test
    void discsGoInPairsAndStuckPadsDoNot() {
        assertThat(pairs(findings(Cars.reading(Measure.DISC_THICKNESS, Corner.LR, null, null, 25.8))))
                .singleElement()
                .satisfies(pair -> {
                    assertThat(pair.title()).isEqualTo(new BrakeSaid.ReplacePair(Axle.REAR, Pair.DISCS));
                    assertThat(pair.evidence())
                            .extracting(Evidence::value)
                            .containsExactly(new Amount(25.8, "mm", 1), BrakeSaid.Label.NOT_MEASURED);
                });
        var thinPad = Cars.reading(Measure.PAD_THICKNESS, Corner.LR, null, Spot.INNER, 1.2);
        assertThat(pairs(findings(thinPad, Cars.reading(Measure.DISC_THICKNESS, Corner.LR, null, null, 25.7))))
                .as("new discs bring their pads")
                .extracting(Finding::title)
                .containsExactly(new BrakeSaid.ReplacePair(Axle.REAR, Pair.DISCS));
        assertThat(pairs(findings(thinPad, Cars.reading(Measure.DISC_THICKNESS, Corner.LR, null, null, 26.0))))
                .as("a disc that is only read again brings none")
                .extracting(Finding::title)
                .containsExactly(
                        new BrakeSaid.ReplacePair(Axle.REAR, Pair.DISCS),
                        new BrakeSaid.ReplacePair(Axle.REAR, Pair.PADS));
        assertThat(pairs(findings(movement(Spot.INNER, 2))))
                .as("it can be freed")
                .isEmpty();
    }

    /** Words in their order: holds, holds weakly, does not hold: dangerous by Directive 2014/45/EU, annex I, 1.4.2. */
    @ParameterizedTest
    @CsvSource({"0, HOLDS, 1, HOLDS", "1, RUNS_OUT, 0.5, HOLDS_WEAKLY", "2, UNSAFE, 0, DOES_NOT_HOLD"})
    void theParkingBrakeIsJudgedByItsWord(double place, Verdict verdict, double lifeLeft, ParkingBrakeState state) {
        assertThat(parking(vehicle(Measure.PARKING_BRAKE_HOLDING, place))).hasValueSatisfying(finding -> {
            assertThat(finding.title()).isEqualTo(new CaliperSaid.ParkingBrakeTitle(state));
            assertThat(finding.verdict()).isEqualTo(verdict);
            assertThat(finding.lifeLeft()).isEqualTo(lifeLeft);
            assertThat(finding.evidence().stream().anyMatch(each -> each.what() == BrakeSaid.Label.DIRECTIVE_CATEGORY))
                    .as("a defect by the directive")
                    .isEqualTo(verdict != Verdict.HOLDS);
        });
    }

    /** In service mode it holds nothing, whatever was tried before. */
    @Test
    void aParkingBrakeInServiceModeIsUnsafe() {
        var in = vehicle(Measure.PARKING_BRAKE_IN_SERVICE_MODE, 1);
        var holds = vehicle(Measure.PARKING_BRAKE_HOLDING, 0);
        assertThat(parking(in, holds)).map(Finding::verdict).contains(Verdict.UNSAFE);
        assertThat(parking(in, holds, vehicle(Measure.PARKING_BRAKE_CYCLED, 1)))
                .map(Finding::verdict)
                .contains(Verdict.HOLDS);
        assertThat(parking(in, holds, vehicle(Measure.PARKING_BRAKE_CYCLED, 0)))
                .map(Finding::verdict)
                .contains(Verdict.UNSAFE);
    }

    @Test
    void aParkingBrakeThatWasNotTriedIsSaid() {
        var notJudged = new ArrayList<Said>();
        assertThat(parking(notJudged)).isEmpty();
        assertThat(notJudged).containsExactly(new CaliperSaid.ParkingBrakeNotTried());
    }

    private static Optional<Finding> parking(Reading... readings) {
        return parking(new ArrayList<>(), readings);
    }

    private static Optional<Finding> parking(List<Said> notJudged, Reading... readings) {
        var judged = ParkingBrakeFindings.judge(given(readings));
        notJudged.addAll(judged.notJudged());
        return judged.findings().stream().findFirst();
    }

    private static Case given(Reading... readings) {
        return Cases.of(Cars.vehicle(), Cars.visit(List.of(readings)))
                .running(28, 6)
                .until(NEXT)
                .last();
    }

    private static Said askedFor(Corner... corners) {
        return new BrakeSaid.PairAskedFor(Axle.FRONT, Pair.PADS, Listed.and(List.of(corners)), corners.length);
    }

    private static List<Finding> pairs(List<Finding> findings) {
        return findings.stream()
                .filter(finding -> finding.subject().part() == Subject.Part.BRAKE_PAIR)
                .toList();
    }

    private static Finding caliper(Reading... readings) {
        return CaliperFindings.of(at(readings)).orElseThrow();
    }

    private static BrakeCorner at(Reading... readings) {
        return new BrakeCorner(Corner.RR, Cars.vehicle(), new StandingReadings(List.of(readings)));
    }

    private static Optional<Finding> stuck(Reading... readings) {
        return findings(readings).stream()
                .filter(finding -> finding.subject().part() == Subject.Part.PAD
                        && Objects.equals(finding.subject().corner(), Corner.RR)
                        && finding.title() instanceof CaliperSaid.StuckTitle)
                .findFirst();
    }

    private static List<Finding> findings(Reading... readings) {
        return BrakeFindings.judge(given(readings)).findings();
    }

    /** Both pads of corners in their order, each corner's at one thickness. */
    private static Reading[] pads(double... thicknessesMm) {
        return IntStream.range(0, thicknessesMm.length)
                .boxed()
                .flatMap(i -> BrakeCorner.SIDES.stream()
                        .map(side ->
                                Cars.reading(Measure.PAD_THICKNESS, Corner.values()[i], null, side, thicknessesMm[i])))
                .toArray(Reading[]::new);
    }

    private static Reading movement(Spot side, double place) {
        return Cars.reading(Measure.PAD_MOVEMENT, Corner.RR, null, side, place);
    }

    private static Reading corner(Measure measure, double value) {
        return Cars.reading(measure, Corner.RR, null, null, value);
    }

    private static Reading vehicle(Measure measure, double value) {
        return Cars.reading(measure, null, null, null, value);
    }

    /** The pins of a fixed caliper hold its pads: seized ones stop them as seized slide pins do. */
    @Test
    void theRetainingPinsOfAFixedCaliperAreJudged() {
        var fixed = Cars.withBrake(BrakeSpecification.Caliper.FIXED, true);
        var readings = new StandingReadings(List.of(corner(Measure.RETAINING_PIN_MOVEMENT, 2)));
        assertThat(CaliperFindings.of(new BrakeCorner(Corner.RR, fixed, readings)))
                .map(Finding::verdict)
                .contains(Verdict.SPENT);
    }

    @Test
    void aCaliperIsFoundWithItsCorner() {
        assertThat(findings(corner(Measure.SLIDE_PIN_MOVEMENT, 2)))
                .filteredOn(finding -> finding.subject().part() == Subject.Part.CALIPER)
                .extracting(finding -> finding.subject().corner(), Finding::verdict)
                .containsExactly(tuple(Corner.RR, Verdict.SPENT));
    }

    /** Tight and seized are not the same to the one who has to free them. */
    @Test
    void tightAndSeizedAreToldApart() {
        assertThat(stuck(movement(Spot.INNER, 1)))
                .map(Finding::plainWords)
                .contains(new CaliperSaid.Stuck(Corner.RR, false, false));
        assertThat(stuck(movement(Spot.INNER, 2)))
                .map(Finding::plainWords)
                .contains(new CaliperSaid.Stuck(Corner.RR, true, false));
    }
}
