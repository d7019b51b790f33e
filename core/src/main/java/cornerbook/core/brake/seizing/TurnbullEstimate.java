package cornerbook.core.brake.seizing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Turnbull's non-parametric estimate of a distribution from censored times: the probability of each innermost interval,
 * by self-consistency, p_j ← (1/n) Σ_i α_ij p_j / Σ_k α_ik p_k, until no probability moves by more than 1e-12. Within an
 * innermost interval the data cannot tell where the probability lies. It is the check on the Weibull shape: no shape is
 * assumed. Source: Turnbull, Journal of the Royal Statistical Society B 38 (1976), 290–295.
 *
 * @param steps the innermost intervals that carry probability, earliest first
 */
public record TurnbullEstimate(List<Step> steps) {
    private static final int MOST_ROUNDS = 100_000;
    private static final double SETTLED = 1e-12;

    /**
     * One innermost interval.
     *
     * @param after its open start; equal to {@code by} for a time that is known exactly
     * @param by its closed end; infinite for what is left at the end
     */
    public record Step(double after, double by, double probability) {}

    public TurnbullEstimate {
        steps = List.copyOf(steps);
    }

    /**
     * The estimate.
     *
     * @throws IllegalArgumentException when there is no time
     */
    public static TurnbullEstimate of(List<CensoredTime> times) {
        if (times.isEmpty()) {
            throw new IllegalArgumentException("no times, expected at least one");
        }
        var intervals = innermost(times);
        var first = new int[times.size()];
        var last = new int[times.size()];
        for (int i = 0; i < times.size(); i++) {
            var time = times.get(i);
            first[i] = 0;
            while (!holds(time, intervals.get(first[i]))) {
                first[i]++;
            }
            last[i] = first[i];
            while (last[i] + 1 < intervals.size() && holds(time, intervals.get(last[i] + 1))) {
                last[i]++;
            }
        }
        var probability = selfConsistent(first, last, intervals.size());
        var steps = new ArrayList<Step>();
        for (int j = 0; j < intervals.size(); j++) {
            var interval = intervals.get(j);
            steps.add(new Step(interval.after(), interval.by(), probability[j]));
        }
        return new TurnbullEstimate(steps);
    }

    /** Probability of lasting beyond {@code time}, as far as the data tell: within a step, its value at the step's end. */
    public double survivalAfter(double time) {
        return steps.stream()
                .filter(step -> step.by() > time && !(step.after() < time))
                .mapToDouble(Step::probability)
                .sum();
    }

    private static double[] selfConsistent(int[] first, int[] last, int size) {
        var probability = new double[size];
        Arrays.fill(probability, 1.0 / size);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            var next = new double[size];
            for (int i = 0; i < first.length; i++) {
                double total = 0;
                for (int j = first[i]; j <= last[i]; j++) {
                    total += probability[j];
                }
                for (int j = first[i]; j <= last[i]; j++) {
                    next[j] += probability[j] / total / first.length;
                }
            }
            double moved = 0;
            for (int j = 0; j < size; j++) {
                moved = Math.max(moved, Math.abs(next[j] - probability[j]));
            }
            probability = next;
            if (moved < SETTLED) {
                break;
            }
        }
        return probability;
    }

    private static boolean holds(CensoredTime time, CensoredTime interval) {
        return interval.isExact()
                ? time.isExact()
                        ? time.by() == interval.by()
                        : time.after() < interval.by() && interval.by() <= time.by()
                : time.after() <= interval.after() && interval.by() <= time.by() && !time.isExact();
    }

    /** An end of an interval; at equal times an exact start comes before an end, and an end before an open start. */
    private record End(double time, int order) {
        private static final int EXACT_START = 0;
        private static final int CLOSE = 1;
        private static final int OPEN_START = 2;
    }

    /** The intervals from a start to the end that follows it next. */
    private static List<CensoredTime> innermost(List<CensoredTime> times) {
        var ends = new ArrayList<End>();
        for (var time : times) {
            ends.add(new End(time.after(), time.isExact() ? End.EXACT_START : End.OPEN_START));
            ends.add(new End(time.by(), End.CLOSE));
        }
        ends.sort(Comparator.comparingDouble(End::time).thenComparingInt(End::order));
        var intervals = new ArrayList<CensoredTime>();
        for (int e = 1; e < ends.size(); e++) {
            if (ends.get(e).order() == End.CLOSE && ends.get(e - 1).order() != End.CLOSE) {
                intervals.add(
                        CensoredTime.between(ends.get(e - 1).time(), ends.get(e).time()));
            }
        }
        return intervals;
    }
}
