package cornerbook.core.tread.judge;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.car.Cars;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.SetOf;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.OwnShare;
import cornerbook.core.finding.SetSpan.Role;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.PlusMinus;
import cornerbook.core.say.Said;
import cornerbook.core.tread.judge.SetForecast.DepthReading;
import cornerbook.core.tread.judge.SetForecast.GrooveForecast;
import cornerbook.core.tread.judge.SetForecast.TyreForecast;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of a winter set whose forecast is given: season's minimum 4 mm, legal 1.6 mm, new 8 mm, all invented. */
class TreadFindingsTest {
    private static final Limit INVENTED =
            new Limit("*", Limit.Kind.TREAD_SEASON, SeasonKind.WINTER, 4, null, null, Said.verbatim("invented"));
    private static final SetOf WINTER_SET = new SetOf(SeasonKind.WINTER);
    private static final Said MINIMUM = new TreadSaid.Asked(mm(1.6), false, mm(4), false);

    /** More likely used up than not before the next visit is used up now; surer than asked (90 %) holds. */
    @ParameterizedTest
    @CsvSource({"0.2, SPENT", "0.4, SPENT", "0.49, SPENT", "0.5, RUNS_OUT", "0.89, RUNS_OUT", "0.9, HOLDS", "1, HOLDS"})
    void theChanceUntilTheNextVisitDecides(double chance, Verdict verdict) {
        var finding =
                TreadFindings.ofSet(forecast(Role.GOING_ON, chance, 5, 6.0, 5.0), INVENTED, INVENTED, false, null);
        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(finding.probability()).isEqualTo(chance);
        assertThat(finding.subject()).isEqualTo(new Subject(Subject.Part.WHEEL_SET, null, null, "WINTER-set"));
    }

    /** What the house asks where nobody knows whose law holds is not called law. */
    @Test
    void lawIsNamedOnlyWhereItIsOnFile() {
        var law = new Limit("XX", Limit.Kind.TREAD_LEGAL, null, 1.6, null, null, Said.verbatim("invented"));
        for (var legal : List.of(law, INVENTED)) {
            assertThat(TreadFindings.ofSet(forecast(Role.GOING_ON, 0.95, 6, 6.0), INVENTED, legal, false, null)
                            .plainWords())
                    .isEqualTo(new TreadSaid.Lasts(
                            WINTER_SET, mm(6), new TreadSaid.Asked(mm(1.6), legal.equals(law), mm(4), false)));
        }
    }

    /** By what is usual alone no tyre is condemned, and none is ordered: it is measured again. */
    @ParameterizedTest
    @CsvSource({"0.01, RUNS_OUT", "0.49, RUNS_OUT", "0.89, RUNS_OUT", "0.9, HOLDS"})
    void aSetWhoseWearWasNotSeenIsMeasuredAgain(double chance, Verdict verdict) {
        var onCar = TreadFindings.ofSet(forecast(Role.GOING_ON, chance, 5, 5.0), INVENTED, INVENTED, false, null);
        var stored = TreadFindings.ofSet(forecast(Role.COMING_OFF, chance, 5, 5.0), INVENTED, INVENTED, true, null);
        assertThat(onCar.verdict()).isEqualTo(verdict).isEqualTo(stored.verdict());
        if (verdict == Verdict.RUNS_OUT) {
            assertThat(onCar.todo())
                    .isEqualTo(new Todo(Todo.Action.MEASURE_AGAIN, new Todo.ByDay(LocalDate.of(2026, 12, 1))));
            assertThat(stored.todo()).isEqualTo(new Todo(Todo.Action.MEASURE_AGAIN, Todo.When.BEFORE_FITTING));
        }
    }

    /** What has worn before its owner's eyes is ordered anew. */
    @Test
    void aSetWhoseWearWasSeenIsOrderedAnew() {
        assertThat(TreadFindings.ofSet(forecast(Role.COMING_OFF, 0.7, 5, 6.0, 5.0), INVENTED, INVENTED, true, null)
                        .todo())
                .isEqualTo(new Todo(Todo.Action.ORDER, Todo.When.BEFORE_FITTING));
    }

    /** A gauge in the groove is nearer to the truth than the model: 3.9 mm read are below 4 mm, whatever the model makes of them. */
    @ParameterizedTest
    @CsvSource({"3.9, 0.95, SPENT", "4.0, 0.95, HOLDS", "1.5, 0.95, UNSAFE", "1.6, 0.95, SPENT", "1.5, 0.1, UNSAFE"})
    void aReadingBelowALimitIsNotTalkedAway(double readMm, double chance, Verdict verdict) {
        var finding =
                TreadFindings.ofSet(forecast(Role.GOING_ON, chance, 4.4, readMm), INVENTED, INVENTED, false, null);
        assertThat(finding.verdict()).isEqualTo(verdict);
    }

    /** What was read last counts: a tread does not grow, so the shallower reading before it was wrong. */
    @Test
    void theLastReadingOfAGrooveCounts() {
        var finding = TreadFindings.ofSet(forecast(Role.GOING_ON, 0.95, 5, 3.5, 5.1), INVENTED, INVENTED, false, null);
        assertThat(finding.verdict()).isEqualTo(Verdict.HOLDS);
    }

    /** A groove that nobody has read since is judged by what the model makes of it. */
    @ParameterizedTest
    @CsvSource({"3.9, SPENT", "4.0, HOLDS", "1.5, UNSAFE", "1.6, SPENT"})
    void withoutAReadingTheModelIsBelieved(double modelMm, Verdict verdict) {
        assertThat(TreadFindings.ofSet(forecast(Role.GOING_ON, 0.95, modelMm), INVENTED, INVENTED, false, null)
                        .verdict())
                .isEqualTo(verdict);
    }

