package cornerbook.app.calibration;

/**
 * A figure as it was found, in percent or points.
 *
 * @param sd its standard error
 */
record Measured(double value, double sd) {
    /** What lies so many standard errors outside is no accident. */
    private static final double SURELY = 2;

    /** Whether it lies below for sure. */
    boolean isBelow(double low) {
        return value + SURELY * sd < low;
    }

    /** Whether it lies above for sure. */
    boolean isAbove(double high) {
        return value - SURELY * sd > high;
    }
}
