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

    double sdMm(WearParameters parameters) {
        return known ? parameters.newDepthSdMm() : UNKNOWN_SD_MM;
    }
}
