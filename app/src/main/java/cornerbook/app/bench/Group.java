package cornerbook.app.bench;

import java.util.List;
import java.util.function.Function;

/**
 * Questions that are answered together.
 *
 * @param name in the page's address behind the number sign
 * @param title above them
 * @param note what has to be known before, may be empty
 * @param answer the parts that what was given allows; none when nothing was asked
 */
public record Group(String name, String title, String note, List<Ask> asks, Function<Given, List<Part>> answer) {
    public Group {
        asks = List.copyOf(asks);
    }
}
