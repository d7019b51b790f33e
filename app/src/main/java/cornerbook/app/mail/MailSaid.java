package cornerbook.app.mail;

import cornerbook.core.say.Said;

/** What people are told of the server for e-mails, and of what it was given. */
public sealed interface MailSaid extends Said {
    record NoHost() implements MailSaid {}

    record PortOutOfRange(int least, int most) implements MailSaid {}

    record NoSender() implements MailSaid {}

    /** A password would go over the line for all to read. */
    record LoginInTheOpen() implements MailSaid {}

    /** The server wants a password, and none is known. */
    record PasswordMissing(String variable, String fileVariable) implements MailSaid {}

    record PasswordFileUnread(String variable) implements MailSaid {}
}
