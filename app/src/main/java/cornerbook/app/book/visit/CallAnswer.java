package cornerbook.app.book.visit;

import java.time.Instant;

/**
 * What came of calling a customer.
 *
 * @param person who called; may be empty at the desk, where nobody is known
 */
public record CallAnswer(Kind kind, String person, Instant at) {
    /** What the customer was asked, or answered. */
    public enum Kind {
        CALLED,
        /** Nobody answered. */
        NOT_REACHED,
        /** A message or an e-mail was sent. */
        WRITTEN,
        WILL_COME,
        /** Nobody is called again about it; wheels stay as they are, and the next visit asks for their torque. */
        DECLINED
    }
}
