package cornerbook.core.tread;

import cornerbook.core.numeric.NormalDistribution;
import java.util.EnumMap;
import java.util.Map;

/**
 * Why the two tyres of an axle wear as they do across, as chances: the model of {@link TreadPattern} with both tyres at once,
 * x = (inner − centre, outer − centre) of the left and of the right. With q = dᵀS⁻¹x, r = dᵀS⁻¹d and τ as there, the
 * evidence of a cause against even wear is in closed form
 *
 * <pre>
 *   p(x | cause) / p(x | even) = 2 (1 + τ²r)^(−1/2) exp(τ²q² / (2 (1 + τ²r))) Φ(τ q / √(1 + τ²r))     (1)
 * </pre>
 *
 * Toe pulls both tyres alike, as steered wheels share it between them; camber, or a bent part, one. Even wear has the chance of
 * {@link TreadPattern} before anything is read, and the eight causes share the rest: common practice, no source.
 */
public final class AxlePattern {
    /** What the pattern of an axle points to. */
    public enum Cause {
        EVEN(0, 0, 0, 0),
        /** Toe out, or too much negative camber on both. */
        BOTH_INNER(-1, 0, -1, 0),
        /** Toe in, or too much positive camber on both. */
        BOTH_OUTER(0, -1, 0, -1),
        LEFT_INNER(-1, 0, 0, 0),
        LEFT_OUTER(0, -1, 0, 0),
        RIGHT_INNER(0, 0, -1, 0),
        RIGHT_OUTER(0, 0, 0, -1),
        /** Too little air. */
        SHOULDERS(-1, -1, -1, -1),
        /** Too much air. */
        CENTRES(1, 1, 1, 1);

        private final double leftInner;
        private final double leftOuter;
        private final double rightInner;
        private final double rightOuter;

        Cause(double leftInner, double leftOuter, double rightInner, double rightOuter) {
            this.leftInner = leftInner;
            this.leftOuter = leftOuter;
            this.rightInner = rightInner;
            this.rightOuter = rightOuter;
        }

        /** Whether it is one of the wheel alignment. */
        public boolean isAlignment() {
            return this != EVEN && this != SHOULDERS && this != CENTRES;
        }
    }

    private AxlePattern() {}

    /**
     * Chance of each cause; they sum to 1.
     *
     * @param wornMm how much of the tread is gone, mean over all grooves, 0 or more
     * @param sdMm standard deviation of one read depth
     */
    public static Map<Cause, Double> chances(TreadAcross left, TreadAcross right, double wornMm, double sdMm) {
        double spread = sdMm * sdMm + square(TreadPattern.NATURAL * wornMm);
        double size = Math.max(TreadPattern.LEAST_SIZE_MM, TreadPattern.SIZE * wornMm);
        var causes = Cause.values();
        var chances = new EnumMap<Cause, Double>(Cause.class);
        double sum = 0;
        for (var cause : causes) {
            double chance = cause == Cause.EVEN
                    ? TreadPattern.CHANCE_EVEN
                    : (1 - TreadPattern.CHANCE_EVEN) / (causes.length - 1) * evidence(cause, left, right, spread, size);
            chances.put(cause, chance);
            sum += chance;
        }
        double total = sum;
        chances.replaceAll((cause, chance) -> chance / total);
        return chances;
    }

    /** Equation (1); 1 for even wear. */
    static double evidence(Cause cause, TreadAcross left, TreadAcross right, double spread, double size) {
        double q = product(cause.leftInner, cause.leftOuter, left.innerLess(), left.outerLess(), spread)
                + product(cause.rightInner, cause.rightOuter, right.innerLess(), right.outerLess(), spread);
        double r = product(cause.leftInner, cause.leftOuter, cause.leftInner, cause.leftOuter, spread)
                + product(cause.rightInner, cause.rightOuter, cause.rightInner, cause.rightOuter, spread);
        if (r == 0) {
            return 1;
        }
        double widened = 1 + size * size * r;
        return 2
                / Math.sqrt(widened)
                * Math.exp(square(size * q) / (2 * widened))
                * NormalDistribution.cumulative(size * q / Math.sqrt(widened));
    }

    /** aᵀS⁻¹b of one tyre: S has twice the spread of a groove on its diagonal, and that of the centre beside it. */
    private static double product(double aInner, double aOuter, double bInner, double bOuter, double spread) {
        return (2 * (aInner * bInner + aOuter * bOuter) - aInner * bOuter - aOuter * bInner) / (3 * spread);
    }

    private static double square(double value) {
        return value * value;
    }
}
