package cornerbook.core.days.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import cornerbook.core.days.Skill;
import cornerbook.core.days.WorkHours;
import cornerbook.core.days.plan.Wanted.Agreed;
import cornerbook.core.days.plan.Wanted.Stage;
import cornerbook.core.say.Amount;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A day that has begun is laid anew from its minute on: what has begun stays, and each row says why. An invented shop. */
class TodayPlanTest {
    private static final LocalDate MONDAY = LocalDate.of(2026, 10, 5);
    private static final LocalDate TUESDAY = MONDAY.plusDays(1);
    private static final int TEN = 10 * 60;
    private static final Now NOW = new Now(MONDAY, TEN);

    private static List<Station> stations(String... people) {
        var hours = new TreeMap<String, WorkHours>();
        for (var person : people) {
            hours.put(person, WorkHours.parse("8:00-12:00, 12:30-16:30"));
        }
        return NOW.left(Stream.of(MONDAY, TUESDAY)
                .flatMap(day -> Station.of(day, hours, List.of(), Map.of()).stream())
                .toList());
    }

    private static Wanted visit(String id, int minutes, @Nullable Integer start, @Nullable String person, Stage stage) {
        return new Wanted(
                id, minutes, MONDAY, null, Set.of(), Set.of(), new Agreed(MONDAY, start, person, null, stage));
    }

    @Test
    void whatWasBeforeNowIsDone() {
        assertThat(stations("Ada"))
                .extracting(Station::day, station -> station.hours().written())
                .containsExactly(tuple(MONDAY, "10:00-12:00, 12:30-16:30"), tuple(TUESDAY, "08:00-12:00, 12:30-16:30"));
        assertThat(new Now(MONDAY, 16 * 60 + 30).left(stations("Ada")))
                .extracting(Station::day)
                .containsExactly(TUESDAY);
        assertThat(new Now(TUESDAY, 0).left(stations("Ada")))
                .extracting(Station::day)
                .containsExactly(TUESDAY);
    }

    @Test
    void aQuarterOfAnHourLateIsInTime() {
        assertThat(NOW.stage(MONDAY, TEN - 15)).isEqualTo(Stage.TO_COME);
        assertThat(NOW.stage(MONDAY, TEN - 16)).isEqualTo(Stage.NOT_HERE_YET);
        assertThat(NOW.stage(MONDAY, null)).isEqualTo(Stage.TO_COME);
        assertThat(NOW.stage(TUESDAY, 0)).isEqualTo(Stage.TO_COME);
        var board = Board.of(stations("Ada"), List.of(visit("late", 60, TEN - 15, "Ada", Stage.TO_COME)));
        assertThat(board.kept()).extracting(Kept::start).containsExactly(TEN - 15);
        assertThat(board.free().getFirst().free().written()).isEqualTo("11:00-12:00, 12:30-16:30");
    }

    /** Ada's car takes until half past twelve: who was to have her at eleven waits, unless somebody else is free. */
    @Test
    void workThatHasBegunStaysAndWhoeverWasNextGivesWay() {
        var atWork = visit("running", 120, TEN, "Ada", Stage.AT_WORK);
        var next = visit("next", 60, 11 * 60, "Ada", Stage.TO_COME);
        var longer = new PlanSaid.AnotherTakesLonger("Ada", "12:00");
        var alone = PlanProblem.of(stations("Ada"), List.of(next, atWork), 0);
        assertThat(alone.visits()).containsExactly(next);
        assertThat(alone.board().slipped()).containsExactly(Map.entry("next", longer));
        assertThat(DayPlan.of(alone, List.of(0)).placements())
                .extracting(each -> each.visit().id(), Placement::start, Placement::why)
                .containsExactly(
                        tuple("running", TEN, new PlanSaid.IsAtWork(Amount.of(120, "min"))),
                        tuple("next", 12 * 60 + 30, new PlanSaid.OtherTime(longer)));

        var two = PlanProblem.of(stations("Ada", "Bo"), List.of(next, atWork), 0);
        int bo = two.stretches().stream()
                .map(each -> each.station().person())
                .toList()
                .indexOf("Bo");
        assertThat(DayPlan.of(two, List.of(bo)).placements().getLast())
                .extracting(Placement::start, Placement::why)
                .containsExactly(11 * 60, new PlanSaid.OtherPerson(longer));
    }

