package cornerbook.bench.days;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import cornerbook.core.days.plan.PlanProblem;

/**
 * The linear relaxation of the problem by a general solver (OR-Tools, GLOP): a visit may be cut and lie in several stretches. The convex
 * load of a day is held from below by its tangents, so it bounds every plan too.
 */
final class LinearBound {
    private static final int TANGENT_MINUTES = 25;
    /** Of docs/methods/planning.md. */
    private static final double LOAD = 20;

    private LinearBound() {}

    static double of(PlanProblem problem) {
        Loader.loadNativeLibraries();
        var solver = MPSolver.createSolver("GLOP");
        double endless = MPSolver.infinity();
        var objective = solver.objective();
        var stretches = new MPConstraint[problem.stretches().size()];
        for (int stretch = 0; stretch < stretches.length; stretch++) {
            stretches[stretch] = solver.makeConstraint(
                    -endless, problem.stretches().get(stretch).minutes());
        }
        var days = new MPConstraint[problem.days()];
        for (int day = 0; day < days.length; day++) {
            days[day] = solver.makeConstraint(0, 0);
            var laid = solver.makeNumVar(0, problem.roomOf(day), "");
            days[day].setCoefficient(laid, -1);
            objective.setCoefficient(load(solver, problem, day, laid), 1);
        }
        for (int visit = 0; visit < problem.visits().size(); visit++) {
            int minutes = problem.visits().get(visit).minutes();
            var whole = solver.makeConstraint(1, 1);
            var nowhere = solver.makeNumVar(0, 1, "");
            whole.setCoefficient(nowhere, 1);
            objective.setCoefficient(nowhere, (double) problem.cost(visit, PlanProblem.NOWHERE));
            for (int stretch : problem.allowed(visit)) {
                var part = solver.makeNumVar(0, 1, "");
                whole.setCoefficient(part, 1);
                stretches[stretch].setCoefficient(part, minutes);
                days[problem.dayOf(stretch)].setCoefficient(part, minutes);
                objective.setCoefficient(part, (double) problem.cost(visit, stretch));
            }
        }
        objective.setMinimization();
        if (solver.solve() != MPSolver.ResultStatus.OPTIMAL) {
            throw new IllegalStateException("no optimum of the relaxation");
        }
        return objective.value();
    }

    /** At least the cost of the load by its tangents, less one point for its rounding. */
    private static MPVariable load(MPSolver solver, PlanProblem problem, int day, MPVariable laid) {
        var cost = solver.makeNumVar(-1, MPSolver.infinity(), "");
        double kept = problem.keptOf(day);
        double all = problem.minutesOf(day);
        for (int at = 0; at < problem.roomOf(day); at += TANGENT_MINUTES) {
            double slope = 2 * LOAD * (kept + at) / all;
            double here = LOAD * (kept + at) * (kept + at) / all;
            var above = solver.makeConstraint(here - slope * at - 1, MPSolver.infinity());
            above.setCoefficient(cost, 1);
            above.setCoefficient(laid, -slope);
        }
        return cost;
    }
}
