package cornerbook.core.tread;

import cornerbook.core.corner.Spot;
import cornerbook.core.numeric.Estimate;
import cornerbook.core.numeric.GaussLegendre;
import cornerbook.core.numeric.NormalDistribution;
import cornerbook.core.season.DistancePerDay;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How a set will wear from now on, each tyre at its corner: effective depth ({@link TreadScale}) after K thousand km is
 * D − K · r. Distance K and the car's factor F ({@link CarFactor}) are log-normal, so that their product W is as well; given
 * F depths and rates are jointly Gaussian. The probability that every groove of every tyre is at or above a limit after some
 * days is
 *
 * <pre>
 *   P = ∫ φ(x) P(D_i − K r_i ≥ ψ_i(limit) for every groove i | W(x)) dx,   log W(x) = mean + x · s.d.    (1)
 *   log F | W ~ N(E log F + β x s.d., ρ²),   K = W/F,   β = V(log F)/V(log W),   ρ² = β V(log K)         (2)
 * </pre>
 *
 * A Gauss–Legendre rule of seven nodes takes the stretch on which the set goes from holding to failing; before it the set holds. Given W
 * all grooves of all tyres are taken together by {@link DepthsAhead}. Error of P below 0.003, as tests against sampling show.
 */
public final class SetOutlook {
    // Abramowitz and Stegun, table 25.10, n = 5: nodes for exp(−x²), here scaled to the standard normal.
    private static final double[] NODES = {0, 0.958572464613819 * Math.sqrt(2), 2.020182870456086 * Math.sqrt(2)};
    private static final double[] WEIGHTS = {
        0.945308720482942 / Math.sqrt(Math.PI),
        0.393619323152241 / Math.sqrt(Math.PI),
        0.019953242059046 / Math.sqrt(Math.PI)
    };
    /** log W is integrated over this many standard deviations each side; what lies beyond weighs 3e-4. */
    private static final double REACH = 3.6;

    /** The set holds for all but certain while its weakest groove is so many standard deviations above the limit ... */
    private static final double FOR_CERTAIN_ABOVE = 3.8;
    /** ... and hardly when it is so many below. */
    private static final double FOR_CERTAIN_BELOW = -2;

    private static final int HALVINGS = 12;
    private static final double THOUSAND = 1000;
    private static final double TOLERANCE_DAYS = 0.25;
    /** The search ends where the log odds are this close to those asked; the last step does the rest. */
    private static final double NEAR_ENOUGH = 0.05;

    private static final double OUTWARDS = 1.4;
    private static final double SLOPE_STEP = 0.02;
    private static final double LONG_STEP = 0.1;
    private static final double LEAST_FALL_PER_DAY = 1e-4;

    private final DepthsAhead ahead;

    SetOutlook(WearPosterior posterior, List<Placement> placements) {
        ahead = new DepthsAhead(posterior, placements);
    }

    /** Depth in one groove of the tyre at a place in the list after some km, known distance, mm. */
    public Estimate depth(Spot groove, int placement, double distanceKm) {
        return ahead.depth(placement, groove, distanceKm / THOUSAND);
    }

    /**
     * Equation (1).
     *
     * @param days from now, 0 or more
     * @param limitMm depth that every groove has to keep
     */
    public double probabilityHolds(double days, DistancePerDay distance, double limitMm) {
        return probabilityHolds(days, distance, ahead.limits(limitMm));
    }

    private double probabilityHolds(double days, DistancePerDay distance, double[] limits) {
        if (days * distance.meanKm() <= 0) {
            return ahead.probabilityAboveNow(limits);
        }
        var wear = new WearAhead(days, distance, limits);
        double from = wear.firstBelow(FOR_CERTAIN_ABOVE, -REACH);
        double to = wear.firstBelow(FOR_CERTAIN_BELOW, from);
        double probability = NormalDistribution.cumulative(from)
                * (from > -REACH ? 1 : wear.after(from).allAbove());
        probability += GaussLegendre.SEVEN.integral(
                from, to, x -> NormalDistribution.density(x) * wear.after(x).allAbove());
        return Math.clamp(probability, 0, 1);
    }

    /** Equation (2): how distance and the car's factor share what their product is. */
    private final class WearAhead {
        private final double[] limits;
        private final double logMean;
        private final double logSd;
        private final double factorShare;
        private final double leftVariance;

        WearAhead(double days, DistancePerDay distance, double[] limits) {
            this.limits = limits;
            double ofDistance = distance.logVariance();
            double ofFactor = ahead.logFactorVariance();
            logMean = distance.logMean() + Math.log(days / THOUSAND) + ahead.logFactorMean();
            double variance = ofDistance + ofFactor;
            logSd = Math.sqrt(variance);
            factorShare = ofFactor / variance;
            leftVariance = factorShare * ofDistance;
        }

