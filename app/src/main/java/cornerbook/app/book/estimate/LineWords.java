package cornerbook.app.book.estimate;

/**
 * What a line of an estimate says, as the customer read it.
 *
 * @param whole what is done, and why
 * @param brief what is done; the whole where no more is known
 */
public record LineWords(String whole, String brief) {
    /** What the shop typed, or an older program kept. */
    public static LineWords of(String words) {
        return new LineWords(words, words);
    }
}
