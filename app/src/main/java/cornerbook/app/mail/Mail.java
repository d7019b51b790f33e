package cornerbook.app.mail;

/**
 * An e-mail.
 *
 * @param id by which the receiving side knows that it is the same one, when it is sent again
 * @param address to whom
 * @param language tag of the language of the text
 * @param stopWord that the receiver answers to be left alone
 */
public record Mail(String id, String address, String language, String subject, String text, String stopWord) {}
