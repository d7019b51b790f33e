package cornerbook.bench.wheelplan;

import cornerbook.core.wheelplan.search.WheelPlanner;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * The planner and the general-purpose solver on the same requests in one run, each to the proven optimum of the distance;
 * the planner finds spread and moves besides. Prints medians, and fails when a distance differs by more than 2 m.
 */
public final class SideBySide {
    private static final double SAME_KM = 0.002;
    private static final int WARM_UP = 200;

    private SideBySide() {}

    /** Arguments: seasons, requests, seed. */
    public static void main(String[] arguments) {
        int seasons = Integer.parseInt(arguments[0]);
        int requests = Integer.parseInt(arguments[1]);
        long seed = Long.parseLong(arguments[2]);
        var random = new SplittableRandom(seed);
        for (int i = 0; i < WARM_UP; i++) {
            WheelPlanner.plan(Requests.free(random, seasons), List.of(), List.of());
        }
        var plannerMs = new double[requests];
        var solverMs = new double[requests];
        for (int i = 0; i < requests; i++) {
            var request = Requests.free(random, seasons);
            long start = System.nanoTime();
            var plan = WheelPlanner.plan(request, List.of(), List.of()).orElseThrow();
            plannerMs[i] = (System.nanoTime() - start) / 1e6;
            start = System.nanoTime();
            double solverKm = SolverPlan.distanceKm(request).orElseThrow();
            solverMs[i] = (System.nanoTime() - start) / 1e6;
            if (plan.distanceKm() > solverKm + SAME_KM || plan.distanceKm() < solverKm - 1 - SAME_KM) {
                throw new IllegalStateException(
                        "planner %s km, solver %s km for %s".formatted(plan.distanceKm(), solverKm, request));
            }
        }
        Arrays.sort(plannerMs);
        Arrays.sort(solverMs);
        System.out.printf(
                "%d seasons, %d requests: planner median %.3f ms, greatest %.3f ms; solver median %.1f ms, greatest %.1f ms;"
                        + " ratio of the medians %.0f%n",
                seasons,
                requests,
                plannerMs[requests / 2],
                plannerMs[requests - 1],
                solverMs[requests / 2],
                solverMs[requests - 1],
                solverMs[requests / 2] / plannerMs[requests / 2]);
    }
}
