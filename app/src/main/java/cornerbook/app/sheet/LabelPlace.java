package cornerbook.app.sheet;

/**
 * Where printing begins.
 *
 * @param first the first label of the first sheet that is still there, counted from 1 along the rows
 * @param rightMm how far to move all to the right, as a printer may need it; negative to the left
 * @param downMm how far to move all down; negative up
 */
public record LabelPlace(LabelPaper paper, int first, double rightMm, double downMm) {
    private static final double FARTHEST_MM = 10;

    /** @throws IllegalArgumentException with one sentence when the paper has no such place */
    public LabelPlace {
        if (first < 1 || first > paper.count()) {
            throw new IllegalArgumentException(
                    "The first label is %d, expected 1 to %d.".formatted(first, paper.count()));
        }
        if (!(Math.abs(rightMm) <= FARTHEST_MM && Math.abs(downMm) <= FARTHEST_MM)) {
            throw new IllegalArgumentException(
                    "The labels are moved by %s and %s mm, expected −10 to 10 mm.".formatted(rightMm, downMm));
        }
    }

    /** At the beginning of a whole sheet. */
    public static LabelPlace of(LabelPaper paper) {
        return new LabelPlace(paper, 1, 0, 0);
    }
}
