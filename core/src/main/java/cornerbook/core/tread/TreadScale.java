package cornerbook.core.tread;

import cornerbook.core.numeric.Estimate;

/**
 * Treads wear faster new than worn, for a tall block squirms (the direction: Veith 1973, Rubber Chem. Technol. 46:801, from
 * memory). On the scale of effective depth wear is straight in distance:
 *
 * <pre>  ψ(D) = D + γ q(D),   q(D) = D (1 − D / d)                                      (1)</pre>
 *
 * with d the depth when new and γ the slowing, so that a tread wears 1/(1 − γ) times as fast as at half depth when new and
 * 1/(1 + γ) times when worn to nothing; ψ(0) = 0 and ψ(d) = d. Above d and below 0 it goes on straight.
 *
 * @param newDepthMm d, above 0
 * @param slowing γ, less than {@link #MOST_SLOWING} either way
 */
public record TreadScale(double newDepthMm, double slowing) {
    public static final double MOST_SLOWING = 0.5;

    /** q(D) of (1). */
    public static double bend(double depthMm, double newDepthMm) {
        if (depthMm <= 0) {
            return depthMm;
        }
        return depthMm >= newDepthMm ? newDepthMm - depthMm : depthMm * (1 - depthMm / newDepthMm);
    }

    /** q'(D) of (1), from −1 to 1. */
    public static double bendSlope(double depthMm, double newDepthMm) {
        return Math.clamp(1 - 2 * depthMm / newDepthMm, -1, 1);
    }

    public double effective(double depthMm) {
        return depthMm + slowing * bend(depthMm, newDepthMm);
    }

    /** Effective millimetres that one millimetre of depth is worth, above 0. */
    double slope(double depthMm) {
        return 1 + slowing * bendSlope(depthMm, newDepthMm);
    }

    /** The depth whose effective depth this is. */
    public double depth(double effectiveMm) {
        if (effectiveMm <= 0) {
            return effectiveMm / (1 + slowing);
        }
        if (effectiveMm >= newDepthMm) {
            return newDepthMm + (effectiveMm - newDepthMm) / (1 - slowing);
        }
        double linear = 1 + slowing;
        return 2 * effectiveMm / (linear + Math.sqrt(linear * linear - 4 * slowing * effectiveMm / newDepthMm));
    }

    /** The same of a depth that is not known exactly, straight about its mean. */
    Estimate depth(Estimate effectiveMm) {
        double depthMm = depth(effectiveMm.mean());
        return new Estimate(depthMm, effectiveMm.sd() / slope(depthMm));
    }
}
