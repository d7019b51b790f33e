package cornerbook.core.brake.disc.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.assess.BrakeFindings;
import cornerbook.core.brake.BrakeDetails;
import cornerbook.core.brake.disc.judge.DiscSaid.Label;
import cornerbook.core.brake.judge.BrakeSaid;
import cornerbook.core.brake.judge.Deficiency;
import cornerbook.core.brake.judge.GaugeError;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.WrittenReading;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Cases;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Faces and edges of the disc at RR of an invented car, new 28 mm and thick enough at 27.5 mm; its minimum is 26 mm. */
class DiscFindingsTest {
    /**
     * A pad that works wipes the rust of a night off; from 15 % of a face it does not, from 10 % it is looked at again
     * (common practice, no source).
     */
    @ParameterizedTest
    @CsvSource({
        "5, HOLDS, false",
        "9.9, HOLDS, false",
        "10, HOLDS, true",
        "14.9, HOLDS, true",
        "15, RUNS_OUT, false",
        "24, RUNS_OUT, false",
        "60, RUNS_OUT, false"
    })
    void rustSaysThatAPadDoesNotWorkFrom15Percent(double percent, Verdict verdict, boolean lookedAtAgain) {
        var disc = judge(rust(Spot.OUTER, percent), rust(Spot.INNER, 2));
        assertThat(disc.verdict()).isEqualTo(verdict);
        assertThat(disc.subject()).isEqualTo(new Subject(Subject.Part.DISC, Corner.RR, null, null));
        assertThat(sentences(disc).contains(new DiscSaid.RustAgain())).isEqualTo(lookedAtAgain);
        assertThat(disc.probability() == null)
                .as("the chance of the thickness is not that of the rust")
                .isEqualTo(verdict != Verdict.HOLDS);
    }

    /** The worse face decides, and is named. */
    @Test
    void theRustierFaceIsNamed() {
        assertThat(evidence(judge(rust(Spot.OUTER, 3), rust(Spot.INNER, 40)), Label.UNDER_RUST))
                .isEqualTo(new DiscSaid.ShareOfFace(Amount.of(40, "%"), Spot.INNER));
    }

    /** Scale: none, light, marked (the second step is where it counts): common practice, no source. */
    @ParameterizedTest
    @CsvSource({"0, HOLDS", "1, HOLDS", "2, RUNS_OUT"})
    void lightPittingIsLeft(double place, Verdict verdict) {
        assertThat(judge(Cars.reading(Measure.DISC_PITTING, Corner.RR, null, Spot.INNER, place))
                        .verdict())
                .isEqualTo(verdict);
    }

    /** At the minimum a disc may still be driven, below it not; the tenth that is left will not last until the next visit. */
    @ParameterizedTest
    @CsvSource({"25.9, true", "26.0, false"})
    void theMinimumIsTheLastThicknessThatCounts(double thicknessMm, boolean below) {
        var disc = of(thickness(thicknessMm));
        assertThat(disc.verdict()).isEqualTo(Verdict.SPENT);
        assertThat(sentences(disc))
                .containsExactly(
                        below ? new DiscSaid.BelowMinimum(Corner.RR) : new DiscSaid.LikelyAtMinimum(Corner.RR),
                        new GaugeError.TooNearToTell(new Amount(26, "mm", 1), new Amount(0.1, "mm", 1)));
        assertThat(disc.evidence().stream().anyMatch(each -> each.how() == Deficiency.DISC_WORN))
                .as("category of the directive")
                .isEqualTo(below);
        assertThat(disc.lifeLeft()).isZero();
    }

    /** 27 mm of a disc that is 28 mm new and done at 26 mm: half of its life is left. */
    @Test
    void theMarkShowsTheLifeOfTheDisc() {
        assertThat(of(thickness(27)).lifeLeft()).isEqualTo(0.5);
        assertThat(evidence(of(thickness(27)), Label.THICKNESS)).isEqualTo(new Amount(27, "mm", 2));
        assertThat(evidence(of(thickness(27)), BrakeSaid.Label.MINIMUM)).isEqualTo(new Amount(26, "mm", 2));
    }

