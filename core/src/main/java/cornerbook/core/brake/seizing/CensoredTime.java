package cornerbook.core.brake.seizing;

/**
 * When something happened, as far as it is known: later than {@code after} and not later than {@code by}. A pad that was
 * free at one visit and seized at the next seized between the two; one that is still free has no end yet.
 *
 * @param after 0 when it may have happened at any time before {@code by} (left-censored)
 * @param by equal to {@code after} when the time is known exactly; infinite when it has not happened (right-censored)
 */
public record CensoredTime(double after, double by) {
    public CensoredTime {
        if (!(after >= 0 && after < Double.POSITIVE_INFINITY && by >= after && by > 0)) {
            throw new IllegalArgumentException(
                    "time is after %s and by %s, expected 0 <= after <= by, after finite, by above 0"
                            .formatted(after, by));
        }
    }

    public static CensoredTime exactly(double time) {
        return new CensoredTime(time, time);
    }

    public static CensoredTime notBy(double time) {
        return new CensoredTime(time, Double.POSITIVE_INFINITY);
    }

    public static CensoredTime before(double time) {
        return new CensoredTime(0, time);
    }

    public static CensoredTime between(double after, double by) {
        return new CensoredTime(after, by);
    }

    boolean isExact() {
        return after == by;
    }

    /** Whether it has not happened as far as anybody knows. */
    public boolean isOpen() {
        return by == Double.POSITIVE_INFINITY;
    }
}
