package cornerbook.app.sheet;

import cornerbook.core.say.Amount;
import cornerbook.words.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The depths of a tread from the outside to the inside, with the unit once: "5.2 / – / 5.0 mm". */
final class TreadAcross {
    private static final String NOT_READ = "–";

    private TreadAcross() {}

    static String words(List<OptionalDouble> depthsMm, Reader reader) {
        var words = new ArrayList<String>();
        boolean unit = false;
        for (var depthMm : depthsMm.reversed()) {
            if (depthMm.isEmpty()) {
                words.addFirst(NOT_READ);
            } else {
                var amount = Amount.exact(depthMm.getAsDouble(), "mm");
                words.addFirst(unit ? reader.number(amount) : reader.say(amount));
                unit = true;
            }
        }
        return String.join(" / ", words);
    }
}
