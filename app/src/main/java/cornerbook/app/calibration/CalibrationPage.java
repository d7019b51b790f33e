package cornerbook.app.calibration;

import cornerbook.app.picture.PitHistogram;
import cornerbook.core.car.CarHistory;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.say.Amount;
import cornerbook.core.tread.WearParameters;
import cornerbook.core.tread.WearPrior;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/** The page on calibration, as Markdown with SVG pictures beside it. */
public final class CalibrationPage {
    private static final int CARS = 2000;
    private static final long FIRST_SEED = 20_261_001;

    /** Truths that differ from the defaults and from each other; invented. */
    static final List<WearParameters> TRUTHS = List.of(
            new WearParameters(0.20, 0.20, 0.26, 0.19, 0.42, 0.10),
            new WearParameters(0.10, 0.40, 0.15, 0.11, 0.20, 0.25),
            new WearParameters(0.25, 0.15, 0.22, 0.22, 0.30, 0.05));

    private static final String INTERVAL = "interval";
    private static final Amount NINETY_PERCENT = percent(0.9, 0);

    private final Reader reader;
    private final Labels words;

    private CalibrationPage(Reader reader) {
        this.reader = reader;
        words = reader.labels("app/calibration");
    }

    /**
     * The files of the page by name, in the words of this reader; the same cars give the same files.
     *
     * @param bookName what the cars are called on the page
     */
    public static Map<String, String> files(List<CarHistory> cars, String bookName, LocalDate today, Reader reader) {
        return new CalibrationPage(reader).files(cars, bookName, today);
    }

    private Map<String, String> files(List<CarHistory> cars, String bookName, LocalDate today) {
        var files = new LinkedHashMap<String, String>();
        var page = new StringBuilder(4096);
        page.append("# ").append(words.of("title")).append("\n\n");
        page.append(words.of("made", INTERVAL, NINETY_PERCENT)).append("\n\n");
        page.append("## ").append(words.of("simulated")).append("\n\n");
        page.append(words.of("simulated-how", "cars", CARS)).append("\n\n");
        page.append(words.of("columns", INTERVAL, NINETY_PERCENT))
                .append("\n|---|---|---|---|---|---|---|---|---|---|\n");
        for (int fleet = 0; fleet < TRUTHS.size(); fleet++) {
            var found = fleet(fleet);
            var histogram = found.calibration().histogram(FIRST_SEED);
            var number = fleet + 1;
            var name = "calibration-fleet-%s.svg".formatted(number);
            page.append(row(String.valueOf(number), words.of("truth"), found.truth()))
                    .append("| | |\n");
            page.append(row("", words.of("learned"), found.learned().parameters()))
                    .append("| ")
                    .append(words.say(percent(found.calibration().coverage(), 1)))
                    .append(" | ")
                    .append(number(Calibration.chiSquare(histogram), 1))
                    .append(" |\n");
            files.put(name, PitHistogram.svg(words.of("fleet", "number", number), histogram, reader));
        }
        page.append('\n');
        files.keySet().forEach(name -> page.append(picture(name)).append('\n'));
        page.append("\n## ").append(words.of("false-alarms")).append("\n\n");
        page.append(words.of(
                        "false-alarms-found",
                        "cars",
                        CARS,
                        "spread",
                        percent(FalseAlarms.GROOVE_SPREAD, 0),
                        "share",
                        percent(FalseAlarms.share(CARS, FIRST_SEED), 1)))
                .append('\n');
        var book = Calibration.ofBook(cars, today);
        page.append("\n## ").append(bookName).append("\n\n");
        if (book.byCar().isEmpty()) {
            page.append(words.of("none-yet")).append('\n');
        } else {
            files.put("calibration-book.svg", PitHistogram.svg(bookName, book.histogram(FIRST_SEED), reader));
            page.append(words.of(
                            "of-book",
                            "readings",
                            book.readings(),
                            "cars",
                            book.byCar().size(),
                            "share",
                            percent(book.coverage(), 1),
                            INTERVAL,
                            NINETY_PERCENT))
                    .append("\n\n")
                    .append(picture("calibration-book.svg"))
                    .append('\n');
        }
        files.put("calibration.md", page.toString());
        return files;
    }

    private String picture(String name) {
        return "![%s](%s)".formatted(words.of("histogram"), name);
    }

    private static Amount percent(double share, int decimals) {
        return new Amount(share * 100, "%", decimals);
    }

    private String number(double value, int decimals) {
        return words.say(new Amount(value, "", decimals));
    }

    static Calibration.OfFleet fleet(int place) {
        return Calibration.ofFleet(
                CARS, FIRST_SEED + place, TRUTHS.get(place), WearPrior.about(WearParameters.defaults(DriveLayout.ALL)));
    }

    private String row(String fleet, String what, WearParameters parameters) {
        return DoubleStream.of(
                        parameters.readingSdMm(),
                        parameters.newDepthSdMm(),
                        parameters.frontRateMmPer1000Km(),
                        parameters.rearRateMmPer1000Km(),
                        parameters.vehicleSpread(),
                        parameters.cornerSpread())
                .mapToObj(value -> number(value, 3))
                .collect(Collectors.joining(" | ", "| %s | %s | ".formatted(fleet, what), " "));
    }
}
