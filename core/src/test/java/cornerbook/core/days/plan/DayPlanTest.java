package cornerbook.core.days.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import cornerbook.core.days.Skill;
import cornerbook.core.days.WorkHours;
import cornerbook.core.days.plan.Wanted.Agreed;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What stays, what slips and why, on days of an invented shop. */
class DayPlanTest {
    private static final LocalDate MONDAY = LocalDate.of(2026, 10, 5);
    private static final LocalDate TUESDAY = MONDAY.plusDays(1);
    private static final WorkHours WHOLE = WorkHours.parse("8:00-12:00, 12:30-16:30");
    private static final int TEN = 10 * 60;

    private static List<Station> stations(Map<String, WorkHours> hours, String... hoists) {
        return Station.of(MONDAY, new TreeMap<>(hours), List.of(hoists), Map.of("Ada", Set.of(Skill.HIGH_VOLTAGE)));
    }

    private static Wanted booked(String id, int start, int minutes, String person) {
        return new Wanted(
                id,
                minutes,
                MONDAY,
                null,
                Set.of(),
                Set.of(),
                new Agreed(MONDAY, start, person.isEmpty() ? null : person, null));
    }

    @Test
    void whoBeginsWhenAnotherHasGoneHasTheSameHoist() {
        var early = WorkHours.parse("6:00-12:00");
        var late = WorkHours.parse("12:00-18:00");
        assertThat(stations(Map.of("Ada", late, "Bo", early), "H-1"))
                .extracting(Station::person, Station::hoist)
                .containsExactly(tuple("Bo", "H-1"), tuple("Ada", "H-1"));
        assertThat(stations(Map.of("Ada", WHOLE, "Bo", WHOLE), "H-1"))
                .extracting(Station::person)
                .containsExactly("Ada");
        assertThat(stations(Map.of("Ada", WHOLE, "Bo", WHOLE))).hasSize(2);
    }

    @Test
    void aBookedTimeStaysAndTheRestIsFree() {
        var board = Board.of(stations(Map.of("Ada", WHOLE), "H-1"), List.of(booked("car", TEN, 180, "Ada")));
        assertThat(board.kept())
                .singleElement()
                .satisfies(kept -> assertThat(kept.start()).isEqualTo(TEN));
        // From ten two hours until noon, and one after the break.
        assertThat(board.free())
                .extracting(stretch -> stretch.free().written())
                .containsExactly("08:00-10:00", "13:30-16:30");
    }

    @Test
    void aQuarterOfAnHourIsNoClashAndMoreIs() {
        var stations = stations(Map.of("Ada", WHOLE), "H-1");
        assertThat(Board.of(stations, List.of(booked("one", 8 * 60, 135, ""), booked("two", TEN, 60, "")))
                        .slipped())
                .isEmpty();
        assertThat(Board.of(stations, List.of(booked("one", 8 * 60, 136, ""), booked("two", TEN, 60, "")))
                        .slipped())
                .containsExactly(Map.entry("two", new PlanSaid.TimeIsTaken(MONDAY)));
    }

    @Test
    void whatCannotStaySaysWhy() {
        var stations = stations(Map.of("Ada", WHOLE), "H-1");
        assertThat(Board.of(stations, List.of(booked("car", TEN, 60, "Bo"))).slipped())
                .containsValue(new PlanSaid.IsAway("Bo", MONDAY));
        assertThat(Board.of(List.of(), List.of(booked("car", TEN, 60, "Bo"))).slipped())
                .containsValue(new PlanSaid.NobodyWorks(MONDAY));
    }