        /** The grooves where log W is so many standard deviations off its mean. */
        DepthsAhead.After after(double x) {
            double logFactor = ahead.logFactorMean() + factorShare * x * logSd;
            double logDistance = logMean + x * logSd - logFactor;
            return ahead.new After(Math.exp(logDistance), Math.exp(logFactor), leftVariance, limits);
        }

        /** From where on the weakest groove's margin is below so many standard deviations. */
        double firstBelow(double deviations, double least) {
            if (after(least).anyBelow(deviations)) {
                return least;
            }
            double low = least;
            double high = REACH;
            if (!after(high).anyBelow(deviations)) {
                return high;
            }
            for (int halving = 0; halving < HALVINGS; halving++) {
                double middle = (low + high) / 2;
                if (after(middle).anyBelow(deviations)) {
                    high = middle;
                } else {
                    low = middle;
                }
            }
            return (low + high) / 2;
        }
    }

    /**
     * Days until the probability falls through the confidence; 0 when it is below it now, empty when it still stands at
     * {@code mostDays}. To half a day.
     */
    public OptionalDouble horizonDays(DistancePerDay distance, double limitMm, double confidence, double mostDays) {
        var limits = ahead.limits(limitMm);
        double asked = logOdds(confidence);
        double low = 0;
        double atLow = logOdds(ahead.probabilityAboveNow(limits)) - asked;
        if (atLow < 0) {
            return OptionalDouble.of(0);
        }
        double high = Double.NaN;
        double atHigh = Double.NaN;
        // The search goes by the quick probability: from a first guess outwards until the root is between two days,
        // then
        // by the secant, for the log odds are nearly straight in days, and by halves where that crawls.
        double days = Math.clamp(firstGuessDays(distance, limits), 1, mostDays);
        double at = logOdds(quickly(days, distance, limits)) - asked;
        for (int step = 1; Math.abs(at) > NEAR_ENOUGH && !(high - low < TOLERANCE_DAYS); step++) {
            if (at < 0) {
                high = days;
                atHigh = at;
            } else if (days >= mostDays) {
                return OptionalDouble.empty();
            } else {
                low = days;
                atLow = at;
            }
            if (Double.isNaN(high)) {
                days = Math.min(mostDays, low * OUTWARDS);
            } else {
                days = step % 4 == 0 ? (low + high) / 2 : secant(low, atLow, high, atHigh);
            }
            at = logOdds(quickly(days, distance, limits)) - asked;
        }
        // What the quick probability lacks where the search ended is made good by a step along its slope, and once more
        // along the exact one where that was long.
        double stepDays = Math.max(1, days * SLOPE_STEP);
        double fallPerDay = (at - logOdds(quickly(days + stepDays, distance, limits)) + asked) / stepDays;
        double over = logOdds(probabilityHolds(days, distance, limits)) - asked;
        double better = Math.clamp(days + over / Math.max(fallPerDay, LEAST_FALL_PER_DAY), 0, mostDays);
        if (Math.abs(over) > LONG_STEP && better > 0 && better < mostDays) {
            double stillOver = logOdds(probabilityHolds(better, distance, limits)) - asked;
            better = onwards(days, over, better, stillOver, mostDays);
        }
        return OptionalDouble.of(better);
    }

    /** Where the line through two points that need not lie on both sides is zero. */
    private static double onwards(double days, double over, double better, double stillOver, double mostDays) {
        double fall = (over - stillOver) / (better - days);
        return fall > 0 ? Math.clamp(better + stillOver / fall, 0, mostDays) : better;
    }

    /** Where the straight line between two points is zero, kept off both ends so that the bracket closes. */
    private static double secant(double low, double atLow, double high, double atHigh) {
        double nudgeDays = Math.min(0.4 * TOLERANCE_DAYS, (high - low) / 3);
        return Math.clamp(low + (high - low) * atLow / (atLow - atHigh), low + nudgeDays, high - nudgeDays);
    }

    /** When the first groove would reach the limit at mean rates with a margin of about one standard deviation. */
    private double firstGuessDays(DistancePerDay distance, double[] limits) {
        return ahead.firstAtLimitThousandKm(limits) * THOUSAND / Math.max(1, distance.meanKm() + distance.sdKm());
    }

    /**
     * As {@link #probabilityHolds}, some times faster and to about 0.01: the distance by a Gauss–Hermite rule of five
     * nodes.
     */
    private double quickly(double days, DistancePerDay distance, double[] limits) {
        if (days * distance.meanKm() <= 0) {
            return ahead.probabilityAboveNow(limits);
        }
        var wear = new WearAhead(days, distance, limits);
        double probability = WEIGHTS[0] * wear.after(0).roughlyAllAbove();
        for (int k = 1; k < NODES.length; k++) {
            probability += WEIGHTS[k]
                    * (wear.after(NODES[k]).roughlyAllAbove()
                            + wear.after(-NODES[k]).roughlyAllAbove());
        }
        return Math.clamp(probability, 0, 1);
    }

    private static double logOdds(double probability) {
        double p = Math.clamp(probability, 1e-12, 1 - 1e-12);
        return Math.log(p / (1 - p));
    }
}
