package cornerbook.app.picture;

import cornerbook.app.picture.Svg.Anchor;

/** A tablet that lies there, with the one line of its settings that a finger looks for; no maker's, drawn by the house. */
public final class TabletScreen {
    private static final int WIDTH = 300;
    private static final int HEIGHT = 170;
    private static final int LEFT = 24;
    private static final int RIGHT = 276;
    private static final int ROW_HEIGHT = 34;
    private static final int[] OTHER_ROWS = {52, 132};
    private static final int TAPPED_ROW = 82;

    private TabletScreen() {}

    /**
     * The screen.
     *
     * @param title what stands at its top
     * @param tapped the line that is touched, at most 28 letters wide
     * @param description what a screen reader says of it
     */
    public static String svg(String title, String tapped, String description) {
        var svg = new Svg(WIDTH, HEIGHT, description);
        svg.rectangle(4, 4, WIDTH - 8, HEIGHT - 8, 14, Palette.SLATE, Palette.SLATE);
        svg.rectangle(14, 14, WIDTH - 28, HEIGHT - 28, 4, Palette.PAPER, Palette.PAPER);
        svg.words(LEFT, 36, 13, Anchor.START, Palette.SLATE, true, title);
        svg.line(14, 44, WIDTH - 14, 44, Palette.HAIRLINE, 1.5, "");
        for (int y : OTHER_ROWS) {
            svg.rectangle(LEFT, y + 8, 130, 7, 3, Palette.HAIRLINE, "none");
        }
        svg.rectangle(LEFT - 6, TAPPED_ROW, RIGHT - LEFT + 12, ROW_HEIGHT, 6, Palette.BAND, Palette.PLUM);
        svg.words(LEFT, TAPPED_ROW + 22, 13, Anchor.START, Palette.INK, true, tapped);
        // Where the finger goes.
        svg.circle(RIGHT - 12, TAPPED_ROW + ROW_HEIGHT / 2.0, 7, Palette.PLUM, "none", 0, "");
        svg.circle(RIGHT - 12, TAPPED_ROW + ROW_HEIGHT / 2.0, 12, "none", Palette.PLUM, 2, "");
        return svg.close();
    }
}
