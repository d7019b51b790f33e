package cornerbook.app.bench;

import cornerbook.app.bench.AskSaid.Description;
import cornerbook.app.bench.AskSaid.Help;
import cornerbook.app.bench.AskSaid.Label;
import cornerbook.app.bench.AskSaid.Note;
import cornerbook.app.bench.AskSaid.NothingAsked;
import cornerbook.app.bench.AskSaid.Otherwise;
import cornerbook.app.bench.AskSaid.Title;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.changeover.ChangeOverDays;
import cornerbook.core.changeover.ChangeOverSaid;
import cornerbook.core.changeover.ChangeOverSeason;
import cornerbook.core.changeover.DailyNormals;
import cornerbook.core.changeover.ShopWork;
import cornerbook.core.finding.LimitTable;
import cornerbook.core.finding.PlaceOfLaw;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** On which days of autumn and spring wheels are changed over with the least risk. */
final class ChangeOverQuestion {
    /** What the climate of the place answers where nothing is typed. */
    static final List<String> FROM_CLIMATE = List.of("means");

    private static final Pattern BETWEEN = Pattern.compile("\\s*[,;]\\s*|\\s+");
    private static final LimitTable LIMITS = new LimitTable(LimitsFile.load());

    static final Question QUESTION = new Question(
            "changeover",
            Title.CHANGE_OVER,
            Description.CHANGE_OVER,
            List.of(),
            List.of(new Group(
                    "days",
                    Title.CHANGE_OVER_DAYS,
                    Note.CHANGE_OVER_DAYS,
                    List.of(
                            Ask.words(
                                    "means",
                                    Label.CHANGE_OVER_MEANS,
                                    "-10, -8, -2, 5, 13, 18, 21, 20, 15, 8, 2, -6",
                                    Help.CHANGE_OVER_MEANS),
                            Ask.number(
                                    "spread",
                                    Label.CHANGE_OVER_SPREAD,
                                    "°C",
                                    ChangeOverSaid.Input.SPREAD,
                                    new Otherwise(
                                            Help.CHANGE_OVER_SPREAD, Amount.exact(ChangeOverDays.USUAL_SPREAD_C, ""))),
                            Ask.choice(
                                    "place",
                                    Label.CHANGE_OVER_PLACE,
                                    LIMITS.places().stream()
                                            .map(code -> new Ask.Option(code, PlaceOfLaw.of(code)))
                                            .toList(),
                                    Help.CHANGE_OVER_PLACE),
                            Ask.number(
                                    "cars",
                                    Label.CHANGE_OVER_CARS,
                                    "",
                                    ChangeOverSaid.Input.CARS,
                                    Help.CHANGE_OVER_CARS),
                            Ask.number(
                                    "per-day",
                                    Label.CHANGE_OVER_PER_DAY,
                                    "",
                                    ChangeOverSaid.Input.CARS_PER_DAY,
                                    Help.CHANGE_OVER_PER_DAY)),
                    List.of("means"),
                    ChangeOverQuestion::days)),
            NothingAsked.CHANGE_OVER,
            "cornerbook changeover --means -10,-8,-2,5,13,18,21,20,15,8,2,-6 --place CA-QC --cars 300 --per-day 12");

    private ChangeOverQuestion() {}

    private static List<Part> days(Given given) {
        var climate = given.climate();
        if (!given.any("means") && climate == null) {
            if (given.any("place", "cars", "per-day", "spread")) {
                given.words("means");
            }
            return List.of();
        }
        var normals = given.any("means")
                ? given.at("means", () -> new DailyNormals(typedMeans(given)))
                : DailyNormals.of(Objects.requireNonNull(climate));
        var work = given.any("cars", "per-day") ? new ShopWork(given.whole("cars"), given.whole("per-day")) : null;
        var result = ChangeOverDays.of(
                normals,
                given.number("spread", ChangeOverDays.USUAL_SPREAD_C),
                given.findWords("place")
                        .flatMap(place -> LIMITS.findWinterLaw(place.toUpperCase(Locale.ROOT)))
                        .orElse(null),
                work,
                given.today());
        var lines = new ArrayList<Said>();
        lines(true, result.autumn(), work, lines);
        lines(false, result.spring(), work, lines);
        if (climate != null && !given.any("means")) {
            lines.add(new AnswerSaid.TemperaturesFrom(Said.verbatim(climate.citation())));
        }
        return List.of(new Part("days", lines, result));
    }

    private static List<Double> typedMeans(Given given) {
        return BETWEEN.splitAsStream(given.words("means"))
                .map(text -> {
                    try {
                        return given.quantity(text, "°C");
                    } catch (IllegalArgumentException e) {
                        throw AskException.unread("means", Refused.said(e));
                    }
                })
                .toList();
    }

    private static void lines(
            boolean winter, @Nullable ChangeOverSeason season, @Nullable ShopWork work, List<Said> lines) {
        if (season == null) {
            lines.add(new AnswerSaid.NoChangeOver(winter));
            return;
        }
        lines.add(new AnswerSaid.ChangeBetween(winter, season.from(), season.until(), season.best(), season.byLaw()));
        var lawDay = season.lawDay();
        if (lawDay != null) {
            lines.add(new AnswerSaid.LawfulDay(winter, lawDay));
        }
        if (!season.weeks().isEmpty()) {
            lines.add(new AnswerSaid.ShopWeeks(
                    winter,
                    Listed.commas(season.weeks().stream()
                            .map(week -> new AnswerSaid.WeekOfCars(week.first(), week.cars()))
                            .toList())));
        }
        int planned =
                season.weeks().stream().mapToInt(ChangeOverSeason.Week::cars).sum();
        if (work != null && planned < work.cars()) {
            lines.add(new AnswerSaid.TooFewDays(winter, work.cars() - planned));
        }
    }
}
