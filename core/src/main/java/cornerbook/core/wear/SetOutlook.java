package cornerbook.core.wear;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How a set will wear from now on, each tyre at its corner: depth after K thousand km is D − K · r, with D and r jointly
 * Gaussian. The probability that every groove of every tyre is at or above a limit after some days is
 *
 * <pre>  P = ∫ φ(x) Π_grooves P(D_i − K(x) r_i ≥ limit for every tyre i) dx,   K(x) = max(0, mean + x · s.d.)    (1)</pre>
 *
 * over the distance, which is Gaussian and cut off at 0 km. The trapezoidal rule takes it, with steps that follow how
 * sharply the set goes from holding to failing. Grooves are independent given the distance, as the model has it; the
 * tyres of one groove share the car's factor and are taken together by {@link JointProbability}. Error of P below
 * 0.003, as tests against R's mvtnorm and sampling show.
 */
public final class SetOutlook {
    // Abramowitz and Stegun, table 25.10, n = 7: nodes for exp(−x²), here scaled to the standard normal.
    private static final double[] NODES = {
        0, 0.816287882858965 * Math.sqrt(2), 1.673551628767471 * Math.sqrt(2), 2.651961356835233 * Math.sqrt(2)
    };
    private static final double[] WEIGHTS = {
        0.810264617556807 / Math.sqrt(Math.PI),
        0.425607252610128 / Math.sqrt(Math.PI),
        0.054515582819127 / Math.sqrt(Math.PI),
        9.71781245099519e-4 / Math.sqrt(Math.PI)
    };
    /** The distance is integrated over this many standard deviations each side; what lies beyond weighs 7e-6. */
    private static final double REACH = 4.5;

    private static final double NEGLIGIBLE = 1e-5;
    private static final double WIDEST_STEP = 0.6;
    private static final double NARROWEST_STEP = 0.06;
    /** Steps as wide as this times the transition's standard deviation leave an error below 2e-4. */
    private static final double STEP_PER_WIDTH = 1.5;

    private static final double THOUSAND = 1000;
    private static final double TOLERANCE_DAYS = 0.25;

    private final GrooveOutlook[] grooves = new GrooveOutlook[Spot.values().length];

    SetOutlook(WearPosterior posterior, List<Placement> placements) {
        int unknowns = posterior.tyres() + Corner.values().length;
        var weights = new double[placements.size()][unknowns];
        var rates = new int[placements.size()];
        for (int i = 0; i < placements.size(); i++) {
            posterior.weigh(placements.get(i).tyre(), placements.get(i).run(), weights[i]);
            rates[i] = posterior.tyres() + placements.get(i).corner().ordinal();
        }
        for (var spot : Spot.values()) {
            int g = spot.ordinal();
            var groove = posterior.groove(spot);
            boolean shared = g > 0
                    && groove.factor() == posterior.groove(Spot.values()[g - 1]).factor();
            grooves[g] = shared
                    ? grooves[g - 1].withMeansOf(posterior, groove, weights, rates)
                    : GrooveOutlook.of(posterior, groove, weights, rates);
        }
    }

    /** Depth in one groove of the tyre at a place in the list after some km, known distance, mm. */
    public Estimate depth(Spot groove, int placement, double distanceKm) {
        return grooves[groove.ordinal()].depth(placement, distanceKm / THOUSAND);
    }

    /**
     * Equation (1).
     *
     * @param days from now, 0 or more
     * @param limitMm depth that every groove has to keep
     */
    public double probabilityHolds(double days, DistancePerDay distance, double limitMm) {
        double meanThousandKm = distance.meanKm() * days / THOUSAND;
        double sdThousandKm = distance.sdKm() * days / THOUSAND;
        if (sdThousandKm <= 0) {
            return allGrooves(meanThousandKm, limitMm);
        }
        int steps = (int) Math.ceil(REACH / stepOverDistance(meanThousandKm, sdThousandKm, limitMm));
        double step = REACH / steps;
        double probability = 0;
        for (int k = -steps; k <= steps; k++) {
            double x = k * step;
            double at = allGrooves(Math.max(0, meanThousandKm + x * sdThousandKm), limitMm);
            probability += step * NormalDistribution.density(x) * at;
            if (at < NEGLIGIBLE) {
                break;
            }
        }
        return Math.clamp(probability, 0, 1);
    }

    /**
     * Days until the probability falls through the confidence; 0 when it is below it now, empty when it still stands at
     * {@code mostDays}. To half a day where the set is judged exactly, see {@link #quickly}.
     */
    public OptionalDouble horizonDays(DistancePerDay distance, double limitMm, double confidence, double mostDays) {
        var near = quickHorizonDays(distance, limitMm, confidence, mostDays);
        if (near.isEmpty() || near.getAsDouble() == 0) {
            return near;
        }
        // One step of the secant rule makes good what the quick search lacks.
        double days = near.getAsDouble();
        double stepDays = Math.max(1, days / 50);
        double fallPerDay =
                (logOdds(quickly(days, distance, limitMm)) - logOdds(quickly(days + stepDays, distance, limitMm)))
                        / stepDays;
        double over = logOdds(probabilityHolds(days, distance, limitMm)) - logOdds(confidence);
        return OptionalDouble.of(fallPerDay > 0 ? Math.clamp(days + over / fallPerDay, 0, mostDays) : days);
    }

