package cornerbook.app.planner;

import ai.timefold.solver.core.api.domain.solution.PlanningEntityCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.domain.solution.cloner.SolutionCloner;
import ai.timefold.solver.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import cornerbook.core.days.plan.PlanProblem;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** A plan while it is searched for, as the solver reads it. */
@PlanningSolution(solutionCloner = SearchedPlan.Copy.class)
public final class SearchedPlan {
    private final PlanProblem problem;
    private final List<SearchedVisit> visits;
    private @Nullable HardSoftLongScore score;

    SearchedPlan(PlanProblem problem) {
        this(
                problem,
                IntStream.range(0, problem.visits().size())
                        .mapToObj(visit -> new SearchedVisit(visit, problem))
                        .toList(),
                null);
    }

    private SearchedPlan(PlanProblem problem, List<SearchedVisit> visits, @Nullable HardSoftLongScore score) {
        this.problem = problem;
        this.visits = visits;
        this.score = score;
    }

    PlanProblem problem() {
        return problem;
    }

    List<Integer> stretches() {
        return visits.stream()
                .map(visit -> Objects.requireNonNullElse(visit.getStretch(), PlanProblem.NOWHERE))
                .toList();
    }

    @PlanningEntityCollectionProperty
    public List<SearchedVisit> getVisits() {
        return visits;
    }

    @PlanningScore
    public @Nullable HardSoftLongScore getScore() {
        return score;
    }

    public void setScore(@Nullable HardSoftLongScore score) {
        this.score = score;
    }

    /** Copies what changes while it is searched. */
    public static final class Copy implements SolutionCloner<SearchedPlan> {
        @Override
        public SearchedPlan cloneSolution(SearchedPlan original) {
            return new SearchedPlan(
                    original.problem,
                    original.visits.stream().map(SearchedVisit::copy).toList(),
                    original.score);
        }
    }
}
