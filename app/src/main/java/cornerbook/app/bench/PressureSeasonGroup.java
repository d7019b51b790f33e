package cornerbook.app.bench;

import cornerbook.words.Reader;
import cornerbook.core.say.Refused;
import cornerbook.core.air.SeasonMonth;
import cornerbook.core.air.SeasonPressures;
import cornerbook.core.season.Climate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;

/** What a tyre will read over the season. */
final class PressureSeasonGroup {
    /** What the climate of the place answers where nothing is typed. */
    static final List<String> FROM_CLIMATE = List.of("months", "coldest");

    private static final Pattern BETWEEN = Pattern.compile("\\s*[,;]\\s*|\\s+");
    private static final int USUAL_MONTHS_AHEAD = 7;

    static final Group GROUP = new Group(
            "season",
            "Over the season",
            "For the placard, the temperature and altitude where the car will stand, and the gauge error above; no air lost.",
            List.of(
                    Ask.words(
                            "months",
                            "Mean temperature of each month to come",
                            "2, -4, -9, -8, -2, 5",
                            "mean temperature of a month",
                            "Parted by commas; from the climate of the place if not given."),
                    Ask.quantity(
                            "coldest",
                            "Coldest morning",
                            "°C",
                            "coldest morning",
                            "Coldest morning of these months; that of the climate if not given."),
                    Ask.number(
                            "months-ahead",
                            "Months ahead",
                            "",
                            "months ahead",
                            "Months of the climate, this one included; 7 if not given.")),
            List.of("placard", "stands-at", "months", "coldest"),
            PressureSeasonGroup::season);

    private PressureSeasonGroup() {}

    private static List<Part> season(Given given) {
        var climate = given.climate();
        boolean typed = given.any("months");
        if (!typed && !given.any("coldest") && (climate == null || !given.any("placard", "stands-at"))) {
            return List.of();
        }
        if (climate == null && !(typed && given.any("coldest"))) {
            throw new AskException(
                    typed ? "coldest" : "months",
                    "months of the season are half given, expected their mean temperatures and the coldest morning");
        }
        double placardKpa = given.quantity("placard");
        var start = new SeasonPressures.Start(
                placardKpa,
                given.quantity("stands-at"),
                given.quantity("gauge-error", PressureQuestion.GAUGE_ERROR_KPA),
                given.quantity("stands-altitude", given.quantity("altitude", 0)));
        var season = SeasonPressures.of(
                start,
                placardKpa,
                typed ? typedMonths(given) : ahead(given, Objects.requireNonNull(climate)),
                given.any("coldest")
                        ? given.quantity("coldest")
                        : Objects.requireNonNull(climate).coldestMorningC(),
                typed || climate == null ? "as typed" : climate.citation());
        return List.of(new Part("season", lines(given, season), season));
    }

    private static List<SeasonMonth> typedMonths(Given given) {
        return BETWEEN.splitAsStream(given.words("months"))
                .map(text -> SeasonMonth.ofMean(month(given, text)))
                .toList();
    }

    private static List<SeasonMonth> ahead(Given given, Climate climate) {
        int count = given.any("months-ahead") ? given.whole("months-ahead") : USUAL_MONTHS_AHEAD;
        return SeasonMonth.of(climate, given.today().getMonth(), count);
    }

    private static double month(Given given, String text) {
        try {
            return given.quantity(text, "°C");
        } catch (IllegalArgumentException e) {
            throw new AskException("months", Reader.DEFAULT.say(Refused.said(e)));
        }
    }

    private static List<String> lines(Given given, SeasonPressures season) {
        var shown = given.shown();
        var lines = new ArrayList<String>();
        season.months().forEach(month -> {
            var mild = month.mild();
            var cold = month.cold();
            lines.add(
                    month.isSpread()
                            ? "%s: %s at %s in the morning, %s at %s in the afternoon"
                                    .formatted(
                                            month.name(),
                                            shown.show(cold.pressureKpa(), "kPa"),
                                            shown.show(cold.temperatureC(), "°C"),
                                            shown.show(mild.pressureKpa(), "kPa"),
                                            shown.show(mild.temperatureC(), "°C"))
                            : "At %s to be read: %s"
                                    .formatted(
                                            shown.show(mild.temperatureC(), "°C"),
                                            shown.show(mild.pressureKpa(), "kPa")));
        });
        lines.add("Coldest morning, %s: %s; the warning comes below %s, which leaves %s ± %s"
                .formatted(
                        shown.show(season.coldest().temperatureC(), "°C"),
                        shown.show(season.coldest().pressureKpa(), "kPa"),
                        shown.show(season.warningKpa(), "kPa"),
                        shown.show(season.marginKpa(), "kPa"),
                        shown.show(season.errorKpa(), "kPa")));
        lines.add("Temperatures: " + season.temperaturesFrom());
        return lines;
    }
}
