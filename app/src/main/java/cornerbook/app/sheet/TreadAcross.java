package cornerbook.app.sheet;

import cornerbook.core.say.Amount;
import cornerbook.words.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The depths of a tread from the outside to the inside, with the unit once: "5.2 / – / 5.0 mm". */
public final class TreadAcross {
    private static final String NOT_READ = "–";
    /** As a depth gauge is read. */
    private static final int LEAST_DECIMALS = 1;

    private TreadAcross() {}

    public static String words(List<OptionalDouble> depthsMm, Reader reader) {
        var words = new ArrayList<String>();
        int decimals = Math.max(
                LEAST_DECIMALS,
                depthsMm.stream()
                        .flatMapToDouble(OptionalDouble::stream)
                        .mapToInt(depthMm -> Amount.exact(depthMm, "mm").decimals())
                        .max()
                        .orElse(0));
        boolean unit = false;
        for (var depthMm : depthsMm.reversed()) {
            if (depthMm.isEmpty()) {
                words.addFirst(NOT_READ);
            } else {
                var amount = new Amount(depthMm.getAsDouble(), "mm", decimals);
                words.addFirst(unit ? reader.number(amount) : reader.say(amount));
                unit = true;
            }
        }
        return String.join(" / ", words);
    }
}
