package cornerbook.app.book.bay;

import cornerbook.core.say.Said;
import java.time.Instant;
import java.util.List;

/**
 * The car was handed over.
 *
 * @param id unique in the book, born at the tablet
 * @param reasons one for each caution that was still open
 */
public record Departure(String id, String person, Instant madeAt, List<Reason> reasons) {
    public Departure {
        reasons = List.copyOf(reasons);
    }

    /** What was left open, one sentence each, with who let the car go and why. */
    public List<Said> leftOpen() {
        return reasons.stream()
                .<Said>map(reason -> new BaySaid.LeftOpen(person, reason.sentence(), reason.reason()))
                .toList();
    }

    /**
     * Why the car leaves all the same.
     *
     * @param caution which caution, as the bay sheet names it
     * @param sentence what was open, as it was told to that person
     */
    public record Reason(String caution, String sentence, String reason) {}
}
