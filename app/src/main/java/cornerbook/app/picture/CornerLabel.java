package cornerbook.app.picture;

import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.words.Reader;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What stands beside one corner of the car.
 *
 * @param caption what the heading is of, as "tread"; empty where it says so itself
 * @param heading the large words, as "5.2 mm" or a wheel tag
 * @param detail what stands below, in one line for who cannot see the picture; may be empty
 * @param lines the same in small words, each a line of its own
 * @param verdict null where nothing was judged; then there is no mark
 * @param lifeLeft share of the usable life, 0 to 1
 */
public record CornerLabel(
        String caption,
        String heading,
        String detail,
        List<String> lines,
        @Nullable Verdict verdict,
        double lifeLeft) {
    public CornerLabel {
        lines = List.copyOf(lines);
    }

    /** The lowest depth of the tyre at this corner, and the gravest of what was found there with what it is about. */
    public static CornerLabel ofDepth(Finding gravest, double lowestDepthMm, Reader reader) {
        var labels = reader.labels("app/picture");
        return new CornerLabel(
                labels.of("tread"),
                reader.say(new Amount(lowestDepthMm, "mm", 1)),
                labels.of("about", "part", gravest.subject().part(), "urgency", gravest.urgency()),
                List.of(reader.begin(gravest.subject().part()), reader.say(gravest.urgency())),
                gravest.verdict(),
                gravest.lifeLeft());
    }

    /** The lowest depth of the tyre at a corner of which nothing was found. */
    public static CornerLabel ofDepth(double lowestDepthMm, Reader reader) {
        return new CornerLabel(
                reader.labels("app/picture").of("tread"),
                reader.say(new Amount(lowestDepthMm, "mm", 1)),
                "",
                List.of(),
                null,
                0);
    }

    /** The wheel that belongs to this corner, with a word on it. */
    public static CornerLabel ofWheel(String tag, String detail) {
        return new CornerLabel("", tag, detail, List.of(detail), null, 0);
    }
}
