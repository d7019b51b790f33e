package cornerbook.app.desk.coming;

import cornerbook.app.book.coming.ComingCustomer;
import cornerbook.app.book.coming.ComingLedger.Days;
import cornerbook.app.desk.Slice;
import cornerbook.app.desk.link.CustomerLinks;
import cornerbook.core.coming.Matter;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Who is to be asked to come back.
 *
 * @param notJudged how many cars of the book are not judged as they are now
 * @param agreed the day that was just agreed; null where none was
 * @param error why what was said was not kept; empty where it was
 */
public record ComingPage(
        Days days,
        Slice<Row> slice,
        int notJudged,
        @Nullable LocalDate agreed,
        String error) {
    /**
     * A customer.
     *
     * @param calledOn when something came of asking last; null before anybody did
     * @param callAbout matters about which he or she is called
     * @param offers what may be written; none where nothing may
     * @param language tag of the language of the messages
     */
    public record Row(
            ComingCustomer customer,
            @Nullable LocalDate calledOn,
            Set<Matter> callAbout,
            List<Offer> offers,
            String language) {
        public Row {
            callAbout = Set.copyOf(callAbout);
            offers = List.copyOf(offers);
        }

        public @Nullable String phone() {
            return customer.customer().phone();
        }

        public @Nullable String email() {
            return customer.customer().email();
        }

        /** What the customer does not want to be called about, though something else; in their order. */
        public List<Matter> notCalledAbout() {
            return customer.matters().stream()
                    .filter(matter -> !callAbout.contains(matter))
                    .toList();
        }
    }

    /**
     * What may be written to a customer.
     *
     * @param phone to which as a message; null where not as one
     * @param email to which as an e-mail; null where not as one
     */
    public record Offer(
            CustomerMessage message,
            @Nullable String phone,
            @Nullable String email) {}

    /** The days by which something is due first, in their order. */
    public List<LocalDate> firstDays() {
        return slice.list().stream()
                .map(row -> row.customer().first())
                .distinct()
                .toList();
    }

    public List<Row> rows(LocalDate day) {
        return slice.list().stream()
                .filter(row -> row.customer().first().equals(day))
                .toList();
    }

    public boolean isPast(LocalDate day) {
        return day.isBefore(days.today());
    }

    /** The day that is proposed for coming: by which the first is due, or today. */
    public String proposed(ComingCustomer customer) {
        return (isPast(customer.first()) ? days.today() : customer.first()).toString();
    }

    /** The e-mails to the customers of this page, before they are sent. */
    public String mailAddress() {
        return CustomerLinks.comingMail() + "?until=" + days.until() + "&from=" + slice.from();
    }

    /** The page with other customers on it. */
    public String address(int from) {
        return CustomerLinks.coming() + "?until=" + days.until() + "&from=" + from;
    }
}
