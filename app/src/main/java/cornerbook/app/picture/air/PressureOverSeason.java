package cornerbook.app.picture.air;

import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.air.SeasonPressures;
import cornerbook.core.say.Amount;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a tyre will read cold, month by month, on mornings and up to the afternoons, and on the coldest morning, with placard and warning threshold. */
public final class PressureOverSeason {
    private static final int WIDTH = 420;
    private static final int HEIGHT = 266;
    private static final double LEFT_X = 20;
    private static final double RIGHT_X = 400;
    private static final double TOP_Y = 44;
    private static final double BOTTOM_Y = 204;

    private final SeasonPressures season;
    private final Reader reader;
    private final Labels labels;
    private final double lowKpa;
    private final double highKpa;

    private PressureOverSeason(SeasonPressures season, Reader reader) {
        this.season = season;
        this.reader = reader;
        this.labels = reader.labels(LoadOverPressure.ROOM);
        var all = Stream.concat(
                        season.months().stream()
                                .flatMap(month -> Stream.of(month.cold(), month.mild()))
                                .map(SeasonPressures.Expected::pressureKpa),
                        Stream.of(season.coldest().pressureKpa(), season.warningKpa(), season.placardKpa()))
                .mapToDouble(Double::doubleValue)
                .summaryStatistics();
        double room = 0.12 * (all.getMax() - all.getMin());
        lowKpa = all.getMin() - room;
        highKpa = all.getMax() + room;
    }

    /** The picture. */
    public static String svg(SeasonPressures season, Reader reader) {
        return new PressureOverSeason(season, reader).draw();
    }

    private String draw() {
        int points = season.months().size() + 1;
        var svg = new Svg(
                WIDTH,
                HEIGHT,
                labels.of(
                        "over-season",
                        "months",
                        season.months().stream().map(this::monthWords).collect(Collectors.joining(", ")),
                        "coldest",
                        words(season.coldest()),
                        "placard",
                        Amount.of(season.placardKpa(), "kPa"),
                        "warning",
                        Amount.of(season.warningKpa(), "kPa")));
        line(svg, season.placardKpa(), Palette.SLATE, "", Anchor.START, "placard-cold");
        line(svg, season.warningKpa(), Palette.PLUM, "7 3", Anchor.END, "warning-below");
        boolean spread = season.months().stream().anyMatch(SeasonPressures.ExpectedMonth::isSpread);
        var mornings = line(points, SeasonPressures.ExpectedMonth::cold);
        if (spread) {
            var afternoons = line(points, SeasonPressures.ExpectedMonth::mild);
            svg.path(
                    "M" + String.join("L", afternoons) + "L" + String.join("L", mornings.reversed()) + "Z",
                    Palette.BAND,
                    "none",
                    0);
        }
        svg.path("M" + String.join("L", mornings), "none", Palette.OCHRE, 3);
        boolean every = points <= 8;
        for (int i = 0; i < season.months().size(); i++) {
            var month = season.months().get(i);
            var cold = month.cold();
            svg.circle(x(i, points), y(cold.pressureKpa()), 5, Palette.PAPER, Palette.OCHRE, 2.5, "");
            if (every || i % 2 == 0) {
                label(svg, x(i, points), 22, reader.say(Amount.of(cold.temperatureC(), "°C")));
                label(svg, x(i, points), 6, name(month));
            }
        }
        var coldest = season.coldest();
        boolean warns = season.marginKpa() < 0;
        double x = x(points - 1, points);
        double y = y(coldest.pressureKpa());
        svg.path(
                "M%s %sL%s %sL%s %sL%s %sZ"
                        .formatted(
                                Svg.number(x),
                                Svg.number(y - 9),
                                Svg.number(x + 9),
                                Svg.number(y),
                                Svg.number(x),
                                Svg.number(y + 9),
                                Svg.number(x - 9),
                                Svg.number(y)),
                warns ? Palette.PLUM : Palette.SLATE,
                Palette.PAPER,
                1.5);
        svg.words(
                RIGHT_X,
                y - 15,
                13,
                Anchor.END,
                Palette.INK,
                true,
                reader.say(Amount.of(coldest.pressureKpa(), "kPa")));
        svg.words(
                x + 10,
                BOTTOM_Y + 22,
                12,
                Anchor.END,
                Palette.INK,
                true,
                reader.say(Amount.of(coldest.temperatureC(), "°C")));
        svg.words(RIGHT_X, BOTTOM_Y + 42, 12, Anchor.END, Palette.INK, false, labels.of("coldest-morning"));
        svg.words(
                LEFT_X,
                BOTTOM_Y + 42,
                12,
                Anchor.START,
                Palette.INK,
                false,
                labels.of(spread ? "mornings" : "month-by-month"));
        return svg.close();
    }

    private List<String> line(int points, Function<SeasonPressures.ExpectedMonth, SeasonPressures.Expected> of) {
        var line = new ArrayList<String>();
        for (var month : season.months()) {
            line.add(Svg.number(x(line.size(), points)) + " "
                    + Svg.number(y(of.apply(month).pressureKpa())));
        }
        return line;
    }

    private static void label(Svg svg, double x, double below, String words) {
        svg.words(x, BOTTOM_Y + below, 12, Anchor.MIDDLE, Palette.INK, false, words);
    }

    /** As people call it, empty where it is not known. */
    private String name(SeasonPressures.ExpectedMonth month) {
        return month.month() == null
                ? ""
                : month.month()
                        .getDisplayName(TextStyle.SHORT, reader.language().locale());
    }

    private String monthWords(SeasonPressures.ExpectedMonth month) {
        return month.isSpread()
                ? "%s %s, %s".formatted(name(month), words(month.cold()), words(month.mild()))
                : words(month.cold());
    }

    /** The words stand on top, where no reading can lie under them. */
    private void line(Svg svg, double kpa, String colour, String dashes, Anchor anchor, String label) {
        svg.line(LEFT_X, y(kpa), RIGHT_X, y(kpa), colour, 2, dashes);
        double x = anchor == Anchor.START ? LEFT_X : RIGHT_X;
        double along = anchor == Anchor.START ? 1 : -1;
        svg.line(x, 13, x + along * 24, 13, colour, 2, dashes);
        svg.words(x + along * 30, 18, 13, anchor, colour, true, labels.of(label, "pressure", Amount.of(kpa, "kPa")));
    }

    private String words(SeasonPressures.Expected expected) {
        return labels.of(
                "at",
                "pressure",
                Amount.of(expected.pressureKpa(), "kPa"),
                "temperature",
                Amount.of(expected.temperatureC(), "°C"));
    }

    private static double x(int place, int points) {
        return LEFT_X + 24 + (RIGHT_X - LEFT_X - 44) * place / (points - 1);
    }

    private double y(double kpa) {
        return BOTTOM_Y - (BOTTOM_Y - TOP_Y) * (kpa - lowKpa) / (highKpa - lowKpa);
    }
}
