package cornerbook.core.assess;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.brake.caliper.ParkingBrakeFindings;
import cornerbook.core.brake.judge.OpenBrakeWork;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WrittenReading;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.LimitTable;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.season.DistancePerDay;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
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
        assertThat(pads.plainWords()).contains("outer pad is worn more", "looked at first: seized slide pins");
        assertThat(pads.evidence())
                .filteredOn(evidence -> evidence.what().equals("likely cause"))
                .singleElement()
                .satisfies(cause -> {
                    assertThat(cause.value()).startsWith("seized slide pins ");
                    assertThat(cause.how()).contains("outer pad thinner", "slide pins stuck");
                });
    }

    @Test
    void evenFreePadsNameNoCause() {
        var pads = of(
                Subject.Part.PAD,
                Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.INNER, 8.5),
                Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.OUTER, 8.1));
        assertThat(pads.plainWords()).doesNotContain("first");
        assertThat(pads.evidence()).noneMatch(evidence -> evidence.what().equals("likely cause"));
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
                        e.what().equals("thinnest of 4 points") && e.value().equals("25.990 mm"))
                .anyMatch(
                        e -> e.what().equals("thickness variation") && e.value().startsWith("0.022 mm"));
        var wobbling = of(
                Subject.Part.DISC,
                Cars.reading(Measure.DISC_THICKNESS, Corner.RR, null, null, 27.0),
                variation("27.012 27.001 26.990 27.004 mm"));
        assertThat(wobbling.verdict()).as("limit 0.015 mm").isEqualTo(Verdict.RUNS_OUT);
    }

    @Test
    void wearThatReachesTheLimitBeforeTheNextVisitRunsOutWithADate() {
        var pads = worn(3.75);
        assertThat(pads.verdict()).isEqualTo(Verdict.RUNS_OUT);
        assertThat(pads.probability()).isBetween(0.5, 0.9);
        assertThat(pads.horizon()).isBetween(Cars.AUTUMN, NEXT);
        assertThat(pads.evidence())
                .anyMatch(e -> e.what().equals("wear, inner pad") && e.how().contains("3 readings"));
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
        assertThat(pads.title()).contains("new");
    }

    @Test
    void anAxleIsReplacedAsAPair() {
        var pair = of(
                Subject.Part.BRAKE_PAIR,
                Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.INNER, 1.2),
                Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.OUTER, 1.4),
                Cars.reading(Measure.PAD_THICKNESS, Corner.LR, null, Spot.INNER, 8),
                Cars.reading(Measure.PAD_THICKNESS, Corner.LR, null, Spot.OUTER, 8));
        assertThat(pair.title()).isEqualTo("Rear axle: replace the pads on both sides");
        var half = of(Subject.Part.BRAKE_PAIR, Cars.reading(Measure.DISC_REPLACED, Corner.LF, null, null, 1));
        assertThat(half.plainWords()).contains("replaced at LF only");
    }

    @Test
    void liftedFrictionMaterialIsRejectedHoweverThick() {
        var lift = of(Subject.Part.PAD, Cars.reading(Measure.PAD_EDGE_LIFT, Corner.LF, null, Spot.OUTER, 1));
        assertThat(lift.verdict()).isEqualTo(Verdict.SPENT);
        assertThat(lift.source()).contains("edge lift");
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
        assertThat(pads.plainWords()).contains("a seized piston");
        assertThat(pads.evidence())
                .anyMatch(e -> e.what().equals("sign: piston stays") && e.how().contains("0.5 mm"))
                .anyMatch(e -> e.what().equals("sign: pad not tapered"))
                .anyMatch(e -> e.what().equals("sign: one face rustier"));
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
                .anyMatch(e -> e.value().equals("major") && e.how().contains("1.1.13"));
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
                .anyMatch(e -> e.what().equals("part of the hub") && e.value().startsWith("0.080 mm"))
                .anyMatch(e -> e.what().equals("part of the disc") && e.value().startsWith("0.060 mm"));
        assertThat(disc.plainWords())
                .contains("Hub face and disc share in it")
                .containsPattern("moved on by [23] of 5 studs .* by 0\\.047 mm");
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
        assertThat(fromStudThree.plainWords()).isEqualTo(fromStudOne.plainWords());
        assertThat(part("part of the hub", fromStudThree)).isEqualTo(part("part of the hub", fromStudOne));
    }

    private static String part(String what, Finding finding) {
        return finding.evidence().stream()
                .filter(evidence -> evidence.what().equals(what))
                .findFirst()
                .orElseThrow()
                .value();
    }

    @Test
    void machiningIsJudgedWhereTheCarHasARefinishThickness() {
        var notJudged = new ArrayList<String>();
        judge(
                Cars.vehicle(),
                notJudged,
                Cars.reading(Measure.DISC_THICKNESS, Corner.RR, null, null, 27.0),
                variation("27.012 27.001 26.990 27.004 mm"));
        assertThat(notJudged).anyMatch(line -> line.contains("have no refinish thickness"));
    }

    @Test
    void openWorkIsNamedUntilItIsClosed() {
        var worked = Cars.visit(List.of(
                Cars.reading(Measure.PARKING_BRAKE_IN_SERVICE_MODE, null, null, null, 1),
                Cars.reading(Measure.BRACKET_CLEANED, Corner.LF, null, null, 1)));
        assertThat(OpenBrakeWork.of(Cars.vehicle(), worked))
                .anyMatch(line -> line.startsWith("parking brake"))
                .anyMatch(line -> line.startsWith("LF caliper"))
                .anyMatch(line -> line.startsWith("LF bracket bolts"))
                .anyMatch(line -> line.startsWith("brake pedal"));
        assertThat(ParkingBrakeFindings.of(worked, new ArrayList<>()))
                .map(Finding::verdict)
                .contains(Verdict.UNSAFE);
        assertThat(OpenBrakeWork.of(Cars.vehicle(), Cars.visit(List.of()))).isEmpty();
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
                    null,
                    Cars.at("S-"),
                    Cars.at("S-"),
                    readings,
                    List.of(),
                    null,
                    null));
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

    private static List<Finding> judge(Vehicle vehicle, List<String> notJudged, Reading... readings) {
        return judge(vehicle, List.of(Cars.visit(List.of(readings))), notJudged);
    }

    private static List<Finding> judge(Vehicle vehicle, List<Visit> visits, List<String> notJudged) {
        return BrakeFindings.of(
                vehicle, visits, new DistancePerDay(28, 6), NEXT, new LimitTable(Cars.LIMITS), notJudged);
    }
}
