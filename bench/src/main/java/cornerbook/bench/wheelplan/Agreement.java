package cornerbook.bench.wheelplan;

import cornerbook.core.wheelplan.PlanRequest;
import cornerbook.core.wheelplan.SeasonPlan;
import cornerbook.core.wheelplan.WheelPlan;
import cornerbook.core.wheelplan.search.WheelPlanner;
import java.util.List;

/**
 * The planner's answer to one request beside the solver's, all three levels.
 *
 * @param planned whether there is a plan over all the seasons, by both
 * @param distanceKm planner's less solver's
 * @param spreadMm planner's less solver's
 * @param moves planner's less solver's
 * @param agrees as far as the bands of the levels and the solver's whole metres allow
 */
record Agreement(boolean planned, double distanceKm, double spreadMm, long moves, boolean agrees) {
    /** The solver counts whole metres, and the planner may stop 1 km short of the longest to even out the wheels. */
    private static final double SAME_KM = 0.002;

    private static final double NEAR_KM = 1;
    private static final double SAME_MM = 1e-5;
    private static final double NEAR_MM = 0.01;

    static Agreement of(PlanRequest request) {
        int seasons = request.seasonsThousandKm().size();
        var plan = WheelPlanner.plan(request, List.of(), List.of()).filter(found -> found.seasonsPlanned() == seasons);
        var solved = SolverPlan.best(request);
        if (plan.isEmpty() || solved.isEmpty()) {
            return new Agreement(plan.isPresent(), 0, 0, 0, plan.isEmpty() && solved.isEmpty());
        }
        return of(plan.get(), solved.get());
    }

    private static Agreement of(WheelPlan plan, SolverPlan solved) {
        double distanceKm = plan.distanceKm() - solved.distanceKm();
        double spreadMm = plan.spreadMm() - solved.spreadMm();
        long moves = plan.seasons().stream().mapToLong(SeasonPlan::moves).sum() - solved.moves();
        boolean agrees = distanceKm >= -NEAR_KM - SAME_KM
                && distanceKm <= SAME_KM
                && spreadMm >= -SAME_MM
                && spreadMm <= NEAR_MM + SAME_MM
                && moves == 0;
        return new Agreement(true, distanceKm, spreadMm, moves, agrees);
    }
}
