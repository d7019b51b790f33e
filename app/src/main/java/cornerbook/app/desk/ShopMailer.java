package cornerbook.app.desk;

import cornerbook.app.mail.MailPassword;
import cornerbook.app.mail.MailSaid;
import cornerbook.app.mail.Mailer;
import cornerbook.core.say.Refused;
import java.util.Optional;
import javax.net.ssl.SSLSocketFactory;

/** The server that takes the shop's e-mails. */
public final class ShopMailer {
    private ShopMailer() {}

    /**
     * Ready to send.
     *
     * @param shop name of the sender
     * @return empty where no server was entered
     * @throws Refused when it wants a password and the program was started without one
     */
    public static Optional<Mailer> find(Desk desk, String shop) {
        return desk.book().mails().findServer().map(server -> {
            Optional<String> password =
                    server.login().isEmpty() ? Optional.empty() : MailPassword.find(System.getenv());
            if (!server.login().isEmpty() && password.isEmpty()) {
                throw new Refused(new MailSaid.PasswordMissing(MailPassword.VARIABLE, MailPassword.FILE_VARIABLE));
            }
            return new Mailer(server, password.orElse(null), shop, (SSLSocketFactory) SSLSocketFactory.getDefault());
        });
    }
}
