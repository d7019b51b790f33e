package cornerbook.app.mail;

import jakarta.mail.Message;
import jakarta.mail.MessagingException;
import jakarta.mail.SendFailedException;
import jakarta.mail.Session;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import java.io.UnsupportedEncodingException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Date;
import java.util.Properties;
import javax.net.ssl.SSLSocketFactory;
import org.eclipse.angus.mail.smtp.SMTPAddressFailedException;
import org.eclipse.angus.mail.smtp.SMTPSendFailedException;
import org.eclipse.angus.mail.smtp.SMTPTransport;
import org.jspecify.annotations.Nullable;

/** Gives e-mails to a server, one at a time, and tells what it said. A password only goes over a line that is encrypted. */
public final class Mailer {
    /** Of each step: a person waits. */
    private static final int PATIENCE_MILLISECONDS = 15_000;

    private final MailServer server;
    private final @Nullable String password;
    private final String shop;
    private final SSLSocketFactory encryption;

    /**
     * For a server.
     *
     * @param password null where the server asks for none
     * @param shop its name as the receiver reads it; may be empty
     * @param encryption who is trusted
     */
    public Mailer(MailServer server, @Nullable String password, String shop, SSLSocketFactory encryption) {
        this.server = server;
        this.password = password;
        this.shop = shop;
        this.encryption = encryption;
    }

    /** Gives one e-mail to the server; returns when it has answered, or the line is broken. */
    public Delivery send(Mail mail, Instant at) {
        var session = Session.getInstance(properties());
        MimeMessage message;
        try {
            message = message(session, mail, at);
        } catch (MessagingException | UnsupportedEncodingException e) {
            return new Delivery(Delivery.Outcome.REFUSED, String.valueOf(e.getMessage()));
        }
        try (var transport = (SMTPTransport) session.getTransport()) {
            try {
                if (server.login().isEmpty()) {
                    transport.connect();
                } else {
                    transport.connect(server.login(), password);
                }
            } catch (MessagingException e) {
                return new Delivery(Delivery.Outcome.NOT_SENT, String.valueOf(e.getMessage()));
            }
            return hand(transport, message);
        } catch (MessagingException e) {
            // Thrown by closing, when all is said: the answer that came first is returned before.
            return new Delivery(Delivery.Outcome.UNKNOWN, String.valueOf(e.getMessage()));
        }
    }

    private static Delivery hand(SMTPTransport transport, MimeMessage message) {
        try {
            transport.sendMessage(message, message.getAllRecipients());
            return new Delivery(Delivery.Outcome.TAKEN, answer(transport));
        } catch (SendFailedException e) {
            int code = code(e);
            return new Delivery(
                    code < 0 ? Delivery.Outcome.UNKNOWN : Delivery.Outcome.REFUSED, String.valueOf(detail(e).getMessage()));
        } catch (MessagingException e) {
            return new Delivery(Delivery.Outcome.UNKNOWN, String.valueOf(e.getMessage()));
        }
    }

    /** The reply code of RFC 5321, section 4.2; below 0 where the line broke before one. */
    private static int code(MessagingException failure) {
        return switch (detail(failure)) {
            case SMTPAddressFailedException address -> address.getReturnCode();
            case SMTPSendFailedException send -> send.getReturnCode();
            default -> -1;
        };
    }

    /** What was said of the one receiver, where that is what failed. */
    private static Exception detail(MessagingException failure) {
        for (Exception next = failure; next instanceof MessagingException each; next = each.getNextException()) {
            if (each instanceof SMTPAddressFailedException) {
                return each;
            }
        }
        return failure;
    }

    private static String answer(SMTPTransport transport) {
        var answer = transport.getLastServerResponse();
        return answer == null ? "" : answer;
    }

    private Properties properties() {
        var properties = new Properties();
        properties.setProperty("mail.transport.protocol", "smtp");
        properties.setProperty("mail.smtp.host", server.host());
        properties.setProperty("mail.smtp.port", Integer.toString(server.port()));
        for (var step : new String[] {"connectiontimeout", "timeout", "writetimeout"}) {
            properties.setProperty("mail.smtp." + step, Integer.toString(PATIENCE_MILLISECONDS));
        }
        properties.setProperty("mail.smtp.auth", Boolean.toString(!server.login().isEmpty()));
        boolean starts = server.security() == MailServer.Security.STARTTLS;
        properties.setProperty("mail.smtp.starttls.enable", Boolean.toString(starts));
        properties.setProperty("mail.smtp.starttls.required", Boolean.toString(starts));
        properties.setProperty(
                "mail.smtp.ssl.enable", Boolean.toString(server.security() == MailServer.Security.TLS));
        properties.setProperty("mail.smtp.ssl.checkserveridentity", "true");
        properties.put("mail.smtp.ssl.socketFactory", encryption);
        properties.setProperty("mail.smtp.localhost", "localhost");
        return properties;
    }

    private MimeMessage message(Session session, Mail mail, Instant at)
            throws MessagingException, UnsupportedEncodingException {
        var message = new MimeMessage(session) {
            @Override
            protected void updateMessageID() throws MessagingException {
                setHeader("Message-ID", "<" + mail.id() + "@" + server.domain() + ">");
            }
        };
        message.setFrom(new InternetAddress(server.sender(), shop, StandardCharsets.UTF_8.name()));
        message.setRecipient(Message.RecipientType.TO, new InternetAddress(mail.address(), true));
        message.setSubject(mail.subject(), StandardCharsets.UTF_8.name());
        message.setText(mail.text(), StandardCharsets.UTF_8.name());
        message.setHeader("Content-Language", mail.language());
        // RFC 2369, section 3.2; the one click of RFC 8058 needs an address on the internet, which a shop has not.
        message.setHeader("List-Unsubscribe", "<mailto:" + server.sender() + "?subject=" + inAddress(mail.stopWord()) + ">");
        message.setSentDate(Date.from(at));
        message.saveChanges();
        return message;
    }

    /** RFC 6068, section 2: what is not ASCII stands in percent signs, and no blank is a plus sign. */
    private static String inAddress(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
