package cornerbook.core.why;

import cornerbook.core.say.Said;
import java.util.List;

/**
 * A result that says what to mind and how it was found. Its parts are the lines of its answer and the fields of its JSON:
 * where it has more than eight, that is why.
 */
public interface Explained {
    Explanation explanation();

    default List<Said> cautions() {
        return explanation().cautions();
    }

    default List<Step> steps() {
        return explanation().steps();
    }
}
