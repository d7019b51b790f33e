package cornerbook.app.calibration;

import cornerbook.words.Reader;
import cornerbook.app.picture.PitHistogram;
import cornerbook.core.car.CarHistory;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.tread.WearParameters;
import cornerbook.core.tread.WearPrior;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The page on calibration, as Markdown with SVG pictures beside it. */
public final class CalibrationPage {
    private static final int CARS = 2000;
    private static final long FIRST_SEED = 20_261_001;

    /** Truths that differ from the defaults and from each other; invented. */
    static final List<WearParameters> TRUTHS = List.of(
            new WearParameters(0.20, 0.20, 0.26, 0.19, 0.42, 0.10),
            new WearParameters(0.10, 0.40, 0.15, 0.11, 0.20, 0.25),
            new WearParameters(0.25, 0.15, 0.22, 0.22, 0.30, 0.05));

    private CalibrationPage() {}

    /**
     * The files of the page by name; the same cars give the same files.
     *
     * @param bookName what the cars are called on the page
     */
    public static Map<String, String> files(List<CarHistory> cars, String bookName, LocalDate today) {
        var files = new LinkedHashMap<String, String>();
        var page = new StringBuilder(4096);
        page.append("""
                # Do the forecasts keep what they promise?

                Made by `cornerbook calibrate`. Each car's last visit is left out, wear is learned from the rest, and the readings of the last visit are compared with their forecast: of honest 90 %% intervals nine in ten hold the reading, and the share of the forecast below the reading (the probability integral transform) is even from 0 to 1. The histograms count one reading of each car, so that the counts do not hang together; the band holds 99 of 100 bins of an honest forecast.

                ## Simulated cars, whose truth is known

                All of it is invented: %d cars a fleet, two to five seasons, wheels at random corners. The truths differ from the defaults; what was learned comes from the readings before the last visit.

                | fleet | | gauge s.d. mm | new depth s.d. mm | front | rear mm per 1000 km | between cars | between corners | in the 90 %% interval | X² (19 degrees of freedom; 99 %% point 36.2) |
                |---|---|---|---|---|---|---|---|---|---|
                """.formatted(CARS));
        for (int fleet = 0; fleet < TRUTHS.size(); fleet++) {
            var found = fleet(fleet);
            var histogram = found.calibration().histogram(FIRST_SEED);
            var name = "calibration-fleet-%d.svg".formatted(fleet + 1);
            page.append(row("%d".formatted(fleet + 1), "truth", found.truth())).append("| | |\n");
            page.append(row("", "learned", found.learned().parameters()))
                    .append("| %.1f %% | %.1f |%n"
                            .formatted(found.calibration().coverage() * 100, Calibration.chiSquare(histogram)));
            files.put(name, PitHistogram.svg("Simulated fleet %d".formatted(fleet + 1), histogram, Reader.DEFAULT));
        }
        page.append('\n');
        files.keySet().forEach(name -> page.append("![Histogram](%s)%n".formatted(name)));
        page.append(
                "%n## False alarms%n%nOf %d simulated cars without fault, whose grooves wear unevenly by %.0f %% of their wear, %.1f %% got a cause named that is not there (a tyre uneven across, or one side of an axle faster).%n"
                        .formatted(CARS, FalseAlarms.GROOVE_SPREAD * 100, FalseAlarms.share(CARS, FIRST_SEED) * 100));
        var book = Calibration.ofBook(cars, today);
        page.append("\n## ").append(bookName).append("\n\n");
        if (book.byCar().isEmpty()) {
            page.append("No car has two visits with tread readings yet.\n");
        } else {
            files.put("calibration-book.svg", PitHistogram.svg(bookName, book.histogram(FIRST_SEED), Reader.DEFAULT));
            page.append(
                    "%d readings of %d cars at their last visits: %.1f %% lie in their 90 %% interval. Few cars say little; readings of one car hang together.%n%n![Histogram](calibration-book.svg)%n"
                            .formatted(book.readings(), book.byCar().size(), book.coverage() * 100));
        }
        files.put("calibration.md", page.toString());
        return files;
    }

    static Calibration.OfFleet fleet(int place) {
        return Calibration.ofFleet(
                CARS, FIRST_SEED + place, TRUTHS.get(place), WearPrior.about(WearParameters.defaults(DriveLayout.ALL)));
    }

    private static String row(String fleet, String what, WearParameters parameters) {
        return "| %s | %s | %.3f | %.3f | %.3f | %.3f | %.3f | %.3f "
                .formatted(
                        fleet,
                        what,
                        parameters.readingSdMm(),
                        parameters.newDepthSdMm(),
                        parameters.frontRateMmPer1000Km(),
                        parameters.rearRateMmPer1000Km(),
                        parameters.vehicleSpread(),
                        parameters.cornerSpread());
    }
}
