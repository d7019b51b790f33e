package cornerbook.app.book.mail;

import cornerbook.core.say.Said;

/** What people are told when the book refuses something of an e-mail. */
sealed interface MailBookSaid extends Said {
    record NoSuchMail() implements MailBookSaid {}

    /** The server has taken it, or somebody else is sending it again. */
    record SentMeanwhile() implements MailBookSaid {}
}
