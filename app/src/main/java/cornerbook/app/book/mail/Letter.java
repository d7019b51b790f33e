package cornerbook.app.book.mail;

import cornerbook.app.book.coming.AskedMatter;
import java.util.List;

/**
 * What an e-mail to a customer says.
 *
 * @param id of the e-mail
 * @param language tag of the language of its text
 * @param about the matters that it is about
 */
public record Letter(
        String id,
        String customerId,
        String address,
        String language,
        String subject,
        String text,
        List<AskedMatter> about) {
    public Letter {
        about = List.copyOf(about);
    }
}
