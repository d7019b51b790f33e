package cornerbook.app.book.estimate;

import cornerbook.core.price.Tax;
import cornerbook.core.price.Total;
import cornerbook.words.Language;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What a customer was told that work would cost.
 *
 * @param turn 0 for the first of its visit
 * @param language in which its lines are written
 * @param place whose law it is under
 * @param taxes as they were on its day
 * @param person who made it; may be empty at the desk
 */
public record Estimate(
        String id,
        String visitId,
        int turn,
        Language language,
        LocalDate day,
        LocalDate validUntil,
        String place,
        CurrencyUnit currency,
        List<EstimateLine> lines,
        List<Named> taxes,
        String person,
        Instant madeAt) {
    public Estimate {
        lines = List.copyOf(lines);
        taxes = List.copyOf(taxes);
    }

    /** A tax as the paper names it. */
    public record Named(Tax tax, String registration) {}

    /** Whether a line speaks of what was found at the car, by the letters of its corners. */
    public boolean asksForWork() {
        return lines.stream().anyMatch(line -> line.advice() != null);
    }

    /** What lines of it come to; those without a price add nothing. */
    public Total total(List<EstimateLine> some) {
        return Total.of(
                currency,
                some.stream().map(EstimateLine::amount).filter(Objects::nonNull).toList(),
                taxes.stream().map(Named::tax).toList());
    }

    /** Nothing, in its coin. */
    public Money nothing() {
        return Money.zero(currency);
    }
}
