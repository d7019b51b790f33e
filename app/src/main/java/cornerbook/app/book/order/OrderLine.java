package cornerbook.app.book.order;

import cornerbook.core.order.Article;
import java.time.Instant;

/**
 * What was ordered at once of an article, and what became of it until now.
 *
 * @param ordered pieces
 * @param supplier as the person wrote it, may be empty
 * @param person may be empty at the desk, where nobody is known
 */
public record OrderLine(
        String id, Article article, int ordered, Became became, String supplier, String person, Instant madeAt) {
    /**
     * What became of its pieces.
     *
     * @param cameIn came in
     * @param calledOff will not come
     * @param given of those that came in, went to a car
     */
    public record Became(int cameIn, int calledOff, int given) {}

    /** Pieces that are still to come. */
    public int open() {
        return ordered - became.cameIn() - became.calledOff();
    }

    /** Pieces that lie in the shop. */
    public int there() {
        return became.cameIn() - became.given();
    }
}
