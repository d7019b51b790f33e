package cornerbook.app.picture.air;

import cornerbook.core.say.Amount;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.air.LoadPressure;
import cornerbook.words.Reader;
import java.util.ArrayList;

/** What a tyre may carry over its cold pressure, with the load on it and the pressure judged. */
public final class LoadOverPressure {
    private static final int WIDTH = 420;
    private static final int HEIGHT = 250;
    private static final double LEFT_X = 20;
    private static final double RIGHT_X = 400;
    private static final double TOP_Y = 46;
    private static final double BOTTOM_Y = 196;
    private static final int PIECES = 40;
    static final String ROOM = "app/picture/air";

    private final LoadPressure load;
    private final double lowKpa;
    private final double highKpa;
    private final double lowKg;
    private final double highKg;

    private LoadOverPressure(LoadPressure load) {
        this.load = load;
        lowKpa = 0.85 * Math.min(load.neededKpa(), load.placardKpa());
        highKpa = 1.1 * Math.max(load.referenceKpa(), load.placardKpa());
        lowKg = 0.95 * Math.min(load.tyreLoadKg(), load.capacityAtKg(lowKpa));
        highKg = 1.03 * load.loadIndex().capacityKg();
    }

    public static String svg(LoadPressure load, Reader reader) {
        return new LoadOverPressure(load).draw(reader);
    }

    private String draw(Reader reader) {
        var labels = reader.labels(ROOM);
        boolean enough = load.placardKpa() >= load.neededKpa();
        var colour = enough ? Palette.SLATE : Palette.PLUM;
        var loadWords = labels.of("load-on-tyre", "load", Amount.of(load.tyreLoadKg(), "kg"));
        var neededWords = labels.of("needs", "pressure", Amount.of(load.neededKpa(), "kPa"));
        var placardWords = labels.of(
                "judged",
                "pressure",
                Amount.of(load.placardKpa(), "kPa"),
                "load",
                Amount.of(load.capacityAtPlacardKg(), "kg"));
        var svg = new Svg(
                WIDTH,
                HEIGHT,
                labels.of("load-over-pressure", "load", loadWords, "needed", neededWords, "judged", placardWords));
        var curve = new ArrayList<String>();
        for (int i = 0; i <= PIECES; i++) {
            double kpa = lowKpa + (highKpa - lowKpa) * i / PIECES;
            curve.add(Svg.number(x(kpa)) + " " + Svg.number(y(load.capacityAtKg(kpa))));
        }
        var joined = String.join("L", curve);
        svg.path(
                "M%sL%s %sL%s %sZ"
                        .formatted(
                                joined,
                                Svg.number(RIGHT_X),
                                Svg.number(BOTTOM_Y),
                                Svg.number(LEFT_X),
                                Svg.number(BOTTOM_Y)),
                Palette.SHADE,
                "none",
                0);
        svg.path("M" + joined, "none", Palette.SLATE, 3);
        svg.line(LEFT_X, y(load.tyreLoadKg()), RIGHT_X, y(load.tyreLoadKg()), Palette.OCHRE, 2, "7 3");
        svg.line(x(load.neededKpa()), y(load.tyreLoadKg()), x(load.neededKpa()), BOTTOM_Y, Palette.OCHRE, 2, "");
        svg.line(x(load.placardKpa()), y(load.capacityAtPlacardKg()), x(load.placardKpa()), BOTTOM_Y, colour, 2, "");
        svg.circle(x(load.placardKpa()), y(load.capacityAtPlacardKg()), 6, colour, Palette.PAPER, 2, "");
        svg.words(LEFT_X, 18, 13, Anchor.START, colour, true, placardWords);
        svg.words(LEFT_X, 36, 13, Anchor.START, Palette.OCHRE, true, "– – " + loadWords);
        double x = x(load.neededKpa());
        svg.words(x, BOTTOM_Y + 20, 13, x > WIDTH / 2.0 ? Anchor.END : Anchor.START, Palette.OCHRE, true, neededWords);
        svg.words(
                WIDTH / 2.0,
                BOTTOM_Y + 44,
                12,
                Anchor.MIDDLE,
                Palette.INK,
                false,
                labels.of("load-axis"));
        return svg.close();
    }

    private double x(double kpa) {
        return LEFT_X + (RIGHT_X - LEFT_X) * (kpa - lowKpa) / (highKpa - lowKpa);
    }

    private double y(double kg) {
        return BOTTOM_Y - (BOTTOM_Y - TOP_Y) * (kg - lowKg) / (highKg - lowKg);
    }
}
