package cornerbook.app.book.coming;

import cornerbook.core.coming.Matter;
import cornerbook.core.say.Refused;

/**
 * What a customer is asked about.
 *
 * @param visitId by which it is known that it is due
 */
public record AskedMatter(String visitId, Matter matter) {
    private static final char BETWEEN = ':';

    /** As a form sends it. */
    @Override
    public String toString() {
        return matter.name() + BETWEEN + visitId;
    }

    /**
     * What a form sent.
     *
     * @throws IllegalArgumentException when that is something else
     */
    public static AskedMatter parse(String text) {
        int end = text.indexOf(BETWEEN);
        for (var matter : Matter.values()) {
            if (end > 0 && matter.name().equals(text.substring(0, end))) {
                return new AskedMatter(text.substring(end + 1), matter);
            }
        }
        throw new Refused(new ComingBookSaid.NotDue());
    }
}
