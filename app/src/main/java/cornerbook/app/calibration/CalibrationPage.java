package cornerbook.app.calibration;

import cornerbook.app.calibration.fleet.Scenario;
import cornerbook.app.picture.ReliabilityCurve;
import cornerbook.core.car.CarHistory;
import cornerbook.core.finding.Limit;
import cornerbook.core.say.Amount;
import cornerbook.core.say.PlusMinus;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** The page on calibration, as Markdown with SVG pictures beside it. */
public final class CalibrationPage {
    /** Cars of a scenario unless asked otherwise. */
    public static final int CARS = 500;

    private static final long SEED = 20_261_129;
    private static final int TEACHERS_OF_CARS = 2;
    private static final String NOTHING = "–";

    private final Reader reader;
    private final Labels words;
    private final Map<String, String> pictures = new LinkedHashMap<>();

    private CalibrationPage(Reader reader) {
        this.reader = reader;
        words = reader.labels("app/calibration");
    }

    /**
     * The files of the page by name, in the words of this reader; the same cars give the same files.
     *
     * @param simulated how many cars each scenario has; half as many more teach
     * @param limits by which cars are judged
     * @param bookName what the cars of the book are called on the page
     */
    public static Map<String, String> files(
            int simulated, List<CarHistory> book, List<Limit> limits, String bookName, Reader reader) {
        var trials = new EnumMap<Scenario, Trial>(Scenario.class);
        Arrays.stream(Scenario.values())
                .parallel()
                .map(scenario -> Map.entry(scenario, trial(scenario, simulated, limits)))
                .toList()
                .forEach(trial -> trials.put(trial.getKey(), trial.getValue()));
        return new CalibrationPage(reader).files(trials, simulated, Trial.ofBook(book, limits), bookName);
    }

    /** A scenario on trial as the page has it. */
    static Trial trial(Scenario scenario, int cars, List<Limit> limits) {
        return Trial.of(scenario, cars, cars / TEACHERS_OF_CARS, SEED, limits);
    }

    private Map<String, String> files(Map<Scenario, Trial> trials, int simulated, Trial book, String bookName) {
        var page = new StringBuilder(8192);
        page.append("# ").append(words.of("title")).append("\n\n");
        page.append(words.of("made", "cars", simulated, "teachers", simulated / TEACHERS_OF_CARS))
                .append("\n\n");
        page.append("## ").append(words.of("off")).append("\n\n");
        trials.forEach((scenario, trial) -> page.append(off(words.say(scenario), trial, scenario == Scenario.CONTROL)));
        page.append(off(bookName, book, false)).append('\n');
        page.append("## ").append(words.of("figures")).append("\n\n");
        page.append(words.of("figures-how")).append("\n\n").append(header());
        page.append(askedRow(true)).append(askedRow(false));
        trials.forEach((scenario, trial) -> page.append(rows(words.say(scenario), trial)));
        page.append(rows(bookName, book)).append('\n');
        page.append("## ").append(words.of("curves")).append("\n\n");
        page.append(words.of("curves-how")).append("\n\n");
        trials.forEach((scenario, trial) -> page.append(
                picture(scenario.name().toLowerCase(Locale.ROOT).replace('_', '-'), words.say(scenario), trial)));
        if (!book.learned().holds.tenths().isEmpty()) {
            page.append(picture("book", bookName, book));
        }
        page.append("\n## ").append(words.of("fleets")).append("\n\n");
        page.append(words.of("fleets-how")).append("\n\n");
        page.append("## ").append(bookName).append("\n\n");
        page.append(words.of("book-how", "cars", book.learned().cars())).append('\n');
        var files = new LinkedHashMap<>(pictures);
        files.put("calibration.md", page.toString());
        return files;
    }

    private String off(String name, Trial trial, boolean control) {
        var lines = new StringBuilder();
        for (boolean learned : new boolean[] {true, false}) {
            var off = WhatIsOff.of(trial.scores(learned), control, learned);
            var sentences = off.isEmpty()
                    ? words.of("none-off")
                    : off.stream().map(words::say).collect(Collectors.joining(" "));
            lines.append("- **")
                    .append(named(name, learned))
                    .append("** ")
                    .append(sentences)
                    .append('\n');
        }
        return lines.toString();
    }

    private String named(String name, boolean learned) {
        return words.of("named", "name", name, "learned", learned);
    }

    private String header() {
        return Arrays.stream(Figure.values()).map(words::say).collect(Collectors.joining(" | ", "| | ", " |\n"))
                + "|---".repeat(Figure.values().length + 1)
                + "|\n";
    }

    private String askedRow(boolean control) {
        return Arrays.stream(Figure.values())
                .map(figure -> figure == Figure.BANDS
                        ? asked(figure.asked(control, true)) + " / " + asked(figure.asked(control, false))
                        : asked(figure.asked(control, true)))
                .collect(Collectors.joining(
                        " | ", "| *%s* | ".formatted(words.of("asked", "control", control)), " |\n"));
    }

    private String asked(Figure.Bounds bounds) {
        return words.of("between", "low", whole(bounds.low()), "high", whole(bounds.high()));
    }

    private static Amount whole(double value) {
        return new Amount(value, "", 0);
    }

    private String rows(String name, Trial trial) {
        return row(named(name, true), trial.learned()) + row(named(name, false), trial.byDefault());
    }

    private String row(String name, ForecastScores scores) {
        return Arrays.stream(Figure.values())
                .map(figure -> figure.of(scores)
                        .map(measured -> words.say(new PlusMinus(measured.value(), measured.sd(), "", 1)))
                        .orElse(NOTHING))
                .collect(Collectors.joining(" | ", "| %s | ".formatted(name), " |\n"));
    }

    private String picture(String file, String name, Trial trial) {
        var fileName = "calibration-%s.svg".formatted(file);
        pictures.put(fileName, ReliabilityCurve.svg(name, points(trial.learned()), points(trial.byDefault()), reader));
        return "![%s](%s)\n".formatted(name, fileName);
    }

    private static List<ReliabilityCurve.Point> points(ForecastScores scores) {
        return scores.holds.tenths().stream()
                .map(tenth -> new ReliabilityCurve.Point(tenth.said(), tenth.came(), tenth.sd()))
                .toList();
    }
}
