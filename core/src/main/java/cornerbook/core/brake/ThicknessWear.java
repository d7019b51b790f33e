package cornerbook.core.brake;

import cornerbook.core.numeric.Estimate;
import cornerbook.core.numeric.TruncatedNormal;
import cornerbook.core.season.DistancePerDay;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Wear of one pad or one disc: y = d − a r + e, e ~ N(0, σ²), d ~ N(new, s_d²), r ~ N(m, s_r²), a the distance since new in
 * thousand km. Everything is Gaussian, so with W = 1/σ²
 *
 * <pre>
 *   A = [1/s_d² + nW, −W Σa; −W Σa, 1/s_r² + W Σa²],   A · (d, r) = (new/s_d² + W Σy, m/s_r² − W Σa y)          (1)
 * </pre>
 *
 * It is the corner-rate model of tread (docs/methods/wear.md) with one part that stays where it is. Pads and discs do not
 * grow: where the posterior of r comes nearer to nothing than its standard deviation, as by a slip of the pen, it is
 * conditioned on a rate of {@link #LEAST_MM_PER_1000_KM} or more, and d goes along with r; the priors come nearly so near, and
 * stay as they are. Assumes wear linear in distance. Accurate to 1e-12 relative, conditioned to 1e-8.
 */
public final class ThicknessWear {
    /** One millimetre in ten million km: less than any part wears. Common practice, no source. */
    static final double LEAST_MM_PER_1000_KM = 1e-4;

    private final Estimate whenNew;
    private final Estimate rate;
    private final double covariance;
    private final double ownShareOfRate;

    private ThicknessWear(Estimate whenNew, Estimate rate, double covariance, double ownShareOfRate) {
        this.whenNew = whenNew;
        this.rate = rate;
        this.covariance = covariance;
        this.ownShareOfRate = ownShareOfRate;
    }

    /** The posterior; without readings it is the prior. */
    public static ThicknessWear of(WearPrior prior, List<WearReading> readings) {
        double weight = 1 / (prior.readingSdMm() * prior.readingSdMm());
        double newPrecision = 1 / (prior.newSdMm() * prior.newSdMm());
        double ratePrecision = 1 / (prior.rateSdMmPer1000Km() * prior.rateSdMmPer1000Km());
        double ofNew = newPrecision;
        double ofRate = ratePrecision;
        double ofBoth = 0;
        double rightNew = newPrecision * prior.newMm();
        double rightRate = ratePrecision * prior.rateMmPer1000Km();
        for (var reading : readings) {
            double run = reading.run1000Km();
            ofNew += weight;
            ofBoth -= weight * run;
            ofRate += weight * run * run;
            rightNew += weight * reading.thicknessMm();
            rightRate -= weight * run * reading.thicknessMm();
        }
        double determinant = ofNew * ofRate - ofBoth * ofBoth;
        var rate = new Estimate((ofNew * rightRate - ofBoth * rightNew) / determinant, Math.sqrt(ofNew / determinant));
        return new ThicknessWear(
                        new Estimate(
                                (ofRate * rightNew - ofBoth * rightRate) / determinant,
                                Math.sqrt(ofRate / determinant)),
                        rate,
                        -ofBoth / determinant,
                        rate.shareOfData(new Estimate(prior.rateMmPer1000Km(), prior.rateSdMmPer1000Km())))
                .wearing();
    }

    /** The Gaussian with mean and covariance of this one cut off below the least rate; this one where little is cut off. */
    private ThicknessWear wearing() {
        if (rate.mean() - LEAST_MM_PER_1000_KM >= rate.sd()) {
            return this;
        }
        var held = TruncatedNormal.above(rate, LEAST_MM_PER_1000_KM);
        double slope = covariance / variance(rate);
        double variance = variance(whenNew) - slope * slope * (variance(rate) - variance(held));
        return new ThicknessWear(
                new Estimate(whenNew.mean() + slope * (held.mean() - rate.mean()), Math.sqrt(variance)),
                held,
                slope * variance(held),
                ownShareOfRate);
    }

    /** Thickness when new, mm. */
    public Estimate whenNew() {
        return whenNew;
    }

    /** Wear rate, mm per 1000 km; its mean is above 0. */
    public Estimate rate() {
        return rate;
    }

    /**
     * How much of the rate comes from the readings, 0 to 1, the rest from what was believed before them: {@link
     * Estimate#shareOfData} of (1), before it is conditioned.
     */
    public double ownShareOfRate() {
        return ownShareOfRate;
    }

    /** Covariance of the two. */
    public double covariance() {
        return covariance;
    }

    /** Thickness after a distance since new that is known only as an estimate, thousand km. */
    public Estimate thickness(Estimate run1000Km) {
        double run = run1000Km.mean();
        double runVariance = run1000Km.sd() * run1000Km.sd();
        double variance = variance(whenNew)
                - 2 * run * covariance
                + run * run * variance(rate)
                + runVariance * (rate.mean() * rate.mean() + variance(rate));
        return new Estimate(whenNew.mean() - run * rate.mean(), Math.sqrt(variance));
    }

    /** Probability that the part is still at or above its limit some days on. */
    public double probabilityHolds(double run1000Km, double days, DistancePerDay distance, double limitMm) {
        var run = new Estimate(run1000Km + days * distance.meanKm() / 1000, days * distance.sdKm() / 1000);
        return 1 - thickness(run).probabilityBelow(limitMm);
    }

    /**
     * Days until the probability of holding falls through the confidence; 0 when it has, empty when it does not within
     * {@code mostDays}.
     *
     * @param run1000Km since new until today
     * @param confidence above 0.5, below 1
     */
    public OptionalDouble horizonDays(
            double run1000Km, DistancePerDay distance, double limitMm, double confidence, double mostDays) {
        return new ThicknessOutlook(List.of(new ThicknessOutlook.Part(this, run1000Km, limitMm)), distance)
                .horizonDays(confidence, mostDays);
    }

    private static double variance(Estimate estimate) {
        return estimate.sd() * estimate.sd();
    }
}
