package cornerbook.core.tread.judge;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.numeric.NormalDistribution;
import cornerbook.core.tread.TreadPattern;
import cornerbook.core.tread.WearPosterior;

/**
 * Whether one corner of an axle wears faster than the other. The rates are the means over the three grooves.
 *
 * @param rateMmPer1000Km of the faster corner
 * @param chance that the faster one's rate is at least {@link #MUCH_FASTER} times the other's
 */
public record CornerContrast(Corner faster, double rateMmPer1000Km, double otherRateMmPer1000Km, double chance) {
    /** Half as fast again: common practice, no source. */
    public static final double MUCH_FASTER = 1.5;

    /** Whether the chance is high enough to be told. */
    public boolean told() {
        return chance >= TreadPattern.NAMED_FROM;
    }

    /** Compares two corners. */
    public static CornerContrast of(WearPosterior posterior, Corner one, Corner other) {
        double ofOne = mean(posterior, one);
        double ofOther = mean(posterior, other);
        return ofOne >= ofOther ? of(posterior, one, ofOne, other, ofOther) : of(posterior, other, ofOther, one, ofOne);
    }

    private static CornerContrast of(
            WearPosterior posterior, Corner faster, double rate, Corner slower, double slowRate) {
        double variance = posterior.rateCovariance(faster, faster)
                + MUCH_FASTER * MUCH_FASTER * posterior.rateCovariance(slower, slower)
                - 2 * MUCH_FASTER * posterior.rateCovariance(faster, slower);
        double chance = NormalDistribution.cumulative((rate - MUCH_FASTER * slowRate) / Math.sqrt(variance));
        return new CornerContrast(faster, rate, slowRate, chance);
    }

    private static double mean(WearPosterior posterior, Corner corner) {
        double sum = 0;
        for (var groove : Spot.values()) {
            sum += posterior.rate(groove, corner).mean();
        }
        return sum / Spot.values().length;
    }
}
