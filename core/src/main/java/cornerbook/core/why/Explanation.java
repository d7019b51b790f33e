package cornerbook.core.why;

import cornerbook.core.say.Said;
import java.util.List;

/**
 * What stands beside a result.
 *
 * @param cautions what to mind before the number is used, gravest first; each one sentence
 * @param steps how it was found, in the order of computing
 */
public record Explanation(List<Said> cautions, List<Step> steps) {
    public Explanation {
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }
}
