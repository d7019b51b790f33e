package cornerbook.core.tread;

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

    /**
     * Element of the inverse of the covariance of a tyre's grooves, or of weighed sums of them that are at right angles to each
     * other, by Sherman–Morrison.
     *
     * @param same whether it stands on the diagonal
     * @param loads how much of what the grooves have in common is in the one, times in the other: 1 for grooves themselves
     * @param square of the loads of all of them, summed: how many there are, for grooves themselves
     */
    public double precision(boolean same, double loads, double square, WearParameters parameters) {
        double own = 1 - IN_COMMON;
        double shared = IN_COMMON * loads / (own + square * IN_COMMON);
        return ((same ? 1 : 0) - shared) / (own * variance(parameters));
    }

    /**
     * Logarithm of the determinant of that inverse.
     *
     * @param size how many there are
     */
    public double logDeterminant(int size, double square, WearParameters parameters) {
        double own = 1 - IN_COMMON;
        return -size * Math.log(variance(parameters)) - (size - 1) * Math.log(own) - Math.log(own + square * IN_COMMON);
    }

    private double variance(WearParameters parameters) {
        double sdMm = known ? parameters.newDepthSdMm() : UNKNOWN_SD_MM;
        return sdMm * sdMm;
    }
}
