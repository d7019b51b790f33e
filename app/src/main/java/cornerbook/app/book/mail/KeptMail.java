package cornerbook.app.book.mail;

import cornerbook.app.mail.Delivery;
import java.time.Instant;

/**
 * An e-mail to a customer, as it went out.
 *
 * @param person who sent it
 * @param last what became of it last; unknown while the server has not answered
 * @param events how many times something became of it: who sends it again has seen so many
 * @param at when that was
 */
public record KeptMail(Letter letter, String customerName, String person, Delivery last, int events, Instant at) {
    /** Whether a person may send it once more; the address by which a day is picked is not kept, so another is made. */
    public boolean mayGoAgain() {
        return last.outcome() != Delivery.Outcome.TAKEN && !letter.about().isEmpty();
    }
}
