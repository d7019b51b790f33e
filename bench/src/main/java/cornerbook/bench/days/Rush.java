package cornerbook.bench.days;

import cornerbook.core.days.Skill;
import cornerbook.core.days.WorkHours;
import cornerbook.core.days.plan.PlanProblem;
import cornerbook.core.days.plan.Station;
import cornerbook.core.days.plan.Wanted;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;

/** An invented autumn: six weeks of six days, five hoists with a person each, three of whom have learned high voltage. */
final class Rush {
    static final LocalDate MONDAY = LocalDate.of(2026, 10, 5);
    private static final int WEEKS = 6;
    private static final int PEOPLE = 5;
    private static final int HIGH_VOLTAGE_PEOPLE = 3;
    private static final int FREE_PERCENT = 10;

    private Rush() {}

    static PlanProblem of(int visits, long seed) {
        var random = new Random(seed);
        var wanted = new ArrayList<Wanted>();
        for (int visit = 0; visit < visits; visit++) {
            wanted.add(visit(random, visit));
        }
        return PlanProblem.of(stations(), wanted, FREE_PERCENT);
    }

    private static List<Station> stations() {
        var usual = WorkHours.parse("7:30-12:00, 12:30-17:30");
        var saturday = WorkHours.parse("8:00-13:00");
        var hoists = List.of("H-1", "H-2", "H-3", "H-4", "H-5");
        var skills = new TreeMap<String, Set<Skill>>();
        for (int person = 0; person < PEOPLE; person++) {
            skills.put(
                    "P" + person, person < HIGH_VOLTAGE_PEOPLE ? EnumSet.allOf(Skill.class) : EnumSet.of(Skill.BRAKES));
        }
        return MONDAY.datesUntil(MONDAY.plusWeeks(WEEKS))
                .filter(day -> day.getDayOfWeek() != DayOfWeek.SUNDAY)
                .flatMap(day -> {
                    var hours = new TreeMap<String, WorkHours>();
                    skills.keySet()
                            .forEach(person ->
                                    hours.put(person, day.getDayOfWeek() == DayOfWeek.SATURDAY ? saturday : usual));
                    return Station.of(day, hours, hoists, Map.copyOf(skills)).stream();
                })
                .toList();
    }

    private static Wanted visit(Random random, int number) {
        int weeksSoon = random.nextInt(3);
        var earliest = MONDAY.plusDays(random.nextInt(14));
        var day = MONDAY.plusDays(random.nextInt(7 * WEEKS));
        var agreed = random.nextInt(4) == 0 ? new Wanted.Agreed(day, null, null, null) : null;
        return new Wanted(
                "visit" + number,
                random.nextInt(10) < 9 ? 25 + 5 * random.nextInt(4) : 85 + 5 * random.nextInt(8),
                earliest,
                agreed == null ? MONDAY.plusWeeks(3 + weeksSoon) : null,
                agreed == null && random.nextInt(3) == 0 ? Set.of(earliest.plusDays(random.nextInt(21))) : Set.of(),
                random.nextInt(2) == 0 ? Set.of(Skill.HIGH_VOLTAGE) : Set.of(),
                agreed);
    }
}
