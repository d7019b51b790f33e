package cornerbook.app.book.price;

import cornerbook.core.corner.SeasonKind;
import cornerbook.core.price.Job;
import cornerbook.core.price.Tax;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * What things cost on one day.
 *
 * @param place null while the shop has not said whose taxes it bears: then nothing has a price
 * @param rows those that stand, in the coin of the place
 */
public record PriceList(LocalDate day, @Nullable TaxPlace place, List<PriceRow> rows) {
    public PriceList {
        rows = List.copyOf(rows);
    }

    public Optional<PriceValue> find(PriceKey key) {
        return rows.stream().filter(row -> row.key().equals(key)).findFirst().map(PriceRow::value);
    }

    /** An hour of work. */
    public Optional<Money> hour() {
        return find(PriceKey.HOUR).map(PriceValue::amount);
    }

    public Optional<PriceValue> find(Job job) {
        return find(PriceKey.of(job));
    }

    /** The tyres of a size that the shop has prices of, the cheapest first. */
    public List<PriceRow> tyres(SeasonKind season, String size) {
        return of(PriceKey.Item.TYRE).stream()
                .filter(row -> row.key().kind().equals(season.name())
                        && row.key().name().equals(size))
                .sorted(Comparator.comparing(
                        row -> Objects.requireNonNull(row.value().amount())))
                .toList();
    }

    public List<PriceRow> of(PriceKey.Item item) {
        return rows.stream().filter(row -> row.key().item() == item).toList();
    }

    /** In which papers are written; empty while the shop has not said. */
    public Optional<CurrencyUnit> currency() {
        return Optional.ofNullable(place).map(TaxPlace::currency);
    }

    /** Those that count on the day; none while the shop has not said where it is. */
    public List<Tax> taxes() {
        return place == null
                ? List.of()
                : place.on(day).stream().map(TaxPlace.Counting::tax).toList();
    }
}
