package cornerbook.app.desk.order;

import cornerbook.core.say.Said;

/** What the pages of what to order refuse. */
sealed interface OrderSaid extends Said {
    /** What was asked for is no chance from 50 to 99 per cent. */
    record NoLevel(int least, int most) implements OrderSaid {}

    /** What was written is no amount above nothing. */
    record NoCost() implements OrderSaid {}

    record NoUntil() implements OrderSaid {}

    record NoArticle() implements OrderSaid {}

    record NoQuantity() implements OrderSaid {}
}
