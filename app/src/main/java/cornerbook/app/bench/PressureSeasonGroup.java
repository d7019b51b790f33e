package cornerbook.app.bench;

import cornerbook.core.tyre.SeasonPressures;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** What a tyre will read over the season. */
final class PressureSeasonGroup {
    private static final Pattern BETWEEN = Pattern.compile("\\s*[,;]\\s*|\\s+");

    static final Group GROUP = new Group(
            "season",
            "Over the season",
            "For the placard and the temperature above; no air lost, at sea level.",
            List.of(
                    Ask.words(
                            "months",
                            "Mean temperature of each month to come",
                            "2, -4, -9, -8, -2, 5",
                            "mean temperature of a month",
                            "Mean temperature of each month to come, parted by commas."),
                    Ask.quantity(
                            "coldest", "Coldest morning", "°C", "coldest morning", "Coldest morning of these months.")),
            List.of("placard", "stands-at", "months", "coldest"),
            PressureSeasonGroup::season);

    private PressureSeasonGroup() {}

    private static List<Part> season(Given given) {
        if (!given.any("months", "coldest")) {
            return List.of();
        }
        if (!given.any("months") || !given.any("coldest")) {
            throw new AskException(
                    given.any("months") ? "coldest" : "months",
                    "months of the season are half given, expected their mean temperatures and the coldest morning");
        }
        double placardKpa = given.quantity("placard");
        double standingC = given.quantity("stands-at");
        double coldestC = given.quantity("coldest");
        var means = BETWEEN.splitAsStream(given.words("months"))
                .map(text -> month(given, text))
                .toList();
        var season = SeasonPressures.of(placardKpa, standingC, placardKpa, means, coldestC);
        var shown = given.shown();
        var lines = new ArrayList<String>();
        season.months()
                .forEach(month -> lines.add("At %s to be read: %s"
                        .formatted(shown.show(month.temperatureC(), "°C"), shown.show(month.pressureKpa(), "kPa"))));
        lines.add("Coldest morning, %s: %s; the warning comes below %s"
                .formatted(
                        shown.show(coldestC, "°C"),
                        shown.show(season.coldest().pressureKpa(), "kPa"),
                        shown.show(season.warningKpa(), "kPa")));
        return List.of(new Part("season", lines, season));
    }

    private static double month(Given given, String text) {
        try {
            return given.quantity(text, "°C");
        } catch (IllegalArgumentException e) {
            throw new AskException("months", String.valueOf(e.getMessage()));
        }
    }
}
