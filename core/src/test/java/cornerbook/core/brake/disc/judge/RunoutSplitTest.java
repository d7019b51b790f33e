package cornerbook.core.brake.disc.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.assess.BrakeFindingsTest;
import cornerbook.core.brake.disc.judge.DiscSaid.Origin;
import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.WrittenReading;
import cornerbook.core.corner.Corner;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Hub face and disc told apart on an invented car with five studs: tilts by geometry, words from twice as much on (common practice). */
class RunoutSplitTest {
    private final List<Said> notJudged = new ArrayList<>();

    /** Total of the hub and of the disc alone, in line with each other; the disc was moved on by two studs, 144°. */
    @ParameterizedTest
    @CsvSource({"0.10, 0.04, HUB", "0.05, 0.04, BOTH", "0.04, 0.05, BOTH", "0.04, 0.10, DISC"})
    void theGreaterPartIsNamedFromTwiceAsMuch(double hubMm, double discMm, Origin origin) {
        var split = split(
                written(Measure.DISC_RUNOUT, BrakeFindingsTest.tilt(hubMm / 2, 20, discMm / 2, 20)),
                written(Measure.DISC_RUNOUT_MOVED, BrakeFindingsTest.tilt(hubMm / 2, 20, discMm / 2, 164)),
                Cars.reading(Measure.DISC_MOVED_BY, Corner.RR, null, null, 2));
        assertThat(split.words().origin()).isEqualTo(origin);
        assertHubPart(split, hubMm, 20);
    }

    /** The bare hub face runs out by 0.04 mm at 60 mm, which is 0.08 mm at the disc's 120 mm: all that the disc shows. */
    @Test
    void theBareHubFaceTellsItsPart() {
        var split = split(
                written(Measure.DISC_RUNOUT, BrakeFindingsTest.tilt(0.04, 20, 0, 0)),
                written(Measure.HUB_RUNOUT, BrakeFindingsTest.tilt(0.02, 20, 0, 0)),
                Cars.reading(Measure.HUB_DIAL_RADIUS, Corner.RR, null, null, 60),
                Cars.reading(Measure.DISC_DIAL_RADIUS, Corner.RR, null, null, 120));
        assertThat(split.words().origin()).isEqualTo(Origin.HUB);
        assertHubPart(split, 0.08, 20);
    }

    /** A dial that began at stud 2 of 5 stood 72° on. */
    @Test
    void anglesCountFromStudOne() {
        var split = split(
                written(Measure.DISC_RUNOUT, "stud 2: " + BrakeFindingsTest.tilt(0.05, 20, 0, 0)),
                written(Measure.DISC_RUNOUT_MOVED, "stud 2: " + BrakeFindingsTest.tilt(0.05, 20, 0, 0)),
                Cars.reading(Measure.DISC_MOVED_BY, Corner.RR, null, null, 2));
        assertHubPart(split, 0.1, 92);
    }

    @Test
    void aStudThatTheHubDoesNotHaveIsSaid() {
        assertThat(RunoutSplit.of(at(written(Measure.DISC_RUNOUT, "stud 5: 0.01 0.02 0.03 0.02 mm")), notJudged))
                .isEmpty();
        assertThat(notJudged)
                .as("one position alone tells nothing, and asks for nothing")
                .isEmpty();
        assertThat(RunoutSplit.of(at(written(Measure.DISC_RUNOUT, "stud 6: 0.01 0.02 0.03 0.02 mm")), notJudged))
                .isEmpty();
        assertThat(notJudged).containsExactly(new DiscSaid.NoSuchStud(Corner.RR, 6, 5));
    }

    /** Half of what is needed was read: what is missing is said. */
    @ParameterizedTest
    @CsvSource({"HUB_RUNOUT", "DISC_RUNOUT_MOVED"})
    void whatIsMissingIsSaid(Measure measure) {
        assertThat(RunoutSplit.of(at(Cars.reading(measure, Corner.RR, null, null, 0.04)), notJudged))
                .isEmpty();
        assertThat(notJudged).containsExactly(new DiscSaid.RunoutNotSplit(Corner.RR));
    }

    private static void assertHubPart(RunoutSplit split, double totalMm, double highSpotDegrees) {
        assertThat(split.evidence().getFirst().value()).isInstanceOfSatisfying(DiscSaid.Vector.class, hub -> {
            assertThat(hub.runout().value()).isCloseTo(totalMm, within(0.0005));
            assertThat(hub.highSpotDegrees().value()).isCloseTo(highSpotDegrees, within(0.5));
        });
    }

    private RunoutSplit split(Reading... readings) {
        return RunoutSplit.of(at(readings), notJudged).orElseThrow();
    }

    private static BrakeCorner at(Reading... readings) {
        return new BrakeCorner(Corner.RR, Cars.vehicle(), new StandingReadings(List.of(readings)));
    }

    private static Reading written(Measure measure, String text) {
        return new Reading(
                "r-" + measure,
                measure,
                Corner.RR,
                null,
                null,
                WrittenReading.valueOf(measure, text),
                text,
                null,
                null);
    }
}
