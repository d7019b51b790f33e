package cornerbook.app.book.visit;

import java.time.Instant;

/**
 * What came of asking a customer to come back for a re-torque.
 *
 * @param person who asked; empty where the desk did not say
 */
public record RetorqueAnswer(Kind kind, Instant at, String person) {
    /** What the customer was asked, or answered. */
    public enum Kind {
        CALLED,
        /** The wheels stay as they are: nobody is called again, and the next visit asks for their torque. */
        DECLINED
    }
}
