package cornerbook.core.days.plan;

import cornerbook.core.days.Skill;
import cornerbook.core.days.plan.Wanted.Agreed;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * A plan with times and reasons.
 *
 * @param placements of all visits, by day and time; those without a place last
 */
public record DayPlan(List<Placement> placements, PlanScore score) {
    public DayPlan {
        placements = List.copyOf(placements);
    }

    /**
     * Gives times: in a stretch those first whose cars wait, then those that had the earliest time before, each at that time of the day where those after it still
     * have theirs, then one after the other as they were given.
     *
     * @param stretchOf the stretch of each visit, or {@link PlanProblem#NOWHERE}
     */
    public static DayPlan of(PlanProblem problem, List<Integer> stretchOf) {
        var placements = new ArrayList<Placement>();
        problem.board()
                .kept()
                .forEach(each -> placements.add(new Placement(each.visit(), each.station(), each.start(), each.why())));
        for (int i = 0; i < problem.stretches().size(); i++) {
            int stretch = i;
            var free = problem.stretches().get(stretch);
            int worked = 0;
            int left = IntStream.range(0, stretchOf.size())
                    .filter(each -> stretchOf.get(each) == stretch)
                    .map(each -> problem.visits().get(each).minutes())
                    .sum();
            for (int visit : IntStream.range(0, stretchOf.size())
                    .filter(each -> stretchOf.get(each) == stretch)
                    .boxed()
                    .sorted(Comparator.comparingInt(
                            each -> startBefore(problem.visits().get(each))))
                    .toList()) {
                var wanted = problem.visits().get(visit);
                worked = Math.max(worked, Math.min(workedBefore(wanted, free), free.minutes() - left));
                int start = free.free().beginsAfter(worked);
                placements.add(new Placement(wanted, free.station(), start, why(problem, wanted, free.day(), start)));
                worked += wanted.minutes();
                left -= wanted.minutes();
            }
        }
        for (int visit = 0; visit < stretchOf.size(); visit++) {
            if (stretchOf.get(visit) == PlanProblem.NOWHERE) {
                var wanted = problem.visits().get(visit);
                placements.add(new Placement(wanted, null, 0, whyNowhere(problem, wanted)));
            }
        }
        placements.sort(Comparator.comparing((Placement each) -> dayOf(each.station()))
                .thenComparingInt(Placement::start)
                .thenComparing(each -> each.visit().id()));
        return new DayPlan(placements, problem.score(stretchOf));
    }

    private static LocalDate dayOf(@Nullable Station station) {
        return station == null ? LocalDate.MAX : station.day();
    }

    private static int startBefore(Wanted visit) {
        var agreed = visit.agreed();
        if (visit.is(Wanted.Stage.HERE)) {
            return -1;
        }
        return agreed == null || agreed.start() == null ? Integer.MAX_VALUE : agreed.start();
    }

    /** How much of a stretch lies before the time of the day that was agreed, min; nothing where none was. */
    private static int workedBefore(Wanted visit, Stretch stretch) {
        var agreed = visit.agreed();
        return agreed == null || agreed.start() == null
                ? 0
                : stretch.free()
                        .between(stretch.free().begins(), agreed.start())
                        .minutes();
    }

    private static PlanSaid why(PlanProblem problem, Wanted visit, LocalDate day, int start) {
        var agreed = visit.agreed();
        if (visit.is(Wanted.Stage.HERE)) {
            return new PlanSaid.IsHere();
        }
        if (agreed != null && agreed.day().equals(day)) {
            var slipped = problem.board().slipped().get(visit.id());
            if (slipped == null) {
                return new PlanSaid.StaysOnItsDay();
            }
            return startBefore(visit) == start ? new PlanSaid.OtherPerson(slipped) : new PlanSaid.OtherTime(slipped);
        }
        if (agreed != null) {
            return new PlanSaid.Moved(whyMoved(problem, visit, agreed));
        }
        var due = visit.due();
        if (due != null && day.isAfter(due)) {
            return new PlanSaid.Late(due);
        }
        if (visit.wished().contains(day)) {
            return new PlanSaid.OnWishedDay();
        }
        if (!visit.wished().isEmpty()) {
            return new PlanSaid.NotOnWishedDay(visit.firstWished());
        }
        return due == null ? new PlanSaid.WhereRoomIs() : new PlanSaid.InTime(due);
    }

    private static PlanSaid.Slipped whyMoved(PlanProblem problem, Wanted visit, Agreed agreed) {
        var slipped = problem.board().slipped().get(visit.id());
        if (slipped != null) {
            return slipped;
        }
        if (Board.isTooSoon(visit)) {
            return new PlanSaid.SetIsNotThere(visit.earliest());
        }
        return problem.board().minutes(agreed.day()) == 0
                ? new PlanSaid.NobodyWorks(agreed.day())
                : new PlanSaid.DayIsTooFull(agreed.day());
    }

    private static PlanSaid whyNowhere(PlanProblem problem, Wanted visit) {
        if (visit.is(Wanted.Stage.HERE)) {
            return new PlanSaid.NoRoomWhereItIs();
        }
        return Arrays.stream(Skill.values())
                .filter(visit.needs()::contains)
                .filter(skill -> problem.board().stations().stream()
                        .noneMatch(station -> station.skills().contains(skill)))
                .<PlanSaid>map(PlanSaid.NobodyHasLearned::new)
                .findFirst()
                .orElseGet(PlanSaid.NoRoom::new);
    }
}
