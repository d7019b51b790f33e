package cornerbook.app.desk.customer;

import cornerbook.core.car.Customer;
import cornerbook.words.Language;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Cards from an address book, before they are taken.
 *
 * @param id of what is taken: the same form twice counts once
 * @param text of the cards, as it was given
 * @param rows what may become of each
 * @param taken how many customers were new or completed; null before any was
 * @param withoutCar customers who have no car in the book
 * @param error why the text was not read; empty where it was
 */
public record CardPage(
        String id,
        String text,
        List<CardRow> rows,
        @Nullable Integer taken,
        List<Customer> withoutCar,
        String error) {
    static final String TEXT = "cards";

    public CardPage {
        rows = List.copyOf(rows);
        withoutCar = List.copyOf(withoutCar);
    }

    public List<CardRow> fit() {
        return rows.stream().filter(row -> row.card().refused() == null).toList();
    }

    public List<CardRow> unfit() {
        return rows.stream().filter(row -> row.card().refused() != null).toList();
    }

    /** Of a tag, by the language's own name; null for none. */
    public @Nullable String language(@Nullable String tag) {
        return Optional.ofNullable(tag)
                .flatMap(Language::find)
                .map(Language::title)
                .orElse(null);
    }

    public String newCustomer() {
        return CardRow.NEW;
    }

    public String left() {
        return CardRow.LEFT;
    }
}