    @Test
    void aNewDiscIsJudgedAsNew() {
        var disc = of(
                thickness(25.5), Cars.reading(Measure.DISC_REPLACED, Corner.RR, null, null, 1), rust(Spot.INNER, 60));
        assertThat(disc.verdict())
                .as("rust and thickness were those of the old one")
                .isEqualTo(Verdict.HOLDS);
        assertThat(disc.lifeLeft()).isEqualTo(1);
        assertThat(disc.title())
                .isEqualTo(new DiscSaid.Title(Corner.RR, new Amount(28, "mm", 2), new Amount(26, "mm", 2), null));
    }

    @Test
    void aDiscThatWasNotMeasuredIsNamed() {
        var notJudged = new ArrayList<Said>();
        assertThat(all(Cars.vehicle(), notJudged))
                .noneMatch(finding -> finding.subject().part() == Subject.Part.DISC);
        assertThat(notJudged).contains(new DiscSaid.NotRead(Corner.RR));
    }

    /** The car's limits: 0.015 mm of thickness variation, 0.05 mm of runout. At a limit is within it. */
    @ParameterizedTest
    @CsvSource({
        "DISC_THICKNESS_VARIATION, 0.015, HOLDS",
        "DISC_THICKNESS_VARIATION, 0.016, RUNS_OUT",
        "DISC_RUNOUT, 0.05, HOLDS",
        "DISC_RUNOUT, 0.051, RUNS_OUT"
    })
    void variationAndRunoutHaveTheirLimits(Measure measure, double valueMm, Verdict verdict) {
        var disc = judge(Cars.reading(measure, Corner.RR, null, null, valueMm));
        assertThat(disc.verdict()).isEqualTo(verdict);
        double limitMm = measure == Measure.DISC_RUNOUT ? 0.05 : 0.015;
        assertThat(disc.evidence())
                .extracting(Evidence::value)
                .contains(new DiscSaid.WithLimit(new Amount(valueMm, "mm", 3), new Amount(limitMm, "mm", 3)));
        assertThat(disc.horizon() == null && disc.probability() == null)
                .as("what is out of true has no date")
                .isEqualTo(verdict == Verdict.RUNS_OUT);
    }

    /** A disc that was moved on until it ran true needs no more. */
    @ParameterizedTest
    @CsvSource({"0.05, HOLDS", "0.06, RUNS_OUT"})
    void aDiscThatWasMovedOnAndRunsTrueIsMended(double afterMm, Verdict verdict) {
        var disc = judge(
                Cars.reading(Measure.DISC_RUNOUT, Corner.RR, null, null, 0.09),
                Cars.reading(Measure.DISC_RUNOUT_MOVED, Corner.RR, null, null, afterMm));
        assertThat(disc.verdict()).isEqualTo(verdict);
        assertThat(evidence(disc, Label.AFTER_MOVED_ON)).isEqualTo(new Amount(afterMm, "mm", 3));
    }

    /**
     * Thickness varies by 0.022 mm. The car's maker allows machining down to 26.39 mm: of 26.99 mm at the thinnest point 0.3 mm may
     * go on each side; of a disc at 26.38 mm nothing may, though it may wear on to 26 mm.
     */
    @Test
    void machiningEndsAtTheRefinishThickness() {
        var car = refinished(26.39);
        var thick = of(car, thickness(27.2), variation("27.012 27.001 26.990 27.004 mm"));
        assertThat(evidence(thick, Label.MACHINING_ALLOWANCE))
                .isInstanceOfSatisfying(
                        DiscSaid.PerSide.class,
                        side -> assertThat(side.allowance().value()).isCloseTo(0.3, within(1e-9)));
        assertThat(sentences(thick)).hasAtLeastOneElementOfType(DiscSaid.MayBeMachined.class);
        var thin = of(car, thickness(26.8), variation("26.402 26.391 26.380 26.394 mm"));
        assertThat(evidence(thin, Label.MACHINING_ALLOWANCE)).isEqualTo(Label.NONE);
        assertThat(sentences(thin)).contains(new DiscSaid.TooThinToMachine());
        var even = of(car, thickness(27.2), variation("27.002 27.001 27.000 27.004 mm"));
        assertThat(even.evidence()).noneMatch(each -> each.what() == Label.MACHINING_ALLOWANCE);
    }

