package cornerbook.app.bench;

import cornerbook.core.say.Said;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Questions that are answered together.
 *
 * @param name in the page's address behind the number sign
 * @param title above them
 * @param note what has to be known before, null where nothing has
 * @param needs names of the questions, its own and common ones, without which there is no answer
 * @param answer the parts that what was given allows; none when nothing was asked
 */
public record Group(
        String name,
        Said title,
        @Nullable Said note,
        List<Ask> asks,
        List<String> needs,
        Function<Given, List<Part>> answer) {
    public Group {
        needs = List.copyOf(needs);
        asks = List.copyOf(asks);
    }
}