    private OptionalDouble quickHorizonDays(
            DistancePerDay distance, double limitMm, double confidence, double mostDays) {
        double low = 0;
        double atLow = logOdds(quickly(0, distance, limitMm)) - logOdds(confidence);
        if (atLow < 0) {
            return OptionalDouble.of(0);
        }
        double high = mostDays;
        double atHigh = logOdds(quickly(high, distance, limitMm)) - logOdds(confidence);
        if (atHigh >= 0) {
            return OptionalDouble.empty();
        }
        // Regula falsi with the Illinois rule on the log odds, which are nearly straight in days; bisection where it
        // crawls.
        double middle = Math.clamp(firstGuessDays(distance, limitMm), low, high);
        int sideKept = 0;
        for (int step = 1; high - low > TOLERANCE_DAYS; step++) {
            double atMiddle = logOdds(quickly(middle, distance, limitMm)) - logOdds(confidence);
            if (atMiddle >= 0) {
                low = middle;
                atLow = atMiddle;
                atHigh = sideKept > 0 ? atHigh / 2 : atHigh;
                sideKept = 1;
            } else {
                high = middle;
                atHigh = atMiddle;
                atLow = sideKept < 0 ? atLow / 2 : atLow;
                sideKept = -1;
            }
            double nudgeDays = 0.4 * TOLERANCE_DAYS;
            middle = step % 5 == 0
                    ? (low + high) / 2
                    : Math.clamp(
                            low + (high - low) * atLow / (atLow - atHigh),
                            low + nudgeDays,
                            Math.max(low + nudgeDays, high - nudgeDays));
        }
        return OptionalDouble.of(low);
    }

    /** When the first groove would reach the limit at mean rates with a margin of about one standard deviation. */
    private double firstGuessDays(DistancePerDay distance, double limitMm) {
        double thousandKm = Double.POSITIVE_INFINITY;
        for (var groove : grooves) {
            thousandKm = Math.min(thousandKm, groove.firstAtLimitThousandKm(limitMm));
        }
        return thousandKm * THOUSAND / Math.max(1, distance.meanKm() + distance.sdKm());
    }

    /** In standard deviations of the distance: fine enough for the groove that goes most sharply among those at stake. */
    private double stepOverDistance(double meanThousandKm, double sdThousandKm, double limitMm) {
        double narrowest = WIDEST_STEP / STEP_PER_WIDTH;
        for (var groove : grooves) {
            narrowest = Math.min(narrowest, groove.narrowestTransition(meanThousandKm, sdThousandKm, limitMm, REACH));
        }
        return Math.max(NARROWEST_STEP, STEP_PER_WIDTH * narrowest);
    }

    private double allGrooves(double thousandKm, double limitMm) {
        double probability = 1;
        for (int g = 0; g < grooves.length && probability > 0; g++) {
            probability *= grooves[g].probabilityAbove(thousandKm, limitMm);
        }
        return probability;
    }

    /**
     * As {@link #probabilityHolds}, some times faster and to about 0.02: the distance by a Gauss–Hermite rule of seven
     * nodes, the tyres by conditioning on one after the other with the first two moments of the truncated rest, weakest
     * first (Mendell and Elston 1974, Biometrics 30:41).
     */
    private double quickly(double days, DistancePerDay distance, double limitMm) {
        double meanThousandKm = distance.meanKm() * days / THOUSAND;
        double sdThousandKm = distance.sdKm() * days / THOUSAND;
        double probability = WEIGHTS[0] * quicklyAt(meanThousandKm, limitMm);
        for (int k = 1; k < NODES.length; k++) {
            double offset = NODES[k] * sdThousandKm;
            probability += WEIGHTS[k]
                    * (quicklyAt(meanThousandKm + offset, limitMm)
                            + quicklyAt(Math.max(0, meanThousandKm - offset), limitMm));
        }
        return Math.clamp(probability, 0, 1);
    }

    private double quicklyAt(double thousandKm, double limitMm) {
        double probability = 1;
        for (int g = 0; g < grooves.length && probability > 0; g++) {
            probability *= grooves[g].quickProbabilityAbove(thousandKm, limitMm);
        }
        return probability;
    }

    private static double logOdds(double probability) {
        double p = Math.clamp(probability, 1e-12, 1 - 1e-12);
        return Math.log(p / (1 - p));
    }
}
