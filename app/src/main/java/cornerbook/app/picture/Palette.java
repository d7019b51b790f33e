package cornerbook.app.picture;

import cornerbook.core.finding.Verdict;

/**
 * The colours of the house: slate, ochre and plum on paper white. Each stands at 4.5:1 or more against the paper (WCAG
 * 2.2, success criterion 1.4.3), the hairlines apart, which carry no meaning.
 */
public final class Palette {
    public static final String PAPER = "#fbf9f4";
    public static final String INK = "#222c35";
    public static final String SLATE = "#2f3b46";
    public static final String OCHRE = "#8a5700";
    public static final String PLUM = "#6d2352";
    /** Hairlines, and the body of the car. */
    public static final String HAIRLINE = "#c9c5ba";
    /** Rubber, and the faces that something else is drawn on. */
    public static final String SHADE = "#e8e4d9";

    /** The band in which a value may lie. */
    public static final String BAND = "#e6d3ac";

    private Palette() {}

    /** The colour of a verdict; the shape of its mark and its word say the same. */
    public static String of(Verdict verdict) {
        return switch (verdict) {
            case HOLDS -> SLATE;
            case RUNS_OUT -> OCHRE;
            case SPENT, UNSAFE -> PLUM;
        };
    }
}
