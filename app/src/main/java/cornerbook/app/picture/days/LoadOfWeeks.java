package cornerbook.app.picture.days;

import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.words.Reader;
import java.util.List;

/**
 * The weeks ahead, one strip each: every day a vessel as high as what it takes, filled with what was agreed; what does not fit stands on
 * top of it in another colour, and the number of that day is bold.
 */
public final class LoadOfWeeks {
    private static final int DAYS = 7;
    private static final int WIDTH = 420;
    private static final int LEFT = 84;
    private static final int COLUMN = 48;
    private static final int VESSEL = 34;
    private static final int STRIP = 74;
    private static final int HIGHEST = 50;
    private static final int FOOT = 62;
    private static final double LETTERS = 11;
    private static final double ABOVE_THE_LINE = 4;

    private LoadOfWeeks() {}

    /**
     * Draws a strip for each week.
     *
     * @param days whole weeks, from a Monday on
     */
    public static String svg(List<DayLoad> days, Reader reader) {
        var labels = reader.labels("app/picture/days");
        var svg = new Svg(WIDTH, days.size() / DAYS * STRIP, labels.of("load-of-weeks"));
        int most = days.stream()
                .mapToInt(day -> Math.max(day.minutes(), day.capacityMinutes()))
                .max()
                .orElse(0);
        double perMinute = most == 0 ? 0 : (double) HIGHEST / most;
        boolean hasHours = days.stream().anyMatch(day -> day.capacityMinutes() > 0);
        for (int i = 0; i < days.size(); i++) {
            int week = i / DAYS;
            double foot = week * STRIP + FOOT;
            if (i % DAYS == 0) {
                svg.words(
                        0,
                        foot - ABOVE_THE_LINE,
                        LETTERS,
                        Anchor.START,
                        Palette.INK,
                        true,
                        reader.day(days.get(i).day()));
                svg.line(0, foot, WIDTH, foot, Palette.HAIRLINE, 1, "");
            }
            draw(svg, days.get(i), hasHours, LEFT + i % DAYS * COLUMN, foot, perMinute);
        }
        return svg.close();
    }

    /** Where nobody has said when anybody works, nothing is too much. */
    private static void draw(Svg svg, DayLoad day, boolean hasHours, double x, double foot, double perMinute) {
        double takes = day.capacityMinutes() * perMinute;
        double over = hasHours ? day.overMinutes() * perMinute : 0;
        double fits = day.minutes() * perMinute - over;
        if (takes > 0) {
            svg.rectangle(x, foot - takes, VESSEL, takes, 0, Palette.PAPER, Palette.SLATE);
        }
        if (fits > 0) {
            svg.rectangle(x, foot - fits, VESSEL, fits, 0, Palette.SLATE, Palette.SLATE);
        }
        if (over > 0) {
            svg.rectangle(x, foot - takes - over, VESSEL, over, 0, Palette.PLUM, Palette.INK);
        }
        svg.words(
                x + VESSEL / 2.0,
                foot + LETTERS,
                LETTERS - 1,
                Anchor.MIDDLE,
                Palette.INK,
                over > 0,
                Integer.toString(day.day().getDayOfMonth()));
    }
}