    /** 0.68 in tens. */
    @Test
    void evidenceOfTheRateSaysHowMuchOfItTheCarsReadingsAre() {
        var finding = TreadFindings.ofSet(forecast(Role.GOING_ON, 0.95, 6, 6.0), INVENTED, INVENTED, false, null);
        assertThat(finding.evidence())
                .filteredOn(evidence -> evidence.what() == TreadSaid.Label.WEAR_THERE)
                .extracting(Evidence::how)
                .containsExactly(new TreadSaid.CornerRateModel(1, new OwnShare(70)));
    }

    /** 6 mm of a tyre that is 8 mm new and done at 4 mm: half of its life is left. */
    @Test
    void theMarkShowsTheLifeOfTheLowestGroove() {
        var finding = TreadFindings.ofSet(forecast(Role.GOING_ON, 0.95, 6, 6.0), INVENTED, INVENTED, false, null);
        assertThat(finding.lifeLeft()).isEqualTo(0.5);
        assertThat(finding.evidence().getFirst().value())
                .isEqualTo(new TreadSaid.GrooveAt(Corner.RR, "W-RR", Spot.OUTER, new PlusMinus(6, 0.1, "mm", 1)));
    }

    /** What is on the car is replaced now, what goes into store is ordered for. */
    @Test
    void theAdviceFollowsWhereTheSetGoes() {
        assertThat(words(Role.GOING_ON, 0.3, 3.5)).isEqualTo(new TreadSaid.UsedUp(WINTER_SET, mm(3.5), MINIMUM));
        assertThat(words(Role.COMING_OFF, 0.3, 3.5))
                .isEqualTo(new TreadSaid.StoredWillNotLast(WINTER_SET, mm(3.5), MINIMUM));
        assertThat(words(Role.GOING_ON, 0.7, 5)).isEqualTo(new TreadSaid.MayNotLast(WINTER_SET, mm(5), MINIMUM, false));
        assertThat(words(Role.COMING_OFF, 0.7, 5))
                .isEqualTo(new TreadSaid.StoredMayNotLast(WINTER_SET, mm(5), MINIMUM, false));
        assertThat(words(Role.GOING_ON, 0.99, 6)).isEqualTo(new TreadSaid.Lasts(WINTER_SET, mm(6), MINIMUM));
        assertThat(words(Role.COMING_OFF, 0.99, 6)).isEqualTo(new TreadSaid.StoredLasts(WINTER_SET, mm(6), MINIMUM));
        assertThat(words(Role.GOING_ON, 0.99, 1.2)).isEqualTo(new TreadSaid.BelowLegal(WINTER_SET, mm(1.2), MINIMUM));
    }

    /** A set above its minimum that will not last is used up by a date, not by its depth. */
    @Test
    void aSetThatWillNotLastIsGivenItsDate() {
        var finding = TreadFindings.ofSet(forecast(Role.GOING_ON, 0.3, 4.3, 5.3, 4.3), INVENTED, INVENTED, false, null);
        assertThat(finding.plainWords())
                .isEqualTo(new TreadSaid.WillNotLast(WINTER_SET, mm(4.3), MINIMUM, LocalDate.of(2026, 12, 1)));
        assertThat(words(Role.GOING_ON, 0.3, 3.9)).isEqualTo(new TreadSaid.UsedUp(WINTER_SET, mm(3.9), MINIMUM));
    }

    /** A set that came off is not driven on, however worn: it is to be ordered anew, and the car is not called unsafe for it. */
    @Test
    void aSetThatLiesInTheStoreIsNeverUnsafe() {
        var finding = TreadFindings.ofSet(forecast(Role.COMING_OFF, 0.1, 1.2, 1.2), INVENTED, INVENTED, true, null);
        assertThat(finding.verdict()).isEqualTo(Verdict.SPENT);
        assertThat(finding.todo()).isEqualTo(new Todo(Todo.Action.ORDER, Todo.When.BEFORE_FITTING));
        assertThat(TreadFindings.ofSet(forecast(Role.COMING_OFF, 0.1, 1.2, 1.2), INVENTED, INVENTED, false, null)
                        .verdict())
                .as("its wheels are still on the car")
                .isEqualTo(Verdict.UNSAFE);
    }

    /** Nothing is left of a groove that the distance has worn out, and no depth is told for it. */
    @Test
    void aWornOutGrooveHasNoDepth() {
        assertThat(words(Role.GOING_ON, 0, 0))
                .isEqualTo(new TreadSaid.BelowLegal(WINTER_SET, TreadSaid.Label.WORN_OUT, MINIMUM));
    }

    private static Said words(Role role, double chance, double depthMm) {
        return TreadFindings.ofSet(forecast(role, chance, depthMm, depthMm), INVENTED, INVENTED, false, null)
                .plainWords();
    }

    private static Amount mm(double depthMm) {
        return new Amount(depthMm, "mm", 1);
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
        var readings = IntStream.range(0, readMm.length)
                .mapToObj(time -> new DepthReading(5000 * time, Cars.AUTUMN, corner == Corner.RR ? readMm[time] : 7))
                .toList();
        return new TyreForecast(
                set.wheels().get(corner.ordinal()),
                corner,
                List.of(groove(Spot.INNER, 7, List.of()), groove(Spot.OUTER, outerMm, readings)));
    }

    private static GrooveForecast groove(Spot spot, double depthMm, List<DepthReading> readings) {
        return new GrooveForecast(spot, depthMm, 0.1, 0.2, 0.03, 0.68, readings, List.of());
    }
}
