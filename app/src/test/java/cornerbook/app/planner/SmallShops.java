package cornerbook.app.planner;

import cornerbook.core.days.Skill;
import cornerbook.core.days.WorkHours;
import cornerbook.core.days.plan.PlanProblem;
import cornerbook.core.days.plan.PlanScore;
import cornerbook.core.days.plan.Station;
import cornerbook.core.days.plan.Wanted;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;

/** Invented shops with a few days and a few cars, by chance. */
final class SmallShops {
    static final LocalDate MONDAY = LocalDate.of(2026, 10, 5);
    private static final WorkHours WHOLE = WorkHours.parse("8:00-12:00, 12:30-16:30");
    private static final WorkHours MORNING = WorkHours.parse("8:00-12:00");

    private SmallShops() {}

    /** Two people, two days, and so many visits as can be laid in all ways. */
    static PlanProblem problem(long seed, int visits) {
        var random = new Random(seed);
        var stations = new ArrayList<Station>();
        for (int day = 0; day < 2; day++) {
            var hours = new TreeMap<String, WorkHours>();
            hours.put("Ada", random.nextInt(4) == 0 ? MORNING : WHOLE);
            hours.put("Bo", random.nextInt(3) == 0 ? WorkHours.NONE : MORNING);
            stations.addAll(Station.of(
                    MONDAY.plusDays(day),
                    hours,
                    List.of("H-1", "H-2"),
                    Map.of("Ada", EnumSet.allOf(Skill.class), "Bo", Set.of(Skill.BRAKES))));
        }
        var wanted = new ArrayList<Wanted>();
        for (int visit = 0; visit < visits; visit++) {
            wanted.add(visit(random, visit));
        }
        return PlanProblem.of(stations, wanted, 10 * random.nextInt(3));
    }

    private static Wanted visit(Random random, int number) {
        var agreed = random.nextInt(3) == 0
                ? new Wanted.Agreed(
                        day(random),
                        random.nextBoolean() ? 8 * 60 + 30 * random.nextInt(12) : null,
                        random.nextInt(3) == 0 ? "Ada" : null,
                        random.nextInt(3) == 0 ? "H-2" : null)
                : null;
        return new Wanted(
                "visit" + number,
                30 + 15 * random.nextInt(8),
                day(random),
                random.nextInt(3) == 0 ? day(random) : null,
                random.nextInt(3) == 0 ? Set.of(day(random)) : Set.of(),
                random.nextInt(3) == 0 ? Set.of(Skill.HIGH_VOLTAGE) : Set.of(),
                agreed);
    }

    private static LocalDate day(Random random) {
        return MONDAY.plusDays(random.nextInt(2));
    }

    /** The least points of all plans that can be, by looking at each. */
    static PlanScore best(PlanProblem problem) {
        return best(problem, new ArrayList<>(), new PlanScore(Integer.MAX_VALUE, Long.MAX_VALUE));
    }

    private static PlanScore best(PlanProblem problem, List<Integer> begun, PlanScore least) {
        if (begun.size() == problem.visits().size()) {
            var score = problem.score(begun);
            return score.canBe() && score.points() < least.points() ? score : least;
        }
        var found = least;
        var choices = new ArrayList<>(problem.allowed(begun.size()));
        choices.add(PlanProblem.NOWHERE);
        for (int stretch : choices) {
            begun.add(stretch);
            found = best(problem, begun, found);
            begun.removeLast();
        }
        return found;
    }
}
