package cornerbook.app.desk.coming;

import cornerbook.core.coming.Matter;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What the page of those who are to come back says, to customers for the most part. */
sealed interface ComingSaid extends Said {
    /**
     * A message to a customer.
     *
     * @param matters for what to come back, a sentence each
     * @param telephone of the shop; null where none is known
     * @param shop its name; null where none is known
     */
    record Message(
            String name,
            Said matters,
            @Nullable String telephone,
            @Nullable String shop) implements ComingSaid {}

    /** One sentence of it. */
    record DueOfCar(Matter matter, String car, LocalDate day, boolean past) implements ComingSaid {}

    /** What stands above an e-mail. */
    record Subject(String car, int others) implements ComingSaid {}

    /** The word that ends it, in the language of the e-mail. */
    record StopWord() implements ComingSaid {}

    /** No server is known that takes e-mails. */
    record NoServer() implements ComingSaid {}

    /** Nothing was chosen of what is to be sent. */
    record NoneChosen() implements ComingSaid {}

    /** The customer does not want it any longer. */
    record DeclinedSince() implements ComingSaid {}

    /** What is due or wanted is another than was shown. */
    record ChangedSince(String name) implements ComingSaid {}

    /** A day before the first of the list. */
    record BeforeTheList(LocalDate first) implements ComingSaid {}

    /** A day on which the set of a car, which lies elsewhere, cannot be there. */
    record SetComesLater(String car, String room, LocalDate day) implements ComingSaid {}
}
