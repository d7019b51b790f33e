package cornerbook.app.planner;

import ai.timefold.solver.core.api.solver.Solver;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import cornerbook.core.days.plan.PlanProblem;
import cornerbook.core.days.plan.PlanScore;
import java.time.Duration;
import java.util.List;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.IntStream;

/** Searches for a good plan until its time is over, it finds nothing better for a while, or it is stopped. Used once. */
public final class Planner {
    /** Kept, as a level that nobody holds on to is forgotten. */
    private static final Logger SOLVER_LOG = Logger.getLogger("ai.timefold");

    private final PlanProblem problem;
    private final Solver<SearchedPlan> solver;

    /**
     * A search that has not begun.
     *
     * @param longest until it ends
     * @param unimproved until it ends when nothing better is found
     */
    public Planner(PlanProblem problem, Duration longest, Duration unimproved) {
        // What it tells of each search is for who tunes it.
        SOLVER_LOG.setLevel(Level.WARNING);
        this.problem = problem;
        this.solver = SolverFactory.<SearchedPlan>create(new SolverConfig()
                        .withEnvironmentMode(EnvironmentMode.NO_ASSERT)
                        .withSolutionClass(SearchedPlan.class)
                        .withEntityClasses(SearchedVisit.class)
                        .withScoreDirectorFactory(new ScoreDirectorFactoryConfig()
                                .withIncrementalScoreCalculatorClass(PlanCalculator.class))
                        .withTerminationConfig(
                                new TerminationConfig().withSpentLimit(longest).withUnimprovedSpentLimit(unimproved)))
                .buildSolver();
    }

    /**
     * Searches. Where nothing can be laid nothing is searched.
     *
     * @param better is told of each better plan
     * @return the stretch of each visit, or {@link PlanProblem#NOWHERE}
     */
    public List<Integer> search(Consumer<PlanScore> better) {
        if (IntStream.range(0, problem.visits().size())
                .allMatch(visit -> problem.allowed(visit).isEmpty())) {
            return problem.visits().stream().map(visit -> PlanProblem.NOWHERE).toList();
        }
        solver.addEventListener(event -> {
            if (event.isNewBestSolutionInitialized()) {
                better.accept(problem.score(event.getNewBestSolution().stretches()));
            }
        });
        return solver.solve(new SearchedPlan(problem)).stretches();
    }

    /** The search ends with the best that it has. */
    public void stop() {
        solver.terminateEarly();
    }
}
