package cornerbook.app.book.estimate;

import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * One piece of work with what it would cost, as the customer reads it.
 *
 * @param key by which a later estimate puts another in its place: an advice of the visit, a job, or what the shop called it
 * @param oneOf name that it shares with others of which only one is taken; empty for a line of its own
 * @param advice of the visit that it comes from; null for other work
 * @param detail how the amount comes about, may be empty
 * @param meaning what it means in years and for each distance, may be empty
 * @param safety whether the car is not safe, or not for long, without it
 * @param amount before taxes; null while it has no price
 */
public record EstimateLine(
        String key,
        String oneOf,
        @Nullable String advice,
        String words,
        String detail,
        String meaning,
        boolean safety,
        @Nullable Money amount) {
    /** Without what its kind of choice is called: what a customer declines when none of a group is taken. */
    public String matter() {
        return oneOf.isEmpty() ? key : oneOf;
    }
}
