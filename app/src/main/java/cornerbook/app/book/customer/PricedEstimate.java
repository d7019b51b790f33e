package cornerbook.app.book.customer;

import java.time.LocalDate;
import java.util.List;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/** What a customer was told that work would cost, and what was answered. */
public record PricedEstimate(String visitId, LocalDate day, LocalDate validUntil, List<Line> lines) {
    public PricedEstimate {
        lines = List.copyOf(lines);
    }

    /**
     * A piece of work.
     *
     * @param amount before taxes; null where it had no price
     * @param agreed what was answered last; null where nothing was
     */
    public record Line(
            String words, @Nullable Money amount, @Nullable Boolean agreed) {}
}
