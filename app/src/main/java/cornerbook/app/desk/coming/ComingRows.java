package cornerbook.app.desk.coming;

import cornerbook.app.book.coming.AskedMatter;
import cornerbook.app.book.coming.ComingCustomer;
import cornerbook.app.book.customer.Reach;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.coming.ComingPage.Offer;
import cornerbook.app.desk.coming.ComingPage.Row;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.coming.Channel;
import cornerbook.core.coming.Matter;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** How each customer may be reached, and with what words: a way that was declined, or that has to be asked for first, is not offered. */
final class ComingRows {
    private final Desk desk;
    private final Letterhead letterhead;
    private final Reach reach;

    ComingRows(Desk desk, Letterhead letterhead) {
        this.desk = desk;
        this.letterhead = letterhead;
        this.reach = desk.reach();
    }

    Row of(ComingCustomer customer) {
        var reader = desk.reader(customer.customer());
        return new Row(
                customer,
                customer.last().map(answer -> desk.dayOf(answer.at())).orElse(null),
                customer.matters().stream()
                        .filter(matter -> permits(matter, Channel.TELEPHONE, customer))
                        .collect(Collectors.toUnmodifiableSet()),
                offers(customer, reader),
                reader.language().tag());
    }

    private List<Offer> offers(ComingCustomer customer, Reader reader) {
        var phone = customer.customer().phone();
        var email = customer.customer().email();
        var text = message(customer, Channel.MESSAGE, phone, reader);
        var mail = message(customer, Channel.E_MAIL, email, reader);
        if (text.equals(mail)) {
            return text.map(both -> new Offer(both, phone, email)).stream().toList();
        }
        return Stream.concat(
                        mail.map(only -> new Offer(only, null, email)).stream(),
                        text.map(only -> new Offer(only, phone, null)).stream())
                .toList();
    }

    private Optional<CustomerMessage> message(
            ComingCustomer customer, Channel channel, @Nullable String address, Reader reader) {
        var permitted = customer.about(matter -> permits(matter, channel, customer));
        return address == null || permitted.cars().isEmpty()
                ? Optional.empty()
                : Optional.of(CustomerMessage.of(permitted, letterhead, desk.today(), reader));
    }

    /** The e-mail that may be written to a customer, with the matters that it is about; empty where none may. */
    Optional<Proposed> mail(ComingCustomer customer) {
        var reader = desk.reader(customer.customer());
        var permitted = customer.about(matter -> permits(matter, Channel.E_MAIL, customer));
        return message(customer, Channel.E_MAIL, customer.customer().email(), reader)
                .map(message -> new Proposed(permitted, message, reader.language()));
    }

    /**
     * An e-mail that may be written.
     *
     * @param customer with what it is about
     */
    record Proposed(ComingCustomer customer, CustomerMessage message, Language language) {}

    /** Whether an e-mail about these matters may still go to a customer; who declined since is left alone. */
    boolean permitsMail(String customerId, List<AskedMatter> about) {
        return about.stream()
                .allMatch(asked -> reach.permits(customerId, asked.matter().purpose(), Channel.E_MAIL));
    }

    private boolean permits(Matter matter, Channel channel, ComingCustomer customer) {
        return reach.permits(customer.customer().id(), matter.purpose(), channel);
    }
}
