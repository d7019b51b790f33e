package cornerbook.app.book.shop;

import cornerbook.core.say.Said;

/** What is refused of the shop's own. */
sealed interface ShopSaid extends Said {
    /** The first step, the last one, or one beside them that was asked to pass. */
    record StepStays() implements ShopSaid {}
}
