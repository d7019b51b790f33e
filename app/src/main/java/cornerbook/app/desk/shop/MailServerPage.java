package cornerbook.app.desk.shop;

import cornerbook.app.desk.Form;
import cornerbook.app.mail.MailPassword;
import cornerbook.app.mail.MailServer.Security;
import java.util.List;

/**
 * The server that takes the shop's e-mails.
 *
 * @param typed what stands in the fields
 * @param kept whether one is kept
 * @param passwordKnown whether the program was given a password
 * @param error what was wrong with what was typed; empty when nothing was
 */
public record MailServerPage(Form typed, boolean kept, boolean passwordKnown, String error) {
    public List<Security> securities() {
        return List.of(Security.values());
    }

    public String variable() {
        return MailPassword.VARIABLE;
    }

    public String fileVariable() {
        return MailPassword.FILE_VARIABLE;
    }
}
