package cornerbook.core.coming;

import cornerbook.core.say.Said;

/** For what a customer is asked to come back, in the order in which it is told. */
public enum Matter implements Said {
    /** Wheels that were fitted are to be tightened again. */
    RETORQUE(Purpose.SAFETY),
    /** A tyre comes to the age at which it is to be replaced. */
    TYRE_AGE(Purpose.SAFETY),
    /** The brake fluid is to be changed, by its age or by what was measured. */
    BRAKE_FLUID(Purpose.SAFETY),
    /** The next visit as agreed, or the season's change-over. */
    NEXT_VISIT(Purpose.SEASON),
    /** A set of wheels has been stored for as long as was agreed, or nobody fetched it for its season. */
    STORED_SET(Purpose.SEASON),
    /** The guarantee of work that was billed ends. */
    WARRANTY(Purpose.SEASON);

    private final Purpose purpose;

    Matter(Purpose purpose) {
        this.purpose = purpose;
    }

    public Purpose purpose() {
        return purpose;
    }
}