    /** What goes on the car lies elsewhere until Tuesday: neither a booked time nor a booked day before it stays. */
    @Test
    void aDayBeforeTheSetIsThereSlips() {
        var stations = stations(Map.of("Ada", WHOLE), "H-1");
        var timed = new Wanted("timed", 60, TUESDAY, null, Set.of(), Set.of(), new Agreed(MONDAY, TEN, "Ada", null));
        var daily = new Wanted("daily", 60, TUESDAY, null, Set.of(), Set.of(), new Agreed(MONDAY, null, null, null));
        assertThat(Board.of(stations, List.of(timed)).slipped())
                .containsExactly(Map.entry("timed", new PlanSaid.SetIsNotThere(TUESDAY)));
        var both = Station.of(TUESDAY, new TreeMap<>(Map.of("Ada", WHOLE)), List.of("H-1"), Map.of());
        var problem =
                PlanProblem.of(Stream.concat(stations.stream(), both.stream()).toList(), List.of(timed, daily), 0);
        assertThat(problem.allowed(0)).isEqualTo(problem.allowed(1)).containsExactly(1);
        assertThat(DayPlan.of(problem, List.of(1, 1)).placements())
                .extracting(Placement::why)
                .containsOnly(new PlanSaid.Moved(new PlanSaid.SetIsNotThere(TUESDAY)));
    }

    /** Bo is away: Ada takes the car at its hour, and later than that only what would not fit behind it. */
    @Test
    void whoSlippedKeepsTheHourWhereSomebodyElseHasIt() {
        var stations = stations(Map.of("Ada", WHOLE), "H-1");
        var car = booked("car", TEN, 60, "Bo");
        var away = new PlanSaid.IsAway("Bo", MONDAY);
        assertThat(DayPlan.of(PlanProblem.of(stations, List.of(car), 0), List.of(0))
                        .placements())
                .containsExactly(new Placement(car, stations.getFirst(), TEN, new PlanSaid.OtherPerson(away)));
        var allDay = new Wanted("allDay", 390, MONDAY, null, Set.of(), Set.of(), null);
        assertThat(DayPlan.of(PlanProblem.of(stations, List.of(car, allDay), 0), List.of(0, 0))
                        .placements())
                .extracting(Placement::start, Placement::why)
                .startsWith(tuple(8 * 60 + 30, new PlanSaid.OtherTime(away)));
        assertThat(DayPlan.of(PlanProblem.of(stations, List.of(car, booked("too", TEN, 60, "Bo")), 0), List.of(0, 0))
                        .placements())
                .extracting(Placement::start)
                .containsExactly(TEN, TEN + 60);
    }

    @Test
    void whatIsLaidHasTimesOneAfterTheOtherAndItsReason() {
        var needs = Set.of(Skill.HIGH_VOLTAGE);
        var visits = List.of(
                new Wanted("a", 180, MONDAY, null, Set.of(MONDAY), needs, null),
                new Wanted("b", 90, MONDAY, MONDAY, Set.of(), needs, null),
                new Wanted("c", 60, MONDAY, null, Set.of(TUESDAY), Set.of(Skill.BRAKES), null),
                new Wanted("d", 60, MONDAY, null, Set.of(), Set.of(), new Agreed(MONDAY, null, null, null)));
        var problem = PlanProblem.of(stations(Map.of("Ada", WHOLE), "H-1"), visits, 0);
        var plan = DayPlan.of(problem, List.of(0, 0, PlanProblem.NOWHERE, 0));
        assertThat(plan.score().canBe()).isTrue();
        assertThat(plan.placements())
                .extracting(each -> each.visit().id(), Placement::start, Placement::why)
                .containsExactly(
                        tuple("a", 8 * 60, new PlanSaid.OnWishedDay()),
                        tuple("b", 11 * 60, new PlanSaid.InTime(MONDAY)),
                        // Half an hour of it is done at the break, the rest ends at one.
                        tuple("d", 13 * 60, new PlanSaid.StaysOnItsDay()),
                        tuple("c", 0, new PlanSaid.NobodyHasLearned(Skill.BRAKES)));
    }

    @Test
    void theShareForOthersIsKeptFreeButDrivesOutNothingThatWasAgreed() {
        var stations = stations(Map.of("Ada", WHOLE), "H-1");
        var agreed = new Wanted("old", 450, MONDAY, null, Set.of(), Set.of(), new Agreed(MONDAY, null, null, null));
        var fresh = new Wanted("new", 450, MONDAY, null, Set.of(), Set.of(), null);
        assertThat(PlanProblem.of(stations, List.of(agreed), 20)
                        .score(List.of(0))
                        .canBe())
                .isTrue();
        assertThat(PlanProblem.of(stations, List.of(fresh), 20).score(List.of(0)))
                .extracting(PlanScore::overMinutes)
                .isEqualTo(450 - 480 * 80 / 100);
    }
}
