package cornerbook.app.book.price;

import cornerbook.app.law.TaxOfPlace;
import cornerbook.core.finding.Citation;
import cornerbook.core.price.Tax;
import cornerbook.core.say.Said;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;

/**
 * Whose taxes the shop's papers bear.
 *
 * @param place ISO 3166-2, as CA-QC; one without taxes on file has those that the shop entered
 * @param taxes as papers name them, in their order
 */
public record TaxPlace(String place, CurrencyUnit currency, LocalDate begins, List<OfShop> taxes) {
    public TaxPlace {
        taxes = List.copyOf(taxes);
    }

    /**
     * A tax that the shop collects.
     *
     * @param name of the constant where it is on file, else what the shop calls it
     * @param percent null where it is the one on file
     * @param registration under which the shop collects it, may be empty
     */
    public record OfShop(String name, @Nullable BigDecimal percent, String registration) {}

    /**
     * A tax as it counts on a day.
     *
     * @param citation null where the shop entered it
     */
    public record Counting(
            Tax tax, String registration, @Nullable Citation citation) {}

    /** The taxes of a day. */
    public List<Counting> on(LocalDate day) {
        var onFile = TaxOfPlace.of(place, day);
        if (!onFile.isEmpty()) {
            return onFile.stream()
                    .map(each ->
                            new Counting(each.tax(), registration(each.code().name()), each.citation()))
                    .toList();
        }
        return taxes.stream()
                .filter(each -> each.percent() != null)
                .map(each -> new Counting(
                        new Tax(Said.verbatim(each.name()), Objects.requireNonNull(each.percent())),
                        each.registration(),
                        null))
                .toList();
    }

    /** Under which the shop collects a tax; empty where nobody has said. */
    public String registration(String name) {
        return find(name).map(OfShop::registration).orElse("");
    }

    private Optional<OfShop> find(String name) {
        return taxes.stream().filter(each -> each.name().equals(name)).findFirst();
    }
}
