package cornerbook.app.desk.coming;

import cornerbook.app.book.customer.CustomerLedger;
import cornerbook.app.book.mail.KeptMail;
import cornerbook.app.desk.Slice;
import cornerbook.app.desk.link.CustomerLinks;
import cornerbook.words.Reader;

/**
 * The e-mails that were written.
 *
 * @param shop who reads, by the shop's time
 * @param error why one was not sent again; empty where none was refused
 */
public record SentMailPage(Slice<KeptMail> slice, Reader shop, String error) {
    /** Whether its customer was erased, and with the customer what was written. */
    public boolean isErased(KeptMail mail) {
        return mail.letter().address().equals(CustomerLedger.ERASED);
    }

    /** The page with others on it. */
    public String address(int from) {
        return CustomerLinks.sentMail() + "?from=" + from;
    }
}
