package cornerbook.app.desk.customer;

import cornerbook.app.book.customer.KeptOfCustomer;
import cornerbook.app.book.customer.PricedBill;
import cornerbook.app.desk.Form;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.coming.Purpose;
import cornerbook.core.say.Said;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the book keeps of a customer.
 *
 * @param contact whether this person is called and written to, by purpose and way
 * @param question what the person is asked about it, in his or her language
 * @param shop who gives it out
 * @param retention for how long the shop keeps its papers
 * @param typed what was typed into the form that erases, when it came back
 * @param person who works on the tablet that asks; null where nobody is known
 * @param error what was wrong with what was typed; null when nothing was
 */
public record CustomerPage(
        KeptOfCustomer kept,
        List<ContactState> contact,
        String question,
        AtShop shop,
        Retention retention,
        Form typed,
        @Nullable String person,
        @Nullable String error) {
    public CustomerPage {
        contact = List.copyOf(contact);
    }

    /**
     * The shop on that day.
     *
     * @param reader who reads there, by its time
     */
    public record AtShop(Reader reader, Letterhead letterhead, LocalDate today) {}

    /** What came back of the form that erases. */
    public Form erasing() {
        return typed.has("answer") ? Form.EMPTY : typed;
    }

    /** What came back of the form that asks to be called and written to. */
    public Form asking() {
        return typed.has("answer") ? typed : Form.EMPTY;
    }

    /** What the customer was asked, as it was typed or as it is usual. */
    public String asked() {
        return asking().has("words") ? asking().get("words") : question;
    }

    /** Until when its papers are kept; null where there are none. */
    public @Nullable LocalDate papersUntil() {
        return kept.bills().stream()
                .map(PricedBill::day)
                .max(LocalDate::compareTo)
                .map(day -> day.plusYears(retention.years()))
                .orElse(null);
    }

    /** The ways of a purpose. */
    public List<ContactState> contact(Purpose purpose) {
        return contact.stream().filter(state -> state.purpose() == purpose).toList();
    }

    /** Each source that holds, once. */
    public List<Said> sources() {
        return contact.stream()
                .filter(state -> !state.asked())
                .map(ContactState::source)
                .distinct()
                .toList();
    }

    /** In which the customer gets papers, by its own name; null for the shop's usual one. */
    public @Nullable String language() {
        return Optional.ofNullable(kept.customer().language())
                .flatMap(Language::find)
                .map(Language::title)
                .orElse(null);
    }
}
