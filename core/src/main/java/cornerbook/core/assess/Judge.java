package cornerbook.core.assess;

import cornerbook.core.finding.Case;
import cornerbook.core.finding.Finding;
import cornerbook.core.say.Said;
import java.util.List;

/** What a room finds out about a case. */
@FunctionalInterface
interface Judge {
    /**
     * The findings, in any order.
     *
     * @param notJudged takes a line for each thing that could not be judged, with what is missing for it
     */
    List<Finding> judge(Case given, List<Said> notJudged);
}
