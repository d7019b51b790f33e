package cornerbook.core.tread;

import cornerbook.core.say.Said;

/** What the corner-rate model is told before any reading, and what a book learns of it. */
public enum WearParameter implements Said {
    /** Standard deviation of one depth reading about its visit's own offset, mm. */
    READING_SD(0.4, 0.2),
    /** Standard deviation of the offset that all readings of one visit share, by gauge and hand, mm. */
    VISIT_SD(0.4, 0.2),
    /** How far a tyre's depth when new to the book may lie from its stated depth, mm. */
    NEW_DEPTH_SD(0.4, 0.2),
    /** Mean wear rate of the front corners at half depth, mm per 1000 km. */
    FRONT_RATE(0.4, 0.15),
    /** Mean wear rate of the rear corners at half depth, mm per 1000 km. */
    REAR_RATE(0.4, 0.15),
    /** Relative standard deviation of the factor that all corners of a car share. */
    VEHICLE_SPREAD(0.4, 0.2),
    /** Relative standard deviation of each corner's own factor. */
    CORNER_SPREAD(0.4, 0.2),
    /** Relative standard deviation of each groove's own factor. */
    GROOVE_SPREAD(0.4, 0.2),
    /** Standard deviation of what one season adds to the rates of all corners, mm per 1000 km. */
    SEASON_SD(0.4, 0.2),
    /** How much slower a worn tread wears than a new one, see {@link TreadScale}; the only one that may be below 0. */
    SLOWING(0.2, 0.1);

    /** Below the limits of {@link WearParameters}, which are no values themselves. */
    private static final double MOST_OF_LIMIT = 0.99;

    private static final double LEAST = 1e-6;
    private static final double MOST = 9.9;

    private final double spread;
    private final double spreadOfModel;

    WearParameter(double spread, double spreadOfModel) {
        this.spread = spread;
        this.spreadOfModel = spreadOfModel;
    }

    /** Standard deviation of what is believed before any reading; of the logarithm, of {@link #SLOWING} its own. */
    public double spread(boolean ofModel) {
        return ofModel ? spreadOfModel : spread;
    }

    /** Whether it says how far something lies from its mean. */
    boolean isSpread() {
        return this != FRONT_RATE && this != REAR_RATE && this != SLOWING;
    }

    /** The scale on which it is learned: its logarithm, or itself. */
    public double onScale(double value) {
        return this == SLOWING ? value : Math.log(value);
    }

    /** The nearest value that it may have. */
    double within(double value) {
        return this == SLOWING
                ? Math.clamp(value, -MOST_OF_LIMIT * TreadScale.MOST_SLOWING, MOST_OF_LIMIT * TreadScale.MOST_SLOWING)
                : Math.clamp(value, LEAST, MOST);
    }

    public double fromScale(double place) {
        return this == SLOWING ? place : Math.exp(place);
    }
}
