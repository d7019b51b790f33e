package cornerbook.core.assess;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Problem;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Facts;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VisitRulesTest {
    @Test
    void aCorrectionMayStandBeforeOrAfterWhatItCorrects() {
        assertThat(check(volts("a", "b"), volts("b", null))).isEmpty();
        assertThat(check(volts("a", null), volts("b", "a"), volts("c", "b"))).isEmpty();
    }

    @Test
    void aReadingThatCorrectsItselfIsRefused() {
        assertThat(check(volts("a", "a")))
                .singleElement()
                .isEqualTo(new Problem("/visits/0/readings/0/corrects", new AssessSaid.CorrectsItself("a", "a")));
    }

    @Test
    void readingsThatCorrectEachOtherAreRefused() {
        assertThat(check(volts("a", "b"), volts("b", "c"), volts("c", "a")))
                .extracting(Problem::where)
                .containsExactly(
                        "/visits/0/readings/0/corrects",
                        "/visits/0/readings/1/corrects",
                        "/visits/0/readings/2/corrects");
    }

    /**
     * The meter of a car that was only moved across the yard stands still. One that runs back is asked about where it is typed,
     * and may be true: the visit before may have been typed wrong, or the meter replaced.
     */
    @Test
    void theOdometerMayStandStillOrRunBack() {
        assertThat(VisitRules.check(Cars.history(visit("v1", 48_000), visit("v2", 48_000)), Cars.AUTUMN))
                .isEmpty();
        assertThat(VisitRules.check(Cars.history(visit("v1", 48_000), visit("v2", 47_999)), Cars.AUTUMN))
                .isEmpty();
    }

    @Test
    void aVisitOfTodayIsNotInTheFuture() {
        assertThat(VisitRules.check(Cars.history(visit("v1", 48_000)), Cars.AUTUMN))
                .isEmpty();
        assertThat(VisitRules.check(Cars.history(visit("v1", 48_000)), Cars.AUTUMN.minusDays(1)))
                .extracting(Problem::where)
                .containsExactly("/visits/0/date");
    }

    /** Two visits, readings or wheels under one name could not be told apart afterwards. */
    @Test
    void whatIsNamedTwiceIsRefused() {
        assertThat(VisitRules.check(Cars.history(visit("v", 48_000), visit("v", 49_000)), Cars.AUTUMN))
                .containsExactly(new Problem("/visits/1/id", new AssessSaid.VisitTwice("v")));
        assertThat(check(volts("a", null), volts("a", null)))
                .containsExactly(new Problem("/visits/0/readings/1/id", new AssessSaid.ReadingTwice("a")));
        var car = Cars.history();
        var twice = new CarHistory(
                car.vehicle(),
                car.customer(),
                List.of(Cars.set(SeasonKind.SUMMER, "S-"), Cars.set(SeasonKind.ALL_SEASON, "S-")),
                List.of());
        assertThat(VisitRules.check(twice, Cars.AUTUMN))
                .hasSize(4)
                .first()
                .isEqualTo(new Problem("/wheelSets/1/wheels/0/tag", new AssessSaid.WheelTwice("S-LF")));
    }

    @Test
    void aCorrectionOfNothingIsRefused() {
        assertThat(check(volts("a", null), volts("b", "c")))
                .containsExactly(new Problem("/visits/0/readings/1/corrects", new AssessSaid.CorrectsNothing("c")));
    }

    /** A gauge may read half a millimetre above the 8 mm of a new tyre: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"8.5, false", "8.6, true"})
    void aTreadIsHardlyDeeperThanNew(double depthMm, boolean refused) {
        assertThat(check(Cars.reading(Measure.TREAD_DEPTH, Corner.LF, "S-LF", Spot.INNER, depthMm)))
                .hasSize(refused ? 1 : 0)
                .allMatch(problem -> problem.message()
                        .equals(new AssessSaid.DeeperThanNew(
                                new Amount(depthMm, "mm", 1),
                                "S-LF",
                                new Amount(8, "mm", 1),
                                new Amount(8.5, "mm", 1))));
    }

    /** A reading may be of the wheel that came or of the one that went on, at its own corner. */
    @Test
    void aWheelIsReadWhereItStood() {
        assertThat(expected(Cars.at("S-"), Cars.at("W-"), "S-LF")).isEmpty();
        assertThat(expected(Cars.at("S-"), Cars.at("W-"), "W-LF")).isEmpty();
        assertThat(expected(Cars.at("S-"), Cars.at("W-"), "S-RF")).contains(expectedWheel("S-LF", "W-LF"));
        assertThat(expected(Cars.at("S-"), Cars.at("S-"), "S-RF")).contains(expectedWheel("S-LF"));
        assertThat(expected(Cars.at("S-"), Map.of(), "S-RF")).contains(expectedWheel("S-LF"));
        assertThat(expected(Map.of(), Cars.at("W-"), "S-RF")).contains(expectedWheel("W-LF"));
        assertThat(expected(Map.of(), Map.of(), "S-RF"))
                .contains(new AssessSaid.WheelNotThere("S-RF", Corner.LF, null));
    }

    /** What comes out of the store is read before anybody knows where it goes; once it is on the car it was at its own corner. */
    @Test
    void aStoredWheelIsReadBeforeItHasAPlace() {
        assertThat(expected(Cars.at("S-"), Map.of(), "W-RF")).isEmpty();
        assertThat(expected(Cars.at("S-"), Cars.at("S-"), "W-RF")).isEmpty();
        assertThat(expected(Cars.at("S-"), Cars.at("W-"), "W-RF")).isPresent();
    }

    private static Said expectedWheel(String... there) {
        return new AssessSaid.WheelNotThere("S-RF", Corner.LF, Listed.or(Facts.texts(there)));
    }

    private static Optional<Said> expected(Map<Corner, String> arrived, Map<Corner, String> left, String tag) {
        var reading = Cars.reading(Measure.TREAD_DEPTH, Corner.LF, tag, Spot.INNER, 7);
        var visit = new Visit("v", Cars.AUTUMN, 48_000, arrived, left, List.of(reading));
        return VisitRules.check(Cars.history(visit), Cars.AUTUMN).stream()
                .map(Problem::message)
                .findFirst();
    }

    /** Wheels that the car does not have, and one that stands at two corners at once, on arrival as on leaving. */
    @Test
    void wheelsStandOnceAndAreTheCars() {
        var odd = Cars.at("S-");
        odd.put(Corner.RR, "S-LF");
        odd.put(Corner.LR, "X");
        for (var arrives : new boolean[] {true, false}) {
            var visit = new Visit(
                    "v", Cars.AUTUMN, 48_000, arrives ? odd : Cars.at("S-"), arrives ? Cars.at("S-") : odd, List.of());
            var where = arrives ? "/visits/0/arrivedOn/" : "/visits/0/leftOn/";
            assertThat(VisitRules.check(Cars.history(visit), Cars.AUTUMN))
                    .extracting(Problem::where)
                    .containsExactlyInAnyOrder(where + "LR", where + "RR");
        }
    }

    @Test
    void whatABrakeContradictsIsNamedWhereItStands() {
        assertThat(check(Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, Spot.OUTER, 14)))
                .extracting(Problem::where)
                .containsExactly("/visits/0/readings/0/value");
    }

    private static Visit visit(String id, double odometerKm) {
        return new Visit(id, Cars.AUTUMN, odometerKm, Cars.at("S-"), Cars.at("S-"), List.of());
    }

    private static List<Problem> check(Reading... readings) {
        var visit = new Visit("v", Cars.AUTUMN, 48_000, Cars.at("S-"), Cars.at("S-"), List.of(readings));
        return VisitRules.check(Cars.history(visit), Cars.AUTUMN);
    }

    private static Reading volts(String id, @Nullable String corrects) {
        return new Reading(
                id,
                Measure.BATTERY_VOLTAGE,
                null,
                null,
                null,
                12.6,
                "12.6 V",
                corrects,
                corrects == null ? null : "misread");
    }
}
