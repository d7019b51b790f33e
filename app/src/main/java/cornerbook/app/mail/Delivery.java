package cornerbook.app.mail;

import cornerbook.core.say.Said;

/**
 * What became of an e-mail.
 *
 * @param answer what the server said, or why it could not be asked; one line
 */
public record Delivery(Outcome outcome, String answer) {
    private static final int LONGEST_ANSWER = 500;

    /** How far it came. */
    public enum Outcome implements Said {
        /** The server has taken it upon itself to deliver it. */
        TAKEN,
        /** The server does not take it, as it is. */
        REFUSED,
        /** The server was not reached, or did not let the shop in: it has nothing. */
        NOT_SENT,
        /** The line broke before the server's answer: it may have it or not. */
        UNKNOWN
    }

    public Delivery {
        answer = answer.replaceAll("\\s+", " ").strip();
        if (answer.length() > LONGEST_ANSWER) {
            answer = answer.substring(0, LONGEST_ANSWER);
        }
    }
}
