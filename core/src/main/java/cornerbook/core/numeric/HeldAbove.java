package cornerbook.core.numeric;

/**
 * A Gaussian vector of which some parts are known to lie at or above a floor: the Gaussian next to it. Found by expectation
 * propagation (Minka 2001, UAI 17:362): each part's condition is replaced by an observation of it such that its mean and
 * variance are those of {@link TruncatedNormal} given all the others.
 */
public final class HeldAbove {
    /** Change of a mean, in its standard deviations, below which the sweeps end. */
    private static final double SETTLED = 1e-6;

    private final int size;
    private final double[] mean;
    private final double[] covariance;
    private final int[] parts;
    private final double[] precision;
    private final double[] weight;

    /**
     * A vector measured from the floor.
     *
     * @param mean and {@code covariance}, row-major and symmetric, are changed in place
     * @param parts those that lie at or above 0
     */
    public HeldAbove(double[] mean, double[] covariance, int... parts) {
        size = mean.length;
        this.mean = mean;
        this.covariance = covariance;
        this.parts = parts;
        precision = new double[parts.length];
        weight = new double[parts.length];
    }

    /** Sweeps over all parts until nothing moves, but no more often than this. */
    public void settle(int mostSweeps) {
        double change = Double.POSITIVE_INFINITY;
        for (int sweep = 0; sweep < mostSweeps && change > SETTLED; sweep++) {
            change = 0;
            for (int k = 0; k < parts.length; k++) {
                change = Math.max(change, hold(k));
            }
        }
    }

    /** Makes one part's observation right given all others; how far its mean moved, in its standard deviations. */
    private double hold(int k) {
        int at = parts[k];
        double variance = covariance[at * size + at];
        double rest = 1 / variance - precision[k];
        if (!(rest > 0)) {
            return 0;
        }
        double restWeight = mean[at] / variance - weight[k];
        var asked = TruncatedNormal.above(new Estimate(restWeight / rest, 1 / Math.sqrt(rest)), 0);
        double askedPrecision = 1 / (asked.sd() * asked.sd());
        double more = Math.max(0, askedPrecision - rest) - precision[k];
        double moreWeight = askedPrecision * asked.mean() - restWeight - weight[k];
        double moved = Math.abs(asked.mean() - mean[at]) / asked.sd();
        precision[k] += more;
        weight[k] += moreWeight;
        observe(at, variance, more, moreWeight);
        return moved;
    }

    /** One more observation of a part: a change of rank one. */
    private void observe(int at, double variance, double more, double moreWeight) {
        double growth = 1 + more * variance;
        double step = (moreWeight - more * mean[at]) / growth;
        double shrink = more / growth;
        var column = new double[size];
        for (int i = 0; i < size; i++) {
            column[i] = covariance[i * size + at];
            mean[i] += step * column[i];
        }
        for (int i = 0; i < size; i++) {
            double factor = shrink * column[i];
            for (int j = 0; j < size; j++) {
                covariance[i * size + j] -= factor * column[j];
            }
        }
    }
}
