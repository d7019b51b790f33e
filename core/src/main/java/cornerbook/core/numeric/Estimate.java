package cornerbook.core.numeric;

/** Mean and standard deviation of something Gaussian that is not known exactly; the unit is that of the thing. */
public record Estimate(double mean, double sd) {
    /** The same for what is left of something that cannot be less than nothing: the median of max(0, X), X as this. */
    public Estimate left() {
        return mean >= 0 ? this : new Estimate(0, sd);
    }

    /**
     * How much of this mean comes from data, 0 to 1, the rest from what was believed before them. Where both are normal,
     *
     * <pre>  mean after = (1 − B) · mean of the data + B · mean before,   B = variance after / variance before       (1)</pre>
     *
     * (the normal prior with normal data: Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, section 2.5; B is the
     * shrinkage factor of Efron and Morris 1973, J. Am. Stat. Assoc. 68:117; both from memory), and this is 1 − B: were
     * what was believed one unit higher, the mean after were B higher. Nothing where it is no narrower than before.
     *
     * @param before the same without the data; its standard deviation is above 0
     */
    public double shareOfData(Estimate before) {
        double ratio = sd / before.sd;
        return Math.clamp(1 - ratio * ratio, 0.0, 1.0);
    }

    /** Probability that it lies at or below a value. */
    public double probabilityBelow(double value) {
        return NormalDistribution.cumulative((value - mean) / sd);
    }
}
