package cornerbook.app.planner;

import ai.timefold.solver.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import ai.timefold.solver.core.api.score.calculator.IncrementalScoreCalculator;
import cornerbook.core.days.plan.PlanProblem;
import java.util.List;
import java.util.Objects;

/** What {@link PlanProblem#score} counts, kept up to date move by move. */
public final class PlanCalculator implements IncrementalScoreCalculator<SearchedPlan, HardSoftLongScore> {
    private PlanProblem problem = PlanProblem.of(List.of(), List.of(), 0);
    private int[] inStretch = new int[0];
    private int[] onDay = new int[0];
    private int[] roomOfStretch = new int[0];
    private long[][] cost = new long[0][];
    private long points;
    private long over;

    @Override
    public void resetWorkingSolution(SearchedPlan plan) {
        if (problem != plan.problem()) {
            read(plan.problem());
        }
        inStretch = new int[problem.stretches().size()];
        onDay = new int[problem.days()];
        points = 0;
        over = 0;
        for (int day = 0; day < onDay.length; day++) {
            points += problem.loadCost(day, 0);
        }
        plan.getVisits().forEach(this::add);
    }

    private void read(PlanProblem of) {
        problem = of;
        roomOfStretch =
                of.stretches().stream().mapToInt(stretch -> stretch.minutes()).toArray();
        cost = new long[of.visits().size()][roomOfStretch.length + 1];
        for (int visit = 0; visit < cost.length; visit++) {
            cost[visit][roomOfStretch.length] = of.cost(visit, PlanProblem.NOWHERE);
            for (int stretch : of.allowed(visit)) {
                cost[visit][stretch] = of.cost(visit, stretch);
            }
        }
    }

    private void add(SearchedVisit visit) {
        change(visit, visit.minutes());
        points += costOf(visit);
    }

    private void take(SearchedVisit visit) {
        change(visit, -visit.minutes());
        points -= costOf(visit);
    }

    private long costOf(SearchedVisit visit) {
        return cost[visit.place()][Objects.requireNonNullElse(visit.getStretch(), roomOfStretch.length)];
    }

    private void change(SearchedVisit visit, int minutes) {
        var stretch = visit.getStretch();
        if (stretch == null) {
            return;
        }
        int day = problem.dayOf(stretch);
        over -= overOf(stretch, day);
        points -= problem.loadCost(day, onDay[day]);
        inStretch[stretch] += minutes;
        onDay[day] += minutes;
        over += overOf(stretch, day);
        points += problem.loadCost(day, onDay[day]);
    }

    private int overOf(int stretch, int day) {
        return Math.max(0, inStretch[stretch] - roomOfStretch[stretch]) + Math.max(0, onDay[day] - problem.roomOf(day));
    }

    @Override
    public void beforeVariableChanged(Object visit, String name) {
        take((SearchedVisit) visit);
    }

    @Override
    public void afterVariableChanged(Object visit, String name) {
        add((SearchedVisit) visit);
    }

    @Override
    public void beforeEntityAdded(Object visit) {
        // No visit is added while it is searched.
    }

    @Override
    public void afterEntityAdded(Object visit) {
        // No visit is added while it is searched.
    }

    @Override
    public void beforeEntityRemoved(Object visit) {
        // No visit is removed while it is searched.
    }

    @Override
    public void afterEntityRemoved(Object visit) {
        // No visit is removed while it is searched.
    }

    @Override
    public HardSoftLongScore calculateScore() {
        return HardSoftLongScore.of(-over, -points);
    }
}
