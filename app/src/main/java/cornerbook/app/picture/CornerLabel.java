package cornerbook.app.picture;

import cornerbook.core.say.Amount;
import cornerbook.words.Reader;

import cornerbook.core.finding.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * What stands beside one corner of the car.
 *
 * @param heading the large words, as "5.2 mm" or a wheel tag
 * @param detail the small words below, may be empty
 * @param verdict null where nothing was judged; then there is no mark
 * @param lifeLeft share of the usable life, 0 to 1
 */
public record CornerLabel(
        String heading, String detail, @Nullable Verdict verdict, double lifeLeft) {
    /** The verdict and the lowest depth of the tyre at this corner. */
    public static CornerLabel ofDepth(Verdict verdict, double lifeLeft, double lowestDepthMm, Reader reader) {
        return new CornerLabel(
                reader.say(new Amount(lowestDepthMm, "mm", 1)), reader.say(verdict), verdict, lifeLeft);
    }

    /** The wheel that belongs to this corner, with a word on it. */
    public static CornerLabel ofWheel(String tag, String detail) {
        return new CornerLabel(tag, detail, null, 0);
    }
}
