package cornerbook.app.book.year;

import java.time.Instant;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * Work of an estimate that its customer declined, and still declines. Of things of which one would be taken it is the first.
 *
 * @param words as the customer read them
 * @param safety whether the car is not safe, or not for long, without it
 * @param amount before taxes; null where it had no price
 * @param at when it was declined
 */
public record DeclinedLine(
        String visitId,
        String carName,
        String plate,
        String words,
        boolean safety,
        @Nullable Money amount,
        Instant at) {}
