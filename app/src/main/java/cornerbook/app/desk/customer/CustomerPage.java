package cornerbook.app.desk.customer;

import cornerbook.app.book.customer.KeptOfCustomer;
import cornerbook.app.desk.Form;
import cornerbook.words.Language;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the book keeps of a customer.
 *
 * @param typed what was typed into the form that erases, when it came back
 * @param person who works on the tablet that asks; null where nobody is known
 * @param error what was wrong with what was typed; null when nothing was
 */
public record CustomerPage(
        KeptOfCustomer kept,
        Form typed,
        @Nullable String person,
        @Nullable String error) {
    /** In which the customer gets papers, by its own name; null for the shop's usual one. */
    public @Nullable String language() {
        return Optional.ofNullable(kept.customer().language())
                .flatMap(Language::find)
                .map(Language::title)
                .orElse(null);
    }
}
