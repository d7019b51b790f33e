package cornerbook.app.desk.customer;

import cornerbook.core.say.Said;

/** What the pages of customers may have to say. */
sealed interface CustomerSaid extends Said {
    /** No customer has that address. */
    record NoCustomer() implements CustomerSaid {}

    /** The name that was typed is not the one that is to be erased. */
    record OtherName(String expected) implements CustomerSaid {}

    /** Nothing says why, or who does it. */
    record ReasonMissing() implements CustomerSaid {}

    /** What a customer is asked about being called and written to, as it is read out. */
    record AskedToReach() implements CustomerSaid {}
}
