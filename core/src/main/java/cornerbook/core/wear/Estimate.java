package cornerbook.core.wear;

/** Mean and standard deviation of something Gaussian that is not known exactly; the unit is that of the thing. */
public record Estimate(double mean, double sd) {
    /** Probability that it lies at or below a value. */
    public double probabilityBelow(double value) {
        return NormalDistribution.cumulative((value - mean) / sd);
    }
}
