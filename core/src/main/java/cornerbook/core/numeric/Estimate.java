package cornerbook.core.numeric;

/** Mean and standard deviation of something Gaussian that is not known exactly; the unit is that of the thing. */
public record Estimate(double mean, double sd) {
    /** The same for what is left of something that cannot be less than nothing: the median of max(0, X), X as this. */
    public Estimate left() {
        return mean >= 0 ? this : new Estimate(0, sd);
    }

    /** Probability that it lies at or below a value. */
    public double probabilityBelow(double value) {
        return NormalDistribution.cumulative((value - mean) / sd);
    }
}
