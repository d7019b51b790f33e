package cornerbook.core.why;

import cornerbook.core.say.Said;
import java.util.List;

/** A result that says what to mind and how it was found. */
public interface Explained {
    /** What to mind before the number is used, gravest first; each one sentence. */
    List<Said> cautions();

    /** How it was found, in the order of computing. */
    List<Step> steps();
}
