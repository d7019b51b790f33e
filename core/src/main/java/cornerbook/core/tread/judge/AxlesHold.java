package cornerbook.core.tread.judge;

/**
 * How likely the tyres of each axle of a set hold over its span, each chance 0 to 1.
 *
 * @param both that all of them do; the axles are not independent, as the car runs as far on both
 */
public record AxlesHold(double front, double rear, double both) {
    /** Chance that the tyres of just one axle do not hold; what rounding leaves below nothing is nothing. */
    public double oneFails() {
        return Math.max(0, 1 - both - bothFail());
    }

    /** Chance that neither axle's tyres hold. */
    public double bothFail() {
        return Math.clamp(1 - front - rear + both, 0, 1 - both);
    }
}
