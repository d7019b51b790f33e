package cornerbook.app.book.estimate;

import cornerbook.core.release.ChargedWork;
import java.util.List;
import java.util.Objects;
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
 * @param works what the bay sheet knows of it, by which an entry there is agreed; none where it says nothing of the kind
 */
public record EstimateLine(
        String key,
        String oneOf,
        @Nullable String advice,
        LineWords said,
        String detail,
        String meaning,
        boolean safety,
        @Nullable Money amount,
        List<ChargedWork> works) {
    public EstimateLine {
        works = List.copyOf(works);
    }

    /** By the advice alone: what it names is what it is about. */
    public EstimateLine(
            String key,
            String oneOf,
            @Nullable String advice,
            String words,
            String detail,
            String meaning,
            boolean safety,
            @Nullable Money amount) {
        this(
                key,
                oneOf,
                advice,
                LineWords.of(words),
                detail,
                meaning,
                safety,
                amount,
                advice == null ? List.of() : ChargedWork.ofAdvice(advice));
    }

    /** The same at another price: of what is typed over nothing says how it comes about. */
    public EstimateLine priced(@Nullable Money other) {
        return Objects.equals(amount, other)
                ? this
                : new EstimateLine(key, oneOf, advice, said, "", "", safety, other, works);
    }

    /** What is done, and why. */
    public String words() {
        return said.whole();
    }

    /** Without what its kind of choice is called: what a customer declines when none of a group is taken. */
    public String matter() {
        return oneOf.isEmpty() ? key : oneOf;
    }
}
