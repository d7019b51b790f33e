package cornerbook.app.mail;

import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;

/**
 * The server that takes the shop's e-mails.
 *
 * @param port as 587 with STARTTLS, or 465 with TLS (RFC 8314)
 * @param sender the address from which they come
 * @param login name with which the server lets the shop in; empty where it asks for none
 */
public record MailServer(String host, int port, Security security, String sender, String login) {
    private static final int MOST_PORT = 65_535;
    private static final int LONGEST_HOST = 253;
    private static final int LONGEST_ADDRESS = 254;

    /** How the line to the server is closed to others. */
    public enum Security implements Said {
        /** Encrypted after the first words, or not used (RFC 3207). */
        STARTTLS,
        /** Encrypted from the first byte (RFC 8314). */
        TLS,
        /** In the open: a server on this machine. */
        NONE
    }

    public MailServer {
        if (!host.matches("[A-Za-z0-9.:-]{1,%s}".formatted(LONGEST_HOST))) {
            throw new Refused(new MailSaid.NoHost());
        }
        if (port < 1 || port > MOST_PORT) {
            throw new Refused(new MailSaid.PortOutOfRange(1, MOST_PORT));
        }
        if (!isAddress(sender)) {
            throw new Refused(new MailSaid.NoSender());
        }
        if (security == Security.NONE && !login.isEmpty()) {
            throw new Refused(new MailSaid.LoginInTheOpen());
        }
    }

    /** Whether something looks like an e-mail address: one sign @ with something on both sides, and no blanks. */
    public static boolean isAddress(String text) {
        return text.length() <= LONGEST_ADDRESS && text.matches("[^\\s@<>\",;:()\\[\\]\\\\]+@[^\\s@<>\",;:()\\[\\]\\\\]+");
    }

    /** What stands behind the sign @ of the sender. */
    public String domain() {
        return sender.substring(sender.indexOf('@') + 1);
    }
}
