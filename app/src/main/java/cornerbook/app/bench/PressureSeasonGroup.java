package cornerbook.app.bench;

import cornerbook.app.bench.AskSaid.Help;
import cornerbook.app.bench.AskSaid.Label;
import cornerbook.app.bench.AskSaid.Note;
import cornerbook.app.bench.AskSaid.Title;
import cornerbook.core.air.AirSaid;
import cornerbook.core.air.SeasonMonth;
import cornerbook.core.air.SeasonPressures;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
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
            Title.PRESSURE_SEASON,
            Note.PRESSURE_SEASON,
            List.of(
                    Ask.words(
                            "months", Label.PRESSURE_MONTHS,
                            "2, -4, -9, -8, -2, 5", Help.PRESSURE_MONTHS),
                    Ask.quantity(
                            "coldest",
                            Label.PRESSURE_COLDEST,
                            "°C",
                            AirSaid.Input.COLDEST_MORNING,
                            Help.PRESSURE_COLDEST),
                    Ask.number(
                            "months-ahead",
                            Label.PRESSURE_MONTHS_AHEAD,
                            "",
                            AirSaid.Input.MONTHS_AHEAD,
                            Help.PRESSURE_MONTHS_AHEAD)),
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
            throw AskException.refused(typed ? "coldest" : "months", RefusalSaid.Plainly.SEASON_HALF_GIVEN);
        }
        double placardKpa = given.quantity("placard");
        var from = typed || climate == null ? AirSaid.Origin.AS_TYPED : Said.verbatim(climate.citation());
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
                from);
        return List.of(new Part("season", lines(given, season, from), season));
    }

    private static List<SeasonMonth> typedMonths(Given given) {
        return BETWEEN.splitAsStream(given.words("months"))
                .map(text -> month(given, text))
                .toList();
    }

    private static List<SeasonMonth> ahead(Given given, Climate climate) {
        int count = given.any("months-ahead") ? given.whole("months-ahead") : USUAL_MONTHS_AHEAD;
        return SeasonMonth.of(climate, given.today().getMonth(), count);
    }

    private static SeasonMonth month(Given given, String text) {
        try {
            return SeasonMonth.ofMean(given.quantity(text, "°C"));
        } catch (IllegalArgumentException e) {
            throw AskException.unread("months", Refused.said(e));
        }
    }

    private static List<Said> lines(Given given, SeasonPressures season, Said from) {
        var lines = new ArrayList<Said>();
        season.months().forEach(month -> {
            var mild = month.mild();
            var cold = month.cold();
            var name = month.month();
            lines.add(
                    name != null && month.isSpread()
                            ? new AnswerSaid.MonthReads(
                                    new AirSaid.MonthName(name),
                                    given.told(cold.pressureKpa(), "kPa"),
                                    given.told(cold.temperatureC(), "°C"),
                                    given.told(mild.pressureKpa(), "kPa"),
                                    given.told(mild.temperatureC(), "°C"))
                            : new AnswerSaid.ToBeRead(
                                    given.told(mild.temperatureC(), "°C"), given.told(mild.pressureKpa(), "kPa")));
        });
        lines.add(new AnswerSaid.ColdestMorning(
                given.told(season.coldest().temperatureC(), "°C"),
                given.told(season.coldest().pressureKpa(), "kPa"),
                given.told(season.warningKpa(), "kPa"),
                given.told(season.marginKpa(), "kPa"),
                given.told(season.errorKpa(), "kPa")));
        lines.add(new AnswerSaid.TemperaturesFrom(from));
        return lines;
    }
}
