package cornerbook.bench.wheelplan;

import cornerbook.core.wheelplan.PlanRequest;
import cornerbook.core.wheelplan.search.WheelPlanner;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * How long plans take, request by request: invented requests of any kind, rules on depth switched on in most, each planned
 * several times warm and its shortest time kept, so that what remains is the request's own. Arguments: seasons, requests,
 * seed.
 */
public final class PlanTimes {
    private static final int WARM_UP = 3;
    private static final int TIMES = 5;
    private static final double NS_PER_MS = 1e6;

    private PlanTimes() {}

    /** Prints the quantiles of the times. */
    public static void main(String[] arguments) {
        int seasons = Integer.parseInt(arguments[0]);
        int count = Integer.parseInt(arguments[1]);
        var random = new SplittableRandom(Long.parseLong(arguments[2]));
        var requests = new ArrayList<PlanRequest>();
        for (int i = 0; i < count; i++) {
            requests.add(Requests.any(random, seasons));
        }
        for (int n = 0; n < WARM_UP; n++) {
            requests.forEach(PlanTimes::nanoseconds);
        }
        double[] ms = requests.stream()
                .mapToDouble(request -> shortest(request) / NS_PER_MS)
                .sorted()
                .toArray();
        System.out.printf(
                Locale.ROOT,
                "%d requests, %d seasons: mean %.2f, median %.2f, 90 %% %.2f, 99 %% %.2f, 99.9 %% %.2f, longest %.2f ms%n",
                count,
                seasons,
                Arrays.stream(ms).average().orElseThrow(),
                quantile(ms, 0.5),
                quantile(ms, 0.9),
                quantile(ms, 0.99),
                quantile(ms, 0.999),
                ms[count - 1]);
    }

    private static long shortest(PlanRequest request) {
        long shortest = Long.MAX_VALUE;
        for (int n = 0; n < TIMES; n++) {
            shortest = Math.min(shortest, nanoseconds(request));
        }
        return shortest;
    }

    private static long nanoseconds(PlanRequest request) {
        long from = System.nanoTime();
        WheelPlanner.plan(request, List.of(), List.of());
        return System.nanoTime() - from;
    }

    private static double quantile(double[] sorted, double share) {
        return sorted[(int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
    }
}
