package cornerbook.app.sheet.label;

import cornerbook.core.say.Said;
import java.util.Arrays;
import java.util.Optional;

/**
 * What labels are printed on: one to a page of a roll, or a sheet of many, all told by their measures, a column of the table
 * each. Sheets of these measures are sold everywhere; their margins and gaps are common practice, no source.
 */
public enum LabelPaper implements Said {
    ROLL_62(62, 37, 1, 1, 62, 37, 0, 0, 0),
    A4_3_BY_8(210, 297, 3, 8, 70, 37, 0, 0.5, 0),
    A4_2_BY_7(210, 297, 2, 7, 99.1, 38.1, 4.65, 15.15, 2.5),
    LETTER_3_BY_10(215.9, 279.4, 3, 10, 66.675, 25.4, 4.7625, 12.7, 3.175);

    private final double pageWidthMm;
    private final double pageHeightMm;
    private final int across;
    private final int down;
    private final double widthMm;
    private final double heightMm;
    private final double leftMm;
    private final double topMm;
    private final double gapMm;

    LabelPaper(
            double pageWidthMm,
            double pageHeightMm,
            int across,
            int down,
            double widthMm,
            double heightMm,
            double leftMm,
            double topMm,
            double gapMm) {
        this.pageWidthMm = pageWidthMm;
        this.pageHeightMm = pageHeightMm;
        this.across = across;
        this.down = down;
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.leftMm = leftMm;
        this.topMm = topMm;
        this.gapMm = gapMm;
    }

    public static Optional<LabelPaper> find(String name) {
        return Arrays.stream(values())
                .filter(paper -> paper.name().equals(name))
                .findFirst();
    }

    /** How many labels a page has. */
    public int count() {
        return across * down;
    }

    String css() {
        return "@page { size: %smm %smm; margin: 0; } .sheet { width: %smm; height: %smm; } .label { width: %smm; height: %smm; }"
                .formatted(pageWidthMm, pageHeightMm, pageWidthMm, pageHeightMm - 0.5, widthMm, heightMm);
    }

    double widthMm() {
        return widthMm;
    }

    double heightMm() {
        return heightMm;
    }

    /** From the left edge of the page to a label; rows fill from the left. */
    double leftOfMm(int label) {
        return leftMm + label % across * (widthMm + gapMm);
    }

    double topOfMm(int label) {
        int row = label / across;
        return topMm + row * heightMm;
    }
}
