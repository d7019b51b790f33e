package cornerbook.app.desk.estimate;

import cornerbook.app.book.price.PriceList;
import cornerbook.app.book.price.PriceValue;
import cornerbook.core.price.Job;
import cornerbook.core.price.Labour;
import cornerbook.core.say.Price;
import cornerbook.words.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What is charged for a job, and how that comes about.
 *
 * @param detail in the reader's words
 */
record Charge(Money amount, String detail) {
    /** By the price list; empty where it says nothing of the job, or has minutes and no rate. */
    static Optional<Charge> of(Job job, int times, PriceList prices, Reader reader) {
        return prices.find(job).flatMap(value -> of(value, times, prices, reader));
    }

    private static Optional<Charge> of(PriceValue value, int times, PriceList prices, Reader reader) {
        var w = reader.labels("app/desk/estimate");
        var amounts = new ArrayList<Money>();
        var details = new ArrayList<String>();
        int minutes = Objects.requireNonNullElse(value.minutes(), 0) * times;
        if (minutes > 0) {
            var hour = prices.hour().orElse(null);
            if (hour == null) {
                return Optional.empty();
            }
            var labour = Labour.of(minutes, hour);
            amounts.add(labour);
            details.add(w.of("labour", "minutes", minutes, "hour", new Price(hour), "amount", new Price(labour)));
        }
        var parts = value.amount();
        if (parts != null) {
            amounts.add(parts.multipliedBy(times));
            details.add(w.of("parts", "n", times, "each", new Price(parts)));
        }
        return prices.currency().map(currency -> {
            var total = Money.total(currency, amounts);
            return new Charge(total, total.isZero() ? w.of("no-charge") : String.join("; ", details));
        });
    }

    /** Tyres, with what is charged for those that come off. */
    static Charge ofTyres(Money each, int tyres, PriceList prices, Reader reader) {
        var w = reader.labels("app/desk/estimate");
        var bought = new Charge(each.multipliedBy(tyres), w.of("tyres", "n", tyres, "each", new Price(each)));
        return of(Job.OLD_TYRE, tyres, prices, reader)
                .map(old -> new Charge(
                        bought.amount().plus(old.amount()),
                        String.join(
                                "; ", List.of(bought.detail(), w.of("old-tyres", "amount", new Price(old.amount()))))))
                .orElse(bought);
    }
}
