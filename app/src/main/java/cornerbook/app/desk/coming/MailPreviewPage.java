package cornerbook.app.desk.coming;

import cornerbook.app.book.coming.ComingLedger.Days;
import cornerbook.app.mail.MailServer;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The e-mails that may be written, before they are sent.
 *
 * @param from how many customers of the list are passed over
 * @param server null where none is known
 * @param error why nothing was sent; empty where nothing was refused
 */
public record MailPreviewPage(
        Days days, int from, @Nullable MailServer server, List<Preview> list, String error) {
    public MailPreviewPage {
        list = List.copyOf(list);
    }

    /**
     * One of them.
     *
     * @param id that it will have
     * @param seen by which it is known that what is sent is what was shown
     * @param writtenOn when the customer was written to about the same lately; null when not
     */
    public record Preview(
            String id,
            String customerId,
            String customerName,
            String address,
            String language,
            CustomerMessage message,
            String seen,
            @Nullable LocalDate writtenOn) {}
}
