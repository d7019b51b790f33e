package cornerbook.app.book.price;

import cornerbook.core.corner.SeasonKind;
import cornerbook.core.price.Job;
import org.jspecify.annotations.Nullable;

/**
 * What has a price.
 *
 * @param kind of a job its name, of a tyre its season; else empty
 * @param name of a tyre its size, of a part what the shop calls it; else empty
 * @param offer which one of several tyres of that size; empty where there is one
 */
public record PriceKey(Item item, String kind, String name, String offer) {
    /** An hour of work. */
    public static final PriceKey HOUR = new PriceKey(Item.HOUR, "", "", "");

    /** What is priced alike. */
    public enum Item {
        HOUR,
        JOB,
        TYRE,
        PART
    }

    public static PriceKey of(Job job) {
        return new PriceKey(Item.JOB, job.name(), "", "");
    }

    /** One tyre, mounted and balanced. */
    public static PriceKey tyre(SeasonKind season, String size, String offer) {
        return new PriceKey(Item.TYRE, season.name(), size, offer);
    }

    /** The same as words choose by it: null where there is one. */
    public @Nullable String offered() {
        return offer.isEmpty() ? null : offer;
    }

    /** Anything that the shop sells by its name. */
    public static PriceKey part(String name) {
        return new PriceKey(Item.PART, "", name, "");
    }
}