    /** Ada has gone home: her car is finished by whoever is free first, and stays even where nobody is at work any more. */
    @Test
    void workThatHasBegunHasNoOtherDay() {
        var atWork = visit("running", 60, TEN, "Ada", Stage.AT_WORK);
        assertThat(PlanProblem.of(stations("Bo"), List.of(atWork), 0).board().kept())
                .singleElement()
                .satisfies(kept -> assertThat(kept.station())
                        .isNotNull()
                        .extracting(Station::person)
                        .isEqualTo("Bo"));
        var nobody = PlanProblem.of(List.of(), List.of(atWork), 0);
        assertThat(nobody.visits()).isEmpty();
        assertThat(DayPlan.of(nobody, List.of()).placements())
                .extracting(Placement::station, Placement::why)
                .containsExactly(tuple(null, new PlanSaid.IsAtWork(Amount.of(60, "min"))));
    }

    @Test
    void whoIsHereGoesBeforeWhoIsNotAndOnThisDayOnly() {
        var late = visit("late", 60, 9 * 60, null, Stage.NOT_HERE_YET);
        var here = visit("here", 60, null, null, Stage.HERE);
        var problem = PlanProblem.of(stations("Ada"), List.of(late, here), 0);
        assertThat(problem.allowed(0)).as("another day").containsExactly(0, 1);
        assertThat(problem.allowed(1)).containsExactly(0);
        var plan = DayPlan.of(problem, List.of(0, 0));
        assertThat(plan.placements())
                .extracting(each -> each.visit().id(), Placement::start, Placement::why)
                .containsExactly(
                        tuple("here", TEN, new PlanSaid.IsHere()),
                        tuple("late", TEN + 60, new PlanSaid.OtherTime(new PlanSaid.NotHereYet("09:00"))));
        assertThat(DayPlan.of(problem, List.of(1, PlanProblem.NOWHERE)).placements())
                .extracting(Placement::why)
                .containsExactly(new PlanSaid.Moved(new PlanSaid.NotHereYet("09:00")), new PlanSaid.NoRoomWhereItIs());
    }

    /** Two free stretches of one day: who waits costs less in the first. */
    @Test
    void whoWaitsHasItsTurnEarly() {
        var pinned = visit("pinned", 60, 11 * 60, "Ada", Stage.TO_COME);
        var here = visit("here", 60, null, null, Stage.HERE);
        var problem = PlanProblem.of(stations("Ada"), List.of(pinned, here), 0);
        assertThat(problem.cost(0, 1) - problem.cost(0, 0)).isEqualTo(2 * 150);
        var untimed = visit("untimed", 60, null, null, Stage.TO_COME);
        var other = PlanProblem.of(stations("Ada"), List.of(pinned, untimed), 0);
        assertThat(other.cost(0, 1)).isEqualTo(other.cost(0, 0));
    }

    @Test
    void whatStaysSaysWhatSpeaksAgainstIt() {
        var first = visit("first", 130, TEN, "Ada", Stage.TO_COME);
        var second = visit("second", 60, 12 * 60 + 30, "Ada", Stage.TO_COME);
        var last = visit("last", 60, 16 * 60, "Ada", Stage.TO_COME);
        var voltage = new Wanted(
                "voltage",
                30,
                MONDAY,
                null,
                Set.of(),
                Set.of(Skill.HIGH_VOLTAGE),
                new Agreed(MONDAY, 14 * 60, "Ada", null));
        assertThat(Board.of(stations("Ada"), List.of(first, second, voltage, last))
                        .kept())
                .extracting(kept -> kept.visit().id(), Kept::why)
                .containsExactly(
                        tuple("first", new PlanSaid.StaysAsAgreed()),
                        tuple("second", new PlanSaid.StaysThoughItOverlaps(Amount.of(10, "min"))),
                        tuple("voltage", new PlanSaid.StaysThoughNotTrained("Ada", Skill.HIGH_VOLTAGE)),
                        tuple("last", new PlanSaid.StaysThoughItEndsLate(Amount.of(30, "min"))));
    }
}
