package cornerbook.app.sheet.label;

import cornerbook.app.sheet.SheetSaid;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Refused;

/**
 * Where printing begins.
 *
 * @param first the first label of the first sheet that is still there, counted from 1 along the rows
 * @param rightMm how far to move all to the right, as a printer may need it; negative to the left
 * @param downMm how far to move all down; negative up
 */
public record LabelPlace(LabelPaper paper, int first, double rightMm, double downMm) {
    private static final double FARTHEST_MM = 10;

    /** @throws Refused when the paper has no such place */
    public LabelPlace {
        if (first < 1 || first > paper.count()) {
            throw new Refused(new SheetSaid.FirstLabel(first, paper.count()));
        }
        if (!(Math.abs(rightMm) <= FARTHEST_MM && Math.abs(downMm) <= FARTHEST_MM)) {
            throw new Refused(new SheetSaid.LabelsMoved(
                    Amount.exact(rightMm, "mm"),
                    Amount.exact(downMm, "mm"),
                    new Between(-FARTHEST_MM, FARTHEST_MM, "mm", 0)));
        }
    }

    /** At the beginning of a whole sheet. */
    public static LabelPlace of(LabelPaper paper) {
        return new LabelPlace(paper, 1, 0, 0);
    }
}
