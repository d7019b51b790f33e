package cornerbook.core.wheelplan.search;

import cornerbook.core.say.Said;
import cornerbook.core.wheelplan.Gain;
import cornerbook.core.wheelplan.Gain.Interval;
import cornerbook.core.wheelplan.PlanRequest;
import cornerbook.core.wheelplan.WearScenario;
import cornerbook.core.wheelplan.search.PlanSearch.Sequence;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Compares the best plan with fixed ways of moving the wheels, at the mean and over scenarios. */
final class Gains {
    private static final double THOUSAND = 1000;
    private static final double TAIL = 0.05;

    private final SetNumbers mean;
    private final List<SetNumbers> scenarios;
    private final Sequence best;

    Gains(PlanRequest request, Sequence best, List<WearScenario> scenarios) {
        mean = new SetNumbers(request);
        this.scenarios = scenarios.stream()
                .map(scenario -> new SetNumbers(scenario.applyTo(request)))
                .toList();
        this.best = best;
    }

    Gain over(Said way, List<Integer> other) {
        double otherKm = THOUSAND * SequenceDrive.of(mean, other).thousandKm();
        return new Gain(way, otherKm, THOUSAND * best.thousandKm() - otherKm, interval(other));
    }

    private @Nullable Interval interval(List<Integer> other) {
        if (scenarios.isEmpty()) {
            return null;
        }
        double[] gainsKm = scenarios.stream()
                .mapToDouble(scenario -> THOUSAND
                        * (SequenceDrive.of(scenario, best.assignments()).thousandKm()
                                - SequenceDrive.of(scenario, other).thousandKm()))
                .sorted()
                .toArray();
        return new Interval(
                quantile(gainsKm, TAIL), quantile(gainsKm, 0.5), quantile(gainsKm, 1 - TAIL), gainsKm.length);
    }

    /** Linear between the order statistics, the first at 0 and the last at 1. */
    private static double quantile(double[] sorted, double share) {
        double at = share * (sorted.length - 1);
        int below = (int) at;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
    }
}
