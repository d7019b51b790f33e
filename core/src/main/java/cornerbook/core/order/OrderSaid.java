package cornerbook.core.order;

import cornerbook.core.say.Said;
import org.jspecify.annotations.Nullable;

/** What is said of what a shop orders. */
public sealed interface OrderSaid extends Said {
    /**
     * An article.
     *
     * @param kind of a tyre its season, of a brake part its axle, of a battery its chemistry, of a nut its seat
     * @param text size, thread, grade, or the kind of car that it is for; null where nobody has looked it up
     */
    record OfKind(OrderPart part, Said kind, @Nullable String text) implements OrderSaid {}

    /** An article of no kind, or of one that nobody has looked up. */
    record OfText(OrderPart part, @Nullable String text) implements OrderSaid {}
}
