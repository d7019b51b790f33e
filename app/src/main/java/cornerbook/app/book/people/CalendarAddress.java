package cornerbook.app.book.people;

import cornerbook.words.Language;
import java.time.Instant;

/**
 * That a calendar may read the appointments of somebody.
 *
 * @param whose name of the person, or that of the shop
 * @param secretHash SHA-256 of the secret in the address
 * @param language in which the calendar is written
 */
public record CalendarAddress(String whose, String secretHash, Language language, Instant madeAt) {
    /** Stands for the whole shop; no person has it. */
    public static final String SHOP = "";
}
