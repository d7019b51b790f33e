package cornerbook.app.picture.store;

import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.store.Rack;
import cornerbook.words.Reader;
import java.util.List;

/**
 * A rack as one stands before it: a box for each place, the highest shelf on top, filled as far as sets lie there. A place to which the
 * set of a car will come back has a dot. A long rack goes on below in further strips.
 */
public final class RackFront {
    private static final int IN_STRIP = 12;
    private static final int LEFT = 24;
    private static final int COLUMN = 30;
    private static final int BOX_WIDTH = 24;
    private static final int ROW = 30;
    private static final int BOX_HEIGHT = 22;
    private static final int FOOT = 26;
    private static final int TOP = 4;
    private static final double LETTERS = 11;
    private static final double DOT = 3.5;

    private RackFront() {}

    /**
     * What is at one place.
     *
     * @param lying sets that lie there; may be more than fit, where somebody wrote so
     * @param kept whether the set of a car will come back to it
     */
    public record Filled(int lying, boolean kept) {}

    /**
     * Draws the rack.
     *
     * @param filled of each of its places, in their order
     */
    public static String svg(Rack rack, List<Filled> filled, Reader reader) {
        int shelves = rack.naming().shelves();
        int columns = rack.naming().places();
        int strips = (columns + IN_STRIP - 1) / IN_STRIP;
        int stripHeight = shelves * ROW + FOOT;
        int free = filled.stream()
                .mapToInt(each -> Math.max(0, rack.capacity() - each.lying()))
                .sum();
        var svg = new Svg(
                LEFT + Math.min(columns, IN_STRIP) * COLUMN,
                TOP + strips * stripHeight,
                reader.labels("app/picture/store")
                        .of(
                                "rack-front",
                                "rack",
                                rack.naming().pattern(),
                                "free",
                                free,
                                "of",
                                filled.size() * rack.capacity()));
        for (int place = 0; place < columns; place++) {
            int strip = place / IN_STRIP;
            double x = LEFT + place % IN_STRIP * COLUMN + (COLUMN - BOX_WIDTH) / 2.0;
            double top = TOP + strip * stripHeight;
            for (int shelf = 0; shelf < shelves; shelf++) {
                double y = top + (shelves - 1 - shelf) * ROW;
                box(svg, x, y, filled.get(shelf * columns + place), rack.capacity());
                if (place % IN_STRIP == 0 && shelves > 1) {
                    words(svg, LEFT / 2.0, y + BOX_HEIGHT - LETTERS / 2, Integer.toString(shelf + 1));
                }
            }
            words(svg, x + BOX_WIDTH / 2.0, top + shelves * ROW + LETTERS, Integer.toString(place + 1));
        }
        return svg.close();
    }

    private static void box(Svg svg, double x, double y, Filled place, int capacity) {
        svg.rectangle(x, y, BOX_WIDTH, BOX_HEIGHT, 2, Palette.PAPER, Palette.SLATE);
        double part = Math.min(1, (double) place.lying() / capacity);
        if (part > 0) {
            svg.rectangle(
                    x,
                    y + BOX_HEIGHT * (1 - part),
                    BOX_WIDTH,
                    BOX_HEIGHT * part,
                    2,
                    place.lying() > capacity ? Palette.PLUM : Palette.SLATE,
                    Palette.SLATE);
        }
        if (place.kept()) {
            svg.circle(
                    x + BOX_WIDTH / 2.0,
                    y + BOX_HEIGHT / 2.0,
                    DOT,
                    part > 0 ? Palette.PAPER : Palette.OCHRE,
                    Palette.OCHRE,
                    1,
                    "");
        }
    }

    private static void words(Svg svg, double x, double y, String words) {
        svg.words(x, y, LETTERS, Anchor.MIDDLE, Palette.INK, false, words);
    }
}
