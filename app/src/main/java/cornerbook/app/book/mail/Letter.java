package cornerbook.app.book.mail;

import cornerbook.app.book.coming.AskedMatter;
import java.util.List;

/**
 * What an e-mail to a customer says.
 *
 * @param id of the e-mail
 * @param language tag of the language of its text
 * @param text as it is kept; a secret that went out in it stands in it as “…”
 * @param about the matters that it is about; empty for one that asks for a day by an address
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
