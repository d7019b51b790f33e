package cornerbook.bench.wear;

import static java.nio.charset.StandardCharsets.UTF_8;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.Spot;
import cornerbook.core.season.DistancePerDay;
import cornerbook.core.tread.CornerDistances;
import cornerbook.core.tread.NewDepth;
import cornerbook.core.tread.Placement;
import cornerbook.core.tread.TreadReading;
import cornerbook.core.tread.WearModel;
import cornerbook.core.tread.WearParameters;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Posterior and horizon of both sets of a million invented vehicles, six seasons each, beside the same by a matrix library
 * (Hipparchus) and by R's lm, in one run. The two others know each groove by itself, without visits and seasons, and take the
 * tyres of a set as independent given the distance, which spares them work. Arguments: vehicles (1000000), vehicles for the two others (2000, 300).
 */
public final class FleetSideBySide {
    static final double LIMIT_MM = 3;
    static final double CONFIDENCE = 0.9;
    static final double MOST_DAYS = 1461;
    static final DistancePerDay DISTANCE = new DistancePerDay(42, 9);
    static final List<NewDepth> NEW_DEPTHS = Collections.nCopies(4, NewDepth.stated(8));
    /** Different vehicles; they are gone through again and again. */
    private static final int DIFFERENT = 20_000;

    static final int CARS_TO_LEARN_FROM = 10_000;
    private static final int SEASONS = 3;

    private FleetSideBySide() {}

    /** One wheel set of a vehicle. */
    record WheelSet(List<TreadReading> readings, List<Placement> placements) {}

    /** Runs all three and prints vehicles per second. */
    public static void main(String... arguments) throws IOException, InterruptedException {
        int vehicles = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1_000_000;
        int forLibrary = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 2_000;
        int forR = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 300;
        var out = new PrintStream(System.out, true, UTF_8);
        var sets = sets();
        ours(sets, DIFFERENT);
        double ours = ours(sets, vehicles);
        out.printf(Locale.ROOT, "Cornerbook, %d threads: %,.0f vehicles/s%n", processors(), ours);
        var library = new MatrixLibrary();
        library.run(sets, forLibrary / 4);
        double byLibrary = library.run(sets, forLibrary);
        out.printf(
                Locale.ROOT,
                "Hipparchus, %d threads: %,.0f vehicles/s, ratio %.0f%n",
                processors(),
                byLibrary,
                ours / byLibrary);
        double byR = byR(sets, forR, out);
        out.printf(Locale.ROOT, "R lm, one process: %,.0f vehicles/s, ratio %.0f%n", byR, ours / byR);
    }

    private static int processors() {
        return Runtime.getRuntime().availableProcessors();
    }

    private static double ours(List<WheelSet> sets, int vehicles) {
        var model = new WearModel(WearParameters.defaults(DriveLayout.ALL));
        return perSecond(vehicles, vehicle -> {
            double sum = 0;
            for (int s = 0; s < 2; s++) {
                var set = sets.get((2 * vehicle + s) % sets.size());
                sum += model.fit(NEW_DEPTHS, set.readings())
                        .outlook(set.placements())
                        .horizonDays(DISTANCE, LIMIT_MM, CONFIDENCE, MOST_DAYS)
                        .orElse(MOST_DAYS);
            }
            return sum;
        });
    }

    /** Runs the work of all vehicles on all processors. */
    static double perSecond(int vehicles, IntToDoubleFunction work) {
        long started = System.nanoTime();
        double sum = IntStream.range(0, vehicles).parallel().mapToDouble(work).sum();
        double seconds = (System.nanoTime() - started) / 1e9;
        if (!(sum > 0)) {
            throw new IllegalStateException("the horizons sum to " + sum);
        }
        return vehicles / seconds;
    }

    private static double byR(List<WheelSet> sets, int vehicles, PrintStream out)
            throws IOException, InterruptedException {
        var folder = Files.createTempDirectory("fleet");
        var readings = folder.resolve("readings.csv");
        var script = folder.resolve("fleet-lm.R");
        Files.writeString(readings, csv(sets.subList(0, 2 * vehicles)));
        try (var source = FleetSideBySide.class.getResourceAsStream("fleet-lm.R")) {
            Files.copy(Objects.requireNonNull(source), script);
        }
        var process = new ProcessBuilder(
                        "Rscript",
                        script.toString(),
                        readings.toString(),
                        String.valueOf(DISTANCE.meanKm()),
                        String.valueOf(DISTANCE.sdKm()),
                        String.valueOf(LIMIT_MM))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        var answer = new String(process.getInputStream().readAllBytes(), UTF_8).strip();
        if (process.waitFor() != 0) {
            throw new IOException("Rscript failed, expected it to be installed");
        }
        Files.delete(readings);
        Files.delete(script);
        Files.delete(folder);
        out.println("R answers (seconds, sets, depth of the first tyre, mean horizon): " + answer);
        return vehicles / Double.parseDouble(answer.substring(0, answer.indexOf(' ')));
    }

    private static String csv(List<WheelSet> sets) {
        var text = new StringBuilder("set,groove,tyre,a1,a2,a3,a4,y,next_corner\n");
        for (int s = 0; s < sets.size(); s++) {
            var set = sets.get(s);
            for (var reading : set.readings()) {
                var run = reading.run();
                text.append("%d,%d,%d,%s,%s,%s,%s,%s,%d%n"
                        .formatted(
                                s,
                                reading.groove().ordinal(),
                                reading.tyre(),
                                run.at(Corner.LF),
                                run.at(Corner.RF),
                                run.at(Corner.LR),
                                run.at(Corner.RR),
                                reading.depthMm(),
                                set.placements().get(reading.tyre()).corner().ordinal()));
            }
        }
        return text.toString();
    }

    static List<WheelSet> sets() {
        var random = new SplittableRandom(20_261_125);
        var sets = new ArrayList<WheelSet>();
        for (int s = 0; s < 2 * DIFFERENT; s++) {
            double rate = 0.2 * (1 + 0.3 * (2 * random.nextDouble() - 1));
            var corners = new ArrayList<>(List.of(Corner.values()));
            var run = new ArrayList<>(Collections.nCopies(4, CornerDistances.NONE));
            var readings = new ArrayList<TreadReading>();
            for (int season = 0; season < SEASONS; season++) {
                for (int tyre = 0; tyre < 4; tyre++) {
                    run.set(tyre, run.get(tyre).plus(season, corners.get(tyre), 5 + 2 * random.nextDouble()));
                    for (var groove : Spot.values()) {
                        double depthMm = 8 - rate * run.get(tyre).total() + 0.3 * (random.nextDouble() - 0.5);
                        readings.add(new TreadReading(season, tyre, groove, run.get(tyre), depthMm));
                    }
                }
                Collections.rotate(corners, 2);
            }
            var placements = new ArrayList<Placement>();
            for (int tyre = 0; tyre < 4; tyre++) {
                placements.add(new Placement(tyre, run.get(tyre), corners.get(tyre)));
            }
            sets.add(new WheelSet(readings, placements));
        }
        return sets;
    }
}
