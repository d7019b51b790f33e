package cornerbook.app.book.bay;

import cornerbook.app.book.shop.SheetStep;
import cornerbook.core.car.MeasureName;
import cornerbook.core.corner.Corner;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import org.jspecify.annotations.Nullable;

/** What people are told of entries from the bay. */
public interface BaySaid extends Said {
    record NoRival(String reading) implements BaySaid {}

    /**
     * Two people answered, each otherwise.
     *
     * @param standing null where nobody knows any more what stood there
     */
    record DecidedOtherwise(
            String person,
            boolean taken,
            String rival,
            @Nullable String standing) implements BaySaid {}

    /** Why a reading replaces the one that stood there. */
    record Chosen(String taker, String person) implements BaySaid {}

    /** What was left open, one thing beside the other. */
    record NotDone(Listed things) implements BaySaid {}

    /**
     * A whole step that was left open.
     *
     * @param corners where; null where it has none, or is left open as a whole
     */
    record StepLeft(SheetStep step, @Nullable Listed corners) implements BaySaid {}

    record AllCorners() implements BaySaid {}

    /**
     * Readings of one measure that were left open, by the name that a customer can read too.
     *
     * @param places null where it is of the whole car
     */
    record ReadingLeft(MeasureName measure, @Nullable Listed places) implements BaySaid {}

    /**
     * Where one is missing.
     *
     * @param spots null where every one of them is
     */
    record PlaceLeft(
            @Nullable Corner corner,
            @Nullable Listed spots,
            @Nullable String wheel) implements BaySaid {}

    /**
     * What was open when the car was handed over.
     *
     * @param sentence what was open, as it was told then
     * @param acknowledgedBy who of the customer's side knew; null where nothing was unsafe
     */
    record LeftOpen(
            String person,
            String sentence,
            String reason,
            @Nullable String acknowledgedBy) implements BaySaid {}
}
