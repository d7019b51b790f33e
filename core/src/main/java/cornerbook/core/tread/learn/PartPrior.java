package cornerbook.core.tread.learn;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.tread.WearParameter;
import cornerbook.core.tread.WearParameters;

/**
 * The prior of the rates in a {@link GroovePart}, relative to the corners' means: with u its loads of the length √q, û their
 * direction, K its values and C the four corners, w_kc has the mean u_k and the covariance
 *
 * <pre>  ω_u² uuᵀ ⊗ 11ᵀ + ω_v² uuᵀ ⊗ I + ω_g² I                                                       (1)</pre>
 *
 * whose eigenvalues are three, so that its inverse, determinant and slopes are closed:
 *
 * <pre>
 *   v₁ = ω_g², 4 (K − 1) times, across û,   v₂ = ω_g² + q ω_v², 3 times, along û, corners against each other
 *   v₃ = ω_g² + q ω_v² + 4q ω_u², once, along û, all corners together                                    (2)
 *   ∂ log p / ∂ log ω = Σ_j ½ (∂v_j / ∂ log ω) (Q_j/v_j − n_j)/v_j                                       (3)
 * </pre>
 *
 * with Q_j the expected square of what lies in the j-th space and n_j its dimensions.
 */
final class PartPrior {
    static final int CORNERS = Corner.values().length;

    private final GroovePart part;
    private final double car;
    private final double corner;
    private final double groove;
    private final double across;
    private final double along;
    private final double together;
    /** Inverse of (1), row-major, values before corners. */
    private final double[] precision;

    private final double logDeterminant;

    PartPrior(GroovePart part, WearParameters parameters) {
        this.part = part;
        car = square(parameters.vehicleSpread());
        corner = square(parameters.of(WearParameter.CORNER_SPREAD));
        groove = square(parameters.of(WearParameter.GROOVE_SPREAD));
        across = groove;
        along = groove + part.square() * corner;
        together = along + CORNERS * part.square() * car;
        logDeterminant =
                -CORNERS * (part.size() - 1) * Math.log(across) - (CORNERS - 1) * Math.log(along) - Math.log(together);
        int rates = rates();
        precision = new double[rates * rates];
        for (int i = 0; i < rates; i++) {
            for (int j = 0; j < rates; j++) {
                double direction = part.direction(i / CORNERS) * part.direction(j / CORNERS);
                double element = direction * (1 / together - 1 / along) / CORNERS;
                if (i % CORNERS == j % CORNERS) {
                    element += direction / along + ((i == j ? 1 : 0) - direction) / across;
                }
                precision[i * rates + j] = element;
            }
        }
    }

    int rates() {
        return part.size() * CORNERS;
    }

    double precision(int rate, int other) {
        return precision[rate * rates() + other];
    }

    double mean(int rate) {
        return part.load(rate / CORNERS);
    }

    /** Row of the precision times the means. */
    double weightedMean(int rate) {
        return mean(rate) / together;
    }

    /** Means times precision times means. */
    double squaredMean() {
        return CORNERS * part.square() / together;
    }

    /** Logarithm of the determinant of the precision. */
    double logDeterminant() {
        return logDeterminant;
    }

    /**
     * Adds (3), and the slopes in the logarithms of the axles' mean rates.
     *
     * @param copies how many times the part is there
     * @param off expected products of what the rates lie off their means, summed over the copies, row-major, lower triangle
     * @param towards means of what they lie off, summed over the copies
     * @param slope by {@link WearParameter}
     */
    void addSlope(int copies, double[] off, double[] towards, double[] slope) {
        int rates = rates();
        double all = 0;
        double ofCorners = 0;
        double ofDirection = 0;
        for (int i = 0; i < rates; i++) {
            double weighted = 0;
            for (int j = 0; j < rates; j++) {
                double product = j <= i ? off[i * rates + j] : off[j * rates + i];
                double direction = part.direction(i / CORNERS) * part.direction(j / CORNERS) * product;
                weighted += precision[i * rates + j] * (product + mean(i) * towards[j]);
                ofDirection += direction;
                ofCorners += i % CORNERS == j % CORNERS ? direction : 0;
            }
            all += off[i * rates + i];
            slope[rateOf(i).ordinal()] += weighted - copies;
        }
        double squareTogether = ofDirection / CORNERS;
        double ofAcross = pull(across, all - ofCorners, copies * CORNERS * (part.size() - 1));
        double ofAlong = pull(along, ofCorners - squareTogether, copies * (CORNERS - 1));
        double ofTogether = pull(together, squareTogether, copies);
        slope[WearParameter.GROOVE_SPREAD.ordinal()] += groove * (ofAcross + ofAlong + ofTogether);
        slope[WearParameter.CORNER_SPREAD.ordinal()] += part.square() * corner * (ofAlong + ofTogether);
        slope[WearParameter.VEHICLE_SPREAD.ordinal()] += CORNERS * part.square() * car * ofTogether;
    }

    /** (Q/v − n)/v of (3). */
    private static double pull(double variance, double square, int dimensions) {
        return (square / variance - dimensions) / variance;
    }

    private static WearParameter rateOf(int rate) {
        return Corner.values()[rate % CORNERS].axle() == Axle.FRONT
                ? WearParameter.FRONT_RATE
                : WearParameter.REAR_RATE;
    }

    private static double square(double value) {
        return value * value;
    }
}
