package cornerbook.core.tread.judge;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.car.Cars;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.tread.judge.SetForecast.DepthReading;
import cornerbook.core.tread.judge.SetForecast.GrooveForecast;
import cornerbook.core.tread.judge.SetForecast.Role;
import cornerbook.core.tread.judge.SetForecast.TyreForecast;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of a winter set whose forecast is given: season's minimum 4 mm, legal 1.6 mm, new 8 mm, all invented. */
class TreadFindingsTest {
    /** More likely used up than not before the next visit is used up now; surer than asked (90 %) holds. */
    @ParameterizedTest
    @CsvSource({"0.2, SPENT", "0.4, SPENT", "0.49, SPENT", "0.5, RUNS_OUT", "0.89, RUNS_OUT", "0.9, HOLDS", "1, HOLDS"})
    void theChanceUntilTheNextVisitDecides(double chance, Verdict verdict) {
        var finding = TreadFindings.ofSet(forecast(Role.GOING_ON, chance, 5, 5.0), "invented", null);
        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(finding.probability()).isEqualTo(chance);
        assertThat(finding.subject()).isEqualTo(new Subject(Subject.Part.WHEEL_SET, null, null, "WINTER-set"));
    }

    /** A gauge in the groove is nearer to the truth than the model: 3.9 mm read are below 4 mm, whatever the model makes of them. */
    @ParameterizedTest
    @CsvSource({"3.9, 0.95, SPENT", "4.0, 0.95, HOLDS", "1.5, 0.95, UNSAFE", "1.6, 0.95, SPENT", "1.5, 0.1, UNSAFE"})
    void aReadingBelowALimitIsNotTalkedAway(double readMm, double chance, Verdict verdict) {
        var finding = TreadFindings.ofSet(forecast(Role.GOING_ON, chance, 4.4, readMm), "invented", null);
        assertThat(finding.verdict()).isEqualTo(verdict);
    }

    /** What was read last counts: a tread does not grow, so the shallower reading before it was wrong. */
    @Test
    void theLastReadingOfAGrooveCounts() {
        var finding = TreadFindings.ofSet(forecast(Role.GOING_ON, 0.95, 5, 3.5, 5.1), "invented", null);
        assertThat(finding.verdict()).isEqualTo(Verdict.HOLDS);
    }

    /** A groove that nobody has read since is judged by what the model makes of it. */
    @ParameterizedTest
    @CsvSource({"3.9, SPENT", "4.0, HOLDS", "1.5, UNSAFE", "1.6, SPENT"})
    void withoutAReadingTheModelIsBelieved(double modelMm, Verdict verdict) {
        assertThat(TreadFindings.ofSet(forecast(Role.GOING_ON, 0.95, modelMm), "invented", null)
                        .verdict())
                .isEqualTo(verdict);
    }

    /** 6 mm of a tyre that is 8 mm new and done at 4 mm: half of its life is left. */
    @Test
    void theMarkShowsTheLifeOfTheLowestGroove() {
        var finding = TreadFindings.ofSet(forecast(Role.GOING_ON, 0.95, 6, 6.0), "invented", null);
        assertThat(finding.lifeLeft()).isEqualTo(0.5);
        assertThat(finding.evidence().getFirst().value()).startsWith("RR W-RR, outer: 6.0");
    }

    /** What is on the car is replaced now, what goes into store is ordered for. */
    @Test
    void theAdviceFollowsWhereTheSetGoes() {
        assertThat(words(Role.GOING_ON, 0.3, 3.5)).contains("Replace it now");
        assertThat(words(Role.COMING_OFF, 0.3, 3.5)).contains("Order tyres");
        assertThat(words(Role.GOING_ON, 0.7, 5)).contains("may not last until the next visit");
        assertThat(words(Role.COMING_OFF, 0.7, 5)).contains("Plan for new tyres");
        assertThat(words(Role.GOING_ON, 0.99, 6)).contains("good until the next visit");
        assertThat(words(Role.COMING_OFF, 0.99, 6)).contains("good for its next season");
        assertThat(words(Role.GOING_ON, 0.99, 1.2)).contains("must not be driven on");
    }

    /** A set above its minimum that will not last is used up by a date, not by its depth. */
    @Test
    void aSetThatWillNotLastIsGivenItsDate() {
        assertThat(words(Role.GOING_ON, 0.3, 4.3)).contains("sure only until 1 Dec 2026");
        assertThat(words(Role.GOING_ON, 0.3, 3.9)).doesNotContain("sure only until");
    }

    /** A chance is never told as certain. */
    @Test
    void nothingIsSaidToBeCertain() {
        assertThat(TreadFindings.percent(0.995)).isEqualTo("over 99 %");
        assertThat(TreadFindings.percent(0.99)).isEqualTo("99 %");
        assertThat(TreadFindings.percent(0.01)).isEqualTo("1 %");
        assertThat(TreadFindings.percent(0.009)).isEqualTo("under 1 %");
    }

    private static String words(Role role, double chance, double depthMm) {
        return TreadFindings.ofSet(forecast(role, chance, depthMm, depthMm), "invented", null)
                .plainWords();
    }

    /** RR's outer groove is the lowest, at what the model says, and was read so; all others are at 7 mm. */
    private static SetForecast forecast(Role role, double chance, double modelMm, Double... readMm) {
        var set = Cars.set(SeasonKind.WINTER, "W-");
        var tyres = Arrays.stream(Corner.values())
                .map(corner -> tyre(set, corner, corner == Corner.RR ? modelMm : 7, readMm))
                .toList();
        return Cars.forecast(role, chance, tyres, List.of());
    }

    private static TyreForecast tyre(WheelSet set, Corner corner, double outerMm, Double... readMm) {
        var readings = Arrays.stream(readMm)
                .map(depthMm -> new DepthReading(0, Cars.AUTUMN, corner == Corner.RR ? depthMm : 7))
                .toList();
        return new TyreForecast(
                set.wheels().get(corner.ordinal()),
                corner,
                List.of(groove(Spot.INNER, 7, List.of()), groove(Spot.OUTER, outerMm, readings)));
    }

    private static GrooveForecast groove(Spot spot, double depthMm, List<DepthReading> readings) {
        return new GrooveForecast(spot, depthMm, 0.1, 0.2, 0.03, readings, List.of());
    }
}
