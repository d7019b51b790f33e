package cornerbook.app.desk.coming;

import cornerbook.app.book.mail.KeptMail;
import cornerbook.app.desk.Links;
import cornerbook.app.desk.Slice;
import cornerbook.words.Reader;

/**
 * The e-mails that were written.
 *
 * @param shop who reads, by the shop's time
 * @param error why one was not sent again; empty where none was refused
 */
public record SentMailPage(Slice<KeptMail> slice, Reader shop, String error) {
    /** The page with others on it. */
    public String address(int from) {
        return Links.sentMail() + "?from=" + from;
    }
}
