package cornerbook.app.book.work;

import java.time.Instant;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;

/**
 * Work that was advised or required, and that the customer did not want; or wants after all. Of each advice the last one counts;
 * those before stay in the book.
 *
 * @param id unique in the book, born where it was entered
 * @param advice which one, by its key in the findings of the visit
 * @param sentence what was advised, as it was told
 * @param declined false where the customer wants it after all
 * @param saidBy who said so, of the customer's side
 * @param person who wrote it down; empty where a browser of the shop's own machine did
 * @param madeAt by the clock where it was entered, which decides nothing
 */
public record Declined(
        String id, String advice, String sentence, boolean declined, String saidBy, String person, Instant madeAt) {
    /** What the customer does not want, in the order in which it was first said. */
    public static List<Declined> standing(Collection<Declined> earliestFirst) {
        var last = new LinkedHashMap<String, Declined>();
        earliestFirst.forEach(each -> last.put(each.advice, each));
        return last.values().stream().filter(Declined::declined).toList();
    }
}
