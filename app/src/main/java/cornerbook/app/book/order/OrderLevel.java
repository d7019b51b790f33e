package cornerbook.app.book.order;

import org.jspecify.annotations.Nullable;

/**
 * With which chance the pieces of the order list are to be enough, as the shop keeps it.
 *
 * @param percent null where it follows from the two costs
 * @param missing what one piece too few costs, as it was written; empty where the chance was chosen
 * @param left what one piece too many costs, as it was written; empty where the chance was chosen
 */
public record OrderLevel(@Nullable Integer percent, String missing, String left) {
    /** What counts before a shop keeps another. Common practice, no source. */
    public static final OrderLevel USUAL = new OrderLevel(90, "", "");
}
