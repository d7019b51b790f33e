package cornerbook.app.calibration.fleet;

/** What makes a fleet harder to foresee than one of the textbook. */
public enum Effect {
    /** All readings of a visit are off together, by the gauge, its zero and the hand. */
    GAUGE_OFFSET,
    /** Tall blocks give way and scrub: a tyre wears fast when new and slowly when worn. */
    WEAR_SLOWS,
    /** A season wears more or less than another: weather, works on the road, holidays. */
    SEASONS_DIFFER,
    /** The three grooves of a tyre are moulded and wear alike. */
    GROOVES_ALIKE,
    /** Some readings are far off: a stone in the groove, the wear bar, a groove read twice. */
    GROSS_ERRORS,
    /** Somebody else drives the car from some day on, in another way and another distance. */
    DRIVERS_CHANGE,
    /** The same on any day of a season, and the shop is told of it at the next visit. */
    DRIVERS_CHANGE_AND_IT_IS_TOLD
}
