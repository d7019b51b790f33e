package cornerbook.bench.wheelplan;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import cornerbook.core.wheelplan.PlanRequest;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;

/**
 * The planner's three levels by a general-purpose solver (CP-SAT), one worker, each to its proven optimum.
 *
 * @param distanceKm longest distance until the first groove reaches its limit
 * @param spreadMm smallest spread among plans within 1 km of it
 * @param moves fewest moves among those within 0.01 mm of that
 */
public record SolverPlan(double distanceKm, double spreadMm, long moves) {
    private static final long SAME_METRES = 1000;
    private static final long SAME_PM = SolverModel.PM_PER_MM / 100;

    static {
        Loader.loadNativeLibraries();
    }

    /** The longest distance alone, km; empty when no plan keeps the rules. */
    public static Optional<Double> distanceKm(PlanRequest request) {
        var metres = longest(request);
        return metres.isPresent() ? Optional.of(metres.getAsLong() / 1000.0) : Optional.empty();
    }

    /** The longest sum of the distances of two sets that alternate, km; empty when either has no plan that keeps its rules. */
    public static Optional<Double> distanceKm(PlanRequest one, PlanRequest other) {
        var longest = OptionalLong.empty();
        for (int season = 0; season < one.seasonsThousandKm().size(); season++) {
            for (int others = 0; others < other.seasonsThousandKm().size(); others++) {
                var first = new SolverModel(one, season);
                var second = new SolverModel(first.model, other, others);
                first.model.maximize(LinearExpr.sum(new IntVar[] {first.intoSeason, second.intoSeason}));
                long before = startMetres(one, season) + startMetres(other, others);
                var found = solve(first, true, solver -> before + Math.round(solver.objectiveValue()));
                if (found.isPresent() && (longest.isEmpty() || found.get() > longest.getAsLong())) {
                    longest = OptionalLong.of(found.get());
                }
            }
        }
        return longest.isPresent() ? Optional.of(longest.getAsLong() / 1000.0) : Optional.empty();
    }

    /** All three levels; empty when no plan keeps the rules. */
    public static Optional<SolverPlan> best(PlanRequest request) {
        var found = longest(request);
        if (found.isEmpty()) {
            return Optional.empty();
        }
        long metres = found.getAsLong();
        long spread = least(request, metres, Long.MAX_VALUE, false);
        long moves = least(request, metres, spread + SAME_PM, true);
        return Optional.of(new SolverPlan(metres / 1000.0, (double) spread / SolverModel.PM_PER_MM, moves));
    }

    private static OptionalLong longest(PlanRequest request) {
        for (int season = request.seasonsThousandKm().size() - 1; season >= 0; season--) {
            var model = new SolverModel(request, season);
            model.model.maximize(model.intoSeason);
            var into = solve(model, true, solver -> solver.value(model.intoSeason));
            if (into.isPresent()) {
                return OptionalLong.of(startMetres(request, season) + into.get());
            }
        }
        return OptionalLong.empty();
    }

    /** Least spread, or fewest moves, of the endings that reach the distance but for 1 km. */
    private static long least(PlanRequest request, long metres, long mostSpread, boolean moves) {
        long least = Long.MAX_VALUE;
        for (int season = request.seasonsThousandKm().size() - 1; season >= 0; season--) {
            long enough = metres - SAME_METRES - startMetres(request, season);
            if (season < request.seasonsThousandKm().size() - 1
                    && enough >= SolverModel.metres(request.seasonsThousandKm().get(season))) {
                break;
            }
            var model = new SolverModel(request, season);
            model.model.addGreaterOrEqual(model.intoSeason, Math.max(0, enough));
            if (mostSpread < Long.MAX_VALUE) {
                model.model.addLessOrEqual(model.spread, mostSpread);
            }
            model.model.minimize(moves ? model.moves : model.spread);
            var found = solve(model, false, solver -> Math.round(solver.objectiveValue()));
            least = Math.min(least, found.orElse(Long.MAX_VALUE));
        }
        return least;
    }

    private static long startMetres(PlanRequest request, int season) {
        return request.seasonsThousandKm().subList(0, season).stream()
                .mapToLong(SolverModel::metres)
                .sum();
    }

    /**
     * Solves to the optimum. Presolve speeds up the distance, but version 9.15 calls models with a bound on the spread
     * infeasible with it that have a solution without.
     */
    private static Optional<Long> solve(SolverModel model, boolean presolve, Function<CpSolver, Long> value) {
        var solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setRandomSeed(1).setCpModelPresolve(presolve);
        var status = solver.solve(model.model);
        return switch (status) {
            case CpSolverStatus.OPTIMAL -> Optional.of(value.apply(solver));
            case CpSolverStatus.INFEASIBLE -> Optional.empty();
            default -> throw new IllegalStateException("the solver ended with " + status);
        };
    }
}
