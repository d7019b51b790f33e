package cornerbook.core.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.brake.BrakeDetails;
import cornerbook.core.brake.disc.judge.DiscSaid;
import cornerbook.core.brake.judge.BrakePairFindings;
import cornerbook.core.brake.judge.BrakeSaid;
import cornerbook.core.brake.judge.BrakeSaid.Pair;
import cornerbook.core.brake.judge.Deficiency;
import cornerbook.core.brake.pads.BrakeCause;
import cornerbook.core.brake.pads.BrakeSign;
import cornerbook.core.brake.pads.SignSource;
import cornerbook.core.brake.pads.judge.PadSaid;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WrittenReading;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Cases;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

public class BrakeFindingsTest {
    private static final LocalDate NEXT = Cars.AUTUMN.plusDays(180);

    @Test
    void unevenPadsWithStuckPinsNameThePins() {
        var pads = of(
                Subject.Part.PAD,
                Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.INNER, 8.5),
                Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.OUTER, 5.5),
                Cars.reading(Measure.SLIDE_PIN_MOVEMENT, Corner.RR, null, null, 2));
        assertThat(sentences(pads))
                .contains(
                        new PadSaid.WornMore(Spot.OUTER),
                        new PadSaid.CausesFound(Listed.and(List.of(BrakeCause.SLIDE_PINS_SEIZED)), 1))
                .doesNotHaveAnyElementsOfTypes(PadSaid.LookFirst.class, PadSaid.LookAlso.class);
        assertThat(pads.evidence())
                .filteredOn(evidence -> evidence.what() == PadSaid.Label.FOUND_BY_HAND)
                .singleElement()
                .satisfies(cause ->
                        assertThat(cause.value()).isEqualTo(Listed.and(List.of(BrakeCause.SLIDE_PINS_SEIZED))));
    }

    @Test
    void unevenPadsWithTightPinsNameThePins() {
        var pads = of(
                Subject.Part.PAD,
                Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.INNER, 8.5),
                Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.OUTER, 5.5),
                Cars.reading(Measure.SLIDE_PIN_MOVEMENT, Corner.RR, null, null, 1));
        assertThat(sentences(pads))
                .contains(new PadSaid.WornMore(Spot.OUTER), new PadSaid.LookFirst(BrakeCause.SLIDE_PINS_SEIZED));
        assertThat(pads.evidence())
                .filteredOn(evidence -> evidence.what() == PadSaid.Label.LIKELY_CAUSE)
                .singleElement()
                .satisfies(cause -> {
                    assertThat(((PadSaid.CauseChance)
                                            ((Listed) cause.value()).items().getFirst())
                                    .cause())
                            .isEqualTo(BrakeCause.SLIDE_PINS_SEIZED);
                    assertThat(((PadSaid.BayesRule) cause.how()).signs().items())
                            .contains(BrakeSign.OUTER_PAD_THINNER, BrakeSign.SLIDE_PINS_TIGHT);
                });
    }

    @Test
    void evenFreePadsNameNoCause() {
        var pads = of(
                Subject.Part.PAD,
                Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.INNER, 8.5),
                Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.OUTER, 8.1));
        assertThat(sentences(pads)).doesNotHaveAnyElementsOfTypes(PadSaid.LookFirst.class);
        assertThat(pads.evidence()).noneMatch(evidence -> evidence.what() == PadSaid.Label.LIKELY_CAUSE);
    }

    @Test
    void thePointsOfADiscGiveItsVariationAndItsThinnest() {
        var disc = of(
                Subject.Part.DISC,
                Cars.reading(Measure.DISC_THICKNESS, Corner.RR, null, null, 26.1),
                variation("26.012 26.001 25.990 26.004 mm"));
        assertThat(disc.verdict()).as("below 26 mm at one point").isEqualTo(Verdict.SPENT);
        assertThat(disc.evidence())
                .anyMatch(e ->
                        e.what().equals(new DiscSaid.ThinnestOf(4)) && e.value().equals(fine(25.99)))
                .anyMatch(e -> e.what() == DiscSaid.Label.THICKNESS_VARIATION
                        && e.value().equals(new DiscSaid.WithLimit(fine(0.022), fine(0.015))));
        var wobbling = of(
                Subject.Part.DISC,
                Cars.reading(Measure.DISC_THICKNESS, Corner.RR, null, null, 27.0),
                variation("27.012 27.001 26.990 27.004 mm"));
        assertThat(wobbling.verdict()).as("limit 0.015 mm").isEqualTo(Verdict.RUNS_OUT);
    }

    /**
     * "Temperatures should be within 20 to 30 degrees of each other on the same axle. A rotor that is 100 degrees hotter than the
     * opposite side has a dragging caliper" (Fahrenheit; technicians' training library on thermal diagnosis of brakes): 30 °F are
     * 16.7 °C, 100 °F are 55.6 °C.
     */
    @Test
    void discsThatDifferAfterTheDriveTellOfDrag() {
        assertThat(heat(64, 80).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(heat(64, 82).verdict()).isEqualTo(Verdict.RUNS_OUT);
        assertThat(heat(118, 64).verdict()).isEqualTo(Verdict.RUNS_OUT);
        assertThat(heat(121, 64).verdict()).isEqualTo(Verdict.SPENT);
        assertThat(heat(121, 64).plainWords())
                .isEqualTo(new BrakePairFindings.OneIsHotter(Corner.LR, celsius(121), Corner.RR, celsius(64), true));
    }

    /**
     * A vented disc of 7.2 kg and 320 mm on 225/55R18, 57 K warmer than its partner, at 60 km/h: by the formulas of
     * docs/methods/brakes.md, 0.206 m² with 36.3 to 88.1 W/(m²·K), over 0.9.
     */
    @Test
    void aBrakeThatDragsTakesForceWhereItsDiscIsKnown() {
        var known = Cars.withBrake(new BrakeDetails(null, null, 7.2, 320.0, null));
        var takes = Objects.requireNonNull(takes(known, 121, 64));
        assertThat(takes.force().lowest()).isCloseTo(0.206 * 36.3 * 57 / 0.9 * 3.6 / 60, within(0.5));
        assertThat(takes.force().highest()).isCloseTo(0.206 * 88.1 * 57 / 0.9 * 3.6 / 60, within(0.5));
        assertThat(takes.energy().highest()).isCloseTo(takes.force().highest() / 36, within(1e-9));
        assertThat(takes(Cars.vehicle(), 121, 64)).as("disc not known").isNull();
        assertThat(takes(Cars.withBrake(new BrakeDetails(null, null, 7.2, null, null)), 121, 64))
                .as("diameter not known")
                .isNull();
        assertThat(takes(Cars.withBrake(new BrakeDetails(null, null, null, 320.0, null)), 121, 64))
                .as("mass not known")
                .isNull();
    }

    /** The disc of a brake that does its partner's work is hot from braking, and not from drag. */
    @Test
    void aBrakeThatDoesItsPartnersWorkTakesNothing() {
        var known = Cars.withBrake(new BrakeDetails(null, null, 7.2, 320.0, null));
        var hotter = hotter(known, 121, 64, Cars.reading(Measure.PAD_MOVEMENT, Corner.RR, null, Spot.INNER, 2));
        assertThat(hotter.atFault()).isEqualTo(BrakePairFindings.AtFault.COOL_DOES_TOO_LITTLE);
        assertThat(hotter.takes()).isNull();
    }

    private static BrakePairFindings.@Nullable DragTakes takes(Vehicle car, double leftC, double rightC) {
        return hotter(car, leftC, rightC).takes();
    }

    private static BrakePairFindings.OneIsHotter hotter(Vehicle car, double leftC, double rightC, Reading... beside) {
        var readings = Stream.concat(
                        Stream.of(
                                Cars.reading(Measure.DISC_TEMPERATURE, Corner.LR, null, null, leftC),
                                Cars.reading(Measure.DISC_TEMPERATURE, Corner.RR, null, null, rightC)),
                        Arrays.stream(beside))
                .toArray(Reading[]::new);
        return judge(car, new ArrayList<>(), readings).stream()
                .map(Finding::plainWords)
                .filter(BrakePairFindings.OneIsHotter.class::isInstance)
                .map(BrakePairFindings.OneIsHotter.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static Finding heat(double leftC, double rightC) {
        return of(
                Subject.Part.BRAKE_PAIR,
                Cars.reading(Measure.DISC_TEMPERATURE, Corner.LR, null, null, leftC),
                Cars.reading(Measure.DISC_TEMPERATURE, Corner.RR, null, null, rightC));
    }

    private static Amount celsius(double value) {
        return new Amount(value, "°C", 0);
    }

    @Test
    void wearThatReachesTheLimitBeforeTheNextVisitRunsOutWithADate() {
        var pads = worn(3.75);
        assertThat(pads.verdict()).isEqualTo(Verdict.RUNS_OUT);
        assertThat(pads.probability()).isBetween(0.5, 0.9);
        assertThat(pads.horizon()).isBetween(Cars.AUTUMN, NEXT);
        assertThat(pads.evidence())
                .anyMatch(e -> e.what().equals(new BrakeSaid.WearOf(Spot.INNER))
                        && ((BrakeSaid.ThicknessModel) e.how()).readings() == 3
                        && ((BrakeSaid.ThicknessModel) e.how()).own().percent() > 50);
        assertThat(worn(8.6).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(worn(3.4).verdict()).as("above the minimum, not for long").isEqualTo(Verdict.SPENT);
        assertThat(worn(2.8).verdict()).as("below the manufacturer's minimum").isEqualTo(Verdict.SPENT);
        assertThat(worn(1.5).verdict()).as("below the legal minimum").isEqualTo(Verdict.UNSAFE);
    }

    @Test
    void newPadsForgetWhatTheOldOnesWere() {
        var pads = of(
                Subject.Part.PAD,
                Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.INNER, 1.2),
                Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.OUTER, 1.4),
                Cars.reading(Measure.PADS_REPLACED, Corner.RR, null, null, 1));
        assertThat(pads.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(pads.title()).isInstanceOf(PadSaid.NewTitle.class);
    }

    @Test
    void anAxleIsReplacedAsAPair() {
        var pair = of(
                Subject.Part.BRAKE_PAIR,
                Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.INNER, 1.2),
                Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.OUTER, 1.4),
                Cars.reading(Measure.PAD_THICKNESS, Corner.LR, null, Spot.INNER, 8),
                Cars.reading(Measure.PAD_THICKNESS, Corner.LR, null, Spot.OUTER, 8));
        assertThat(pair.title()).isEqualTo(new BrakeSaid.ReplacePair(Axle.REAR, Pair.PADS));
        var half = of(Subject.Part.BRAKE_PAIR, Cars.reading(Measure.DISC_REPLACED, Corner.LF, null, null, 1));
        assertThat(half.plainWords()).isEqualTo(new BrakeSaid.PairReplacedOnOneSide(Axle.FRONT, Pair.DISCS, Corner.LF));
    }

    @Test
    void liftedFrictionMaterialIsRejectedHoweverThick() {
        var lift = of(Subject.Part.PAD, Cars.reading(Measure.PAD_EDGE_LIFT, Corner.LF, null, Spot.OUTER, 1));
        assertThat(lift.verdict()).isEqualTo(Verdict.SPENT);
        assertThat(lift.source()).isEqualTo(PadSaid.Ground.REJECT_ON_EDGE_LIFT);
    }

    @Test
    void eachSignCarriesItsRowOfTheTable() {
        var pads = of(
                Subject.Part.PAD,
                Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.INNER, 5.5),
                Cars.reading(Measure.PAD_THICKNESS_TRAILING, Corner.RR, null, Spot.INNER, 5.4),
                Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.OUTER, 8.5),
                Cars.reading(Measure.PISTON_RETURN, Corner.RR, null, null, 0.02),
                Cars.reading(Measure.DISC_RUST, Corner.RR, null, Spot.INNER, 5),
                Cars.reading(Measure.DISC_RUST, Corner.RR, null, Spot.OUTER, 30));
        assertThat(sentences(pads)).contains(new PadSaid.LookFirst(BrakeCause.PISTON_SEIZED));
        assertThat(pads.evidence())
                .anyMatch(e -> e.what().equals(new PadSaid.SignSeen(BrakeSign.PISTON_STAYS))
                        && e.how() instanceof SignSource.PistonReturnAdvice advice
                        && advice.movedOut().value() == 0.5)
                .anyMatch(e -> e.what().equals(new PadSaid.SignSeen(BrakeSign.PAD_NOT_TAPERED)))
                .anyMatch(e -> e.what().equals(new PadSaid.SignSeen(BrakeSign.ONE_FACE_RUSTIER)));
    }

    @Test
    void theWearIndicatorNamesTheCategoryOfTheDirective() {
        var pads = of(
                Subject.Part.PAD,
                Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.INNER, 8.5),
                Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.OUTER, 8.5),
                Cars.reading(Measure.PAD_WEAR_INDICATOR, Corner.RR, null, Spot.INNER, 2));
        assertThat(pads.verdict()).isEqualTo(Verdict.SPENT);
        assertThat(pads.evidence())
                .anyMatch(e -> e.value() == BrakeSaid.Category.MAJOR && e.how() == Deficiency.PAD_AT_INDICATOR);
    }

    @Test
    void hubAndDiscAreToldApartWithTheBestStuds() {
        var disc = of(
                Subject.Part.DISC,
                Cars.reading(Measure.DISC_THICKNESS, Corner.RR, null, null, 27.5),
                written(Measure.DISC_RUNOUT, tilt(0.04, 0, 0.03, 0)),
                written(Measure.DISC_RUNOUT_MOVED, tilt(0.04, 0, 0.03, 144)),
                Cars.reading(Measure.DISC_MOVED_BY, Corner.RR, null, null, 2));
        // Two tilts of 0.08 and 0.06 mm in total: in line they add, and are least where the studs come nearest to
        // opposite.
        assertThat(disc.evidence())
                .anyMatch(e -> e.what() == DiscSaid.Label.HUB_PART && isRunout(e.value(), 0.08))
                .anyMatch(e -> e.what() == DiscSaid.Label.DISC_PART && isRunout(e.value(), 0.06));
        assertThat(sentences(disc).getLast()).isInstanceOfSatisfying(DiscSaid.Runout.class, runout -> {
            assertThat(runout.origin()).isEqualTo(DiscSaid.Origin.BOTH);
            assertThat(runout.move()).isBetween(2, 3);
            assertThat(runout.studs()).isEqualTo(5);
            assertThat(runout.best().value()).isCloseTo(0.047, within(0.0005));
        });
    }

    /** The dial of the same hub and disc, read from another stud on: its vectors stay, as a turn is only another beginning. */
    @Test
    void aDialThatBeginsAtAnotherStudTellsTheSame() {
        var fromStudOne = of(
                Subject.Part.DISC,
                Cars.reading(Measure.DISC_THICKNESS, Corner.RR, null, null, 27.5),
                written(Measure.DISC_RUNOUT, tilt(0.04, 20, 0.03, 50)),
                written(Measure.DISC_RUNOUT_MOVED, tilt(0.04, 20, 0.03, 194)),
                Cars.reading(Measure.DISC_MOVED_BY, Corner.RR, null, null, 2));
        // Stud 3 of 5 stands at 144°: seen from there everything lies 144° back.
        var fromStudThree = of(
                Subject.Part.DISC,
                Cars.reading(Measure.DISC_THICKNESS, Corner.RR, null, null, 27.5),
                written(Measure.DISC_RUNOUT, "stud 3: " + tilt(0.04, -124, 0.03, -94)),
                written(Measure.DISC_RUNOUT_MOVED, tilt(0.04, 20, 0.03, 194)),
                Cars.reading(Measure.DISC_MOVED_BY, Corner.RR, null, null, 2));
        var one = (DiscSaid.Runout) sentences(fromStudOne).getLast();
        var three = (DiscSaid.Runout) sentences(fromStudThree).getLast();
        assertThat(three.origin()).isEqualTo(one.origin());
        assertThat(three.move()).isEqualTo(one.move());
        assertThat(three.best().value()).isCloseTo(one.best().value(), within(1e-5));
        assertThat(hubPart(fromStudThree).runout().value())
                .isCloseTo(hubPart(fromStudOne).runout().value(), within(1e-5));
        assertThat(hubPart(fromStudThree).highSpotDegrees().value())
                .isCloseTo(hubPart(fromStudOne).highSpotDegrees().value(), within(0.01));
    }

    private static DiscSaid.Vector hubPart(Finding finding) {
        return finding.evidence().stream()
                .filter(evidence -> evidence.what() == DiscSaid.Label.HUB_PART)
                .map(evidence -> (DiscSaid.Vector) evidence.value())
                .findFirst()
                .orElseThrow();
    }

    private static boolean isRunout(Said value, double totalMm) {
        return value instanceof DiscSaid.Vector vector
                && Math.abs(vector.runout().value() - totalMm) < 0.0005;
    }

    private static List<Said> sentences(Finding finding) {
        return ((Listed) finding.plainWords()).items();
    }

    private static Amount fine(double valueMm) {
        return new Amount(valueMm, "mm", 3);
    }

    @Test
    void machiningIsJudgedWhereTheCarHasARefinishThickness() {
        var notJudged = new ArrayList<Said>();
        judge(
                Cars.vehicle(),
                notJudged,
                Cars.reading(Measure.DISC_THICKNESS, Corner.RR, null, null, 27.0),
                variation("27.012 27.001 26.990 27.004 mm"));
        assertThat(notJudged).contains(new DiscSaid.NoRefinishThickness(Corner.RR));
    }

    /** The dial at eight equal steps over a hub tilted by one amplitude and a disc tilted by another, moved on by an angle. */
    public static String tilt(double hubMm, double hubDegrees, double discMm, double discDegrees) {
        return IntStream.range(0, 8)
                .mapToObj(step -> String.format(
                        Locale.ROOT,
                        "%.6f",
                        hubMm * Math.cos(Math.toRadians(45.0 * step - hubDegrees))
                                + discMm * Math.cos(Math.toRadians(45.0 * step - discDegrees))))
                .collect(Collectors.joining(" ", "", " mm"));
    }

    /** A car whose pads lost half a millimetre in each of two seasons of 5000 km, now at this. */
    private static Finding worn(double nowMm) {
        var visits = new ArrayList<Visit>();
        for (int i = 2; i >= 0; i--) {
            var readings = List.of(
                    Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.INNER, nowMm + 0.5 * i),
                    Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.OUTER, nowMm + 0.5 * i));
            visits.add(new Visit(
                    "v" + i,
                    Cars.AUTUMN.minusDays(180L * i),
                    60_000 - 5000.0 * i,
                    Cars.at("S-"),
                    Cars.at("S-"),
                    readings));
        }
        return judge(Cars.vehicle(), visits, new ArrayList<>()).stream()
                .filter(finding -> finding.subject().part() == Subject.Part.PAD)
                .findFirst()
                .orElseThrow();
    }

    private static Reading variation(String written) {
        return written(Measure.DISC_THICKNESS_VARIATION, written);
    }

    private static Reading written(Measure measure, String written) {
        return new Reading(
                "r-" + measure,
                measure,
                Corner.RR,
                null,
                null,
                WrittenReading.valueOf(measure, written),
                written,
                null,
                null);
    }

    private static Finding of(Subject.Part part, Reading... readings) {
        return judge(Cars.vehicle(), new ArrayList<>(), readings).stream()
                .filter(finding -> finding.subject().part() == part)
                .findFirst()
                .orElseThrow();
    }

    private static List<Finding> judge(Vehicle vehicle, List<Said> notJudged, Reading... readings) {
        return judge(vehicle, List.of(Cars.visit(List.of(readings))), notJudged);
    }

    private static List<Finding> judge(Vehicle vehicle, List<Visit> visits, List<Said> notJudged) {
        var judged = BrakeFindings.judge(
                Cases.of(vehicle, visits).running(28, 6).until(NEXT).last());
        notJudged.addAll(judged.notJudged());
        return judged.findings();
    }
}
