package cornerbook.app.web;

import cornerbook.core.visit.Assessment;
import java.time.Instant;
import java.util.List;

/** Makes the hand-over sheet as a PDF. */
interface SheetMaker {
    /**
     * The sheet of one visit.
     *
     * @param leftOpen cautions that were open when the car left, each with its reason
     */
    byte[] make(Assessment assessment, Instant madeAt, List<String> leftOpen);
}
