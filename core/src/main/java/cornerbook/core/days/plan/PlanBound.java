package cornerbook.core.days.plan;

import java.util.Arrays;

/**
 * A number of points that no plan goes below: the Lagrangian relaxation of the problem.
 *
 * <p>A price p ≥ 0 a minute is put on each stretch and q ≥ 0 on each day instead of their limits. What is left falls apart into one small
 * problem a visit and one a day, and for any prices its least cost is no more than that of the best plan (weak duality; Fisher, The
 * Lagrangian Relaxation Method for Solving Integer Programming Problems, Management Science 27 (1981), from memory):
 *
 * <pre>
 *   Σ over visits  min(unplaced, min over stretches s (cost + minutes · (p_s + q_day)))
 *   − Σ over stretches  p_s · minutes_s
 *   + Σ over days  min over 0 ≤ L ≤ room (load(kept + L) − q L)
 * </pre>
 *
 * <p>Prices are raised where too much is laid and lowered where too little (subgradient ascent with Polyak's step, smoothed). Its best is that of
 * the linear relaxation with convex load. The cost of load is counted without rounding, less one point a day, as plans count it rounded
 * down.
 */
public final class PlanBound {
    private static final int ROUNDS = 800;
    /** How much of each step is that of the round before, against zigzags. */
    private static final double KEPT = 0.7;

    private static final double LOAD = (double) PlanCost.LOAD;

    /** Rounds without a better bound until steps are halved. */
    private static final int PATIENCE = 12;

    private final PlanProblem problem;
    private final double[] ofStretch;
    private final double[] ofDay;
    private final double[] stretchSlope;
    private final double[] daySlope;
    private final int[][] allowed;
    private final double[][] costs;

    private PlanBound(PlanProblem problem) {
        this.problem = problem;
        ofStretch = new double[problem.stretches().size()];
        ofDay = new double[problem.days()];
        stretchSlope = new double[ofStretch.length];
        daySlope = new double[ofDay.length];
        Arrays.setAll(ofDay, this::fullPrice);
        allowed = new int[problem.visits().size()][];
        costs = new double[allowed.length][];
        for (int i = 0; i < allowed.length; i++) {
            int visit = i;
            allowed[visit] =
                    problem.allowed(visit).stream().mapToInt(Integer::intValue).toArray();
            costs[visit] = Arrays.stream(allowed[visit])
                    .mapToDouble(stretch -> (double) problem.cost(visit, stretch))
                    .toArray();
        }
    }

    /** What the last minute of a full day costs: where prices begin. */
    private double fullPrice(int day) {
        double all = problem.minutesOf(day);
        return all == 0 ? 0 : 2 * LOAD * (problem.keptOf(day) + problem.roomOf(day)) / all;
    }

    /**
     * The bound.
     *
     * @param best points of the best plan that is known, by which steps are measured
     */
    public static double of(PlanProblem problem, long best) {
        return new PlanBound(problem).climb(best);
    }

    private double climb(long best) {
        double highest = Double.NEGATIVE_INFINITY;
        var stretchWay = new double[ofStretch.length];
        var dayWay = new double[ofDay.length];
        double step = 1;
        int since = 0;
        for (int round = 0; round < ROUNDS; round++) {
            double bound = relaxed();
            if (bound > highest) {
                highest = bound;
                since = 0;
            } else if (++since > PATIENCE) {
                step /= 2;
                since = 0;
            }
            Arrays.setAll(stretchWay, each -> KEPT * stretchWay[each] + (1 - KEPT) * stretchSlope[each]);
            Arrays.setAll(dayWay, each -> KEPT * dayWay[each] + (1 - KEPT) * daySlope[each]);
            double square = square(stretchWay) + square(dayWay);
            double rise = (double) best - bound;
            if (square == 0 || rise <= 0) {
                break;
            }
            double by = step * rise / square;
            for (int stretch = 0; stretch < ofStretch.length; stretch++) {
                ofStretch[stretch] = Math.max(0, ofStretch[stretch] + by * stretchWay[stretch]);
            }
            for (int day = 0; day < ofDay.length; day++) {
                ofDay[day] = Math.max(0, ofDay[day] + by * dayWay[day]);
            }
        }
        return highest;
    }

    /** The least cost with these prices; the slopes are by how much each place is overfull at it. */
    private double relaxed() {
        Arrays.setAll(stretchSlope, stretch -> -problem.stretches().get(stretch).minutes());
        Arrays.fill(daySlope, 0);
        double sum = 0;
        for (int visit = 0; visit < allowed.length; visit++) {
            int minutes = problem.visits().get(visit).minutes();
            int at = PlanProblem.NOWHERE;
            double least = (double) problem.cost(visit, at);
            for (int i = 0; i < allowed[visit].length; i++) {
                int stretch = allowed[visit][i];
                double price = costs[visit][i] + minutes * (ofStretch[stretch] + ofDay[problem.dayOf(stretch)]);
                if (price < least) {
                    least = price;
                    at = stretch;
                }
            }
            sum += least;
            if (at != PlanProblem.NOWHERE) {
                stretchSlope[at] += minutes;
                daySlope[problem.dayOf(at)] += minutes;
            }
        }
        for (int stretch = 0; stretch < ofStretch.length; stretch++) {
            sum -= ofStretch[stretch] * problem.stretches().get(stretch).minutes();
        }
        for (int day = 0; day < ofDay.length; day++) {
            sum += ofDay(day);
        }
        return sum;
    }

    private double ofDay(int day) {
        double kept = problem.keptOf(day);
        double all = problem.minutesOf(day);
        double laid = Math.clamp(ofDay[day] * all / (2 * LOAD) - kept, 0, problem.roomOf(day));
        daySlope[day] -= laid;
        double load = all == 0 ? 0 : LOAD * (kept + laid) * (kept + laid) / all;
        return load - ofDay[day] * laid - 1;
    }

    private static double square(double[] slopes) {
        return Arrays.stream(slopes).map(each -> each * each).sum();
    }
}