    @Test
    void withoutPointsMachiningIsNotJudged() {
        var notJudged = new ArrayList<Said>();
        all(
                refinished(26.39),
                notJudged,
                thickness(27),
                Cars.reading(Measure.DISC_THICKNESS_VARIATION, Corner.RR, null, null, 0.02));
        assertThat(notJudged).contains(new DiscSaid.NoPoints(Corner.RR));
    }

    /** Cracks: slight ones end the disc, marked ones the drive. Common practice, no source. */
    @ParameterizedTest
    @CsvSource({"0, HOLDS", "1, SPENT", "2, UNSAFE"})
    void aCrackedDiscIsReplacedOrNotDriven(double place, Verdict verdict) {
        var disc = judge(Cars.reading(Measure.DISC_CRACKS, Corner.RR, null, null, place));
        assertThat(disc.verdict()).isEqualTo(verdict);
        assertThat(sentences(disc).contains(new DiscSaid.Cracked(true))).isEqualTo(verdict == Verdict.UNSAFE);
        assertThat(disc.evidence().stream().anyMatch(each -> each.how() == Deficiency.DISC_FRACTURED))
                .isEqualTo(verdict != Verdict.HOLDS);
    }

    @Test
    void aLipIsShownForTheNewPads() {
        assertThat(evidence(judge(Cars.reading(Measure.DISC_LIP, Corner.RR, null, null, 1.2)), Label.LIP))
                .isEqualTo(new Amount(1.2, "mm", 1));
    }

    private static Reading thickness(double thicknessMm) {
        return Cars.reading(Measure.DISC_THICKNESS, Corner.RR, null, null, thicknessMm);
    }

    private static Reading variation(String written) {
        var measure = Measure.DISC_THICKNESS_VARIATION;
        return new Reading(
                "r-points",
                measure,
                Corner.RR,
                null,
                null,
                WrittenReading.valueOf(measure, written),
                written,
                null,
                null);
    }

    private static List<Said> sentences(Finding finding) {
        return ((Listed) finding.plainWords()).items();
    }

    private static Said evidence(Finding finding, Said what) {
        return finding.evidence().stream()
                .filter(each -> each.what().equals(what))
                .findFirst()
                .orElseThrow()
                .value();
    }

    private static Reading rust(Spot face, double percent) {
        return Cars.reading(Measure.DISC_RUST, Corner.RR, null, face, percent);
    }

    /** The car whose maker lets a disc be machined down to this. */
    private static Vehicle refinished(double thicknessMm) {
        return Cars.withBrake(new BrakeDetails(null, thicknessMm, null, null, null));
    }

    /** With a disc of 27.5 mm. */
    private static Finding judge(Reading... more) {
        var readings = new ArrayList<>(List.of(more));
        readings.add(thickness(27.5));
        return of(readings.toArray(Reading[]::new));
    }

    private static Finding of(Reading... readings) {
        return of(Cars.vehicle(), readings);
    }

    private static Finding of(Vehicle vehicle, Reading... readings) {
        return all(vehicle, new ArrayList<>(), readings).stream()
                .filter(finding -> finding.subject().part() == Subject.Part.DISC)
                .findFirst()
                .orElseThrow();
    }

    private static List<Finding> all(Vehicle vehicle, List<Said> notJudged, Reading... readings) {
        var judged = BrakeFindings.judge(Cases.of(vehicle, Cars.visit(List.of(readings)))
                .running(28, 6)
                .until(Cars.AUTUMN.plusDays(180))
                .last());
        notJudged.addAll(judged.notJudged());
        return judged.findings();
    }
}
