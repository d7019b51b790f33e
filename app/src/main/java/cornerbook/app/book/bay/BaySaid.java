package cornerbook.app.book.bay;

import cornerbook.core.car.MeasureName;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
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

    /** A step that was left open, by its name on the bay sheet. */
    record NotTicked(String step) implements BaySaid {}

    /** A reading that was left open, by the name that a customer can read too. */
    record NotRead(
            MeasureName measure,
            @Nullable Spot spot,
            @Nullable Corner corner,
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
