package cornerbook.core.tread;

import cornerbook.core.corner.Spot;

/**
 * Tread depth of one tyre when it was new to the book, as the prior has it.
 *
 * @param depthMm stated depth, or a guess where it is not known
 * @param known whether the depth is stated, as of a new tyre; false for one that came used, whose readings then tell
 */
public record NewDepth(double depthMm, boolean known) {
    /** How far the start of a used tyre may lie from the guess: wide enough that its first reading decides. */
    private static final double UNKNOWN_SD_MM = 3;
    /** Share of the variance that the grooves of a tyre have in common. */
    private static final double IN_COMMON = 0.5;

    private static final int GROOVES = Spot.values().length;

    public NewDepth {
        if (!(depthMm > 0 && depthMm < 25)) {
            throw new IllegalArgumentException(
                    "new depth is %s mm, expected above 0 and below 25 mm".formatted(depthMm));
        }
    }

    /** The stated depth of a new tyre. */
    public static NewDepth stated(double depthMm) {
        return new NewDepth(depthMm, true);
    }

    /** A tyre that came used: its start is not known. */
    public static NewDepth unknown(double guessMm) {
        return new NewDepth(guessMm, false);
    }

    /** Element of the inverse of the covariance of the tyre's grooves, by Sherman–Morrison. */
    double precision(boolean sameGroove, WearParameters parameters) {
        double own = 1 - IN_COMMON;
        double shared = IN_COMMON / (own + GROOVES * IN_COMMON);
        return ((sameGroove ? 1 : 0) - shared) / (own * variance(parameters));
    }

    /** Logarithm of the determinant of that inverse. */
    double logDeterminant(WearParameters parameters) {
        double own = 1 - IN_COMMON;
        return -GROOVES * Math.log(variance(parameters))
                - (GROOVES - 1) * Math.log(own)
                - Math.log(own + GROOVES * IN_COMMON);
    }

    private double variance(WearParameters parameters) {
        double sdMm = known ? parameters.newDepthSdMm() : UNKNOWN_SD_MM;
        return sdMm * sdMm;
    }
}
