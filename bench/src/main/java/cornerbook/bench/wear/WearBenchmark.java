package cornerbook.bench.wear;

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
import cornerbook.core.tread.WearPosterior;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One vehicle, six seasons, three grooves, two sets: three seasons of readings for each set. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class WearBenchmark {
    private static final double LIMIT_MM = 4;
    private static final double CONFIDENCE = 0.9;
    private static final double MOST_DAYS = 1461;
    private static final List<NewDepth> NEW_DEPTHS = Collections.nCopies(4, NewDepth.stated(8));

    private final WearModel model = new WearModel(WearParameters.defaults(DriveLayout.ALL));
    private final DistancePerDay distance = new DistancePerDay(42, 9);
    private final List<List<TreadReading>> readings = new ArrayList<>();
    private final List<List<Placement>> placements = new ArrayList<>();

    /** Two sets with rotations at each change-over. */
    @Setup
    public void measure() {
        var random = new SplittableRandom(7);
        for (int set = 0; set < 2; set++) {
            var corners = new ArrayList<>(List.of(Corner.values()));
            var run = new ArrayList<>(Collections.nCopies(4, CornerDistances.NONE));
            var taken = new ArrayList<TreadReading>();
            for (int season = 0; season < 3; season++) {
                for (int tyre = 0; tyre < 4; tyre++) {
                    run.set(tyre, run.get(tyre).plus(season, corners.get(tyre), 6 + random.nextDouble()));
                    for (var groove : Spot.values()) {
                        double depthMm = 8 - 0.17 * run.get(tyre).total() + 0.3 * (random.nextDouble() - 0.5);
                        taken.add(new TreadReading(season, tyre, groove, run.get(tyre), depthMm));
                    }
                }
                Collections.rotate(corners, 2);
            }
            var placed = new ArrayList<Placement>();
            for (int tyre = 0; tyre < 4; tyre++) {
                placed.add(new Placement(tyre, run.get(tyre), corners.get(tyre)));
            }
            readings.add(taken);
            placements.add(placed);
        }
    }

    /** Posterior and horizon of both sets. */
    @Benchmark
    public double posteriorAndHorizonOfBothSets() {
        double sum = 0;
        for (int set = 0; set < 2; set++) {
            var outlook = model.fit(NEW_DEPTHS, readings.get(set)).outlook(placements.get(set));
            sum += outlook.horizonDays(distance, LIMIT_MM, CONFIDENCE, MOST_DAYS)
                    .orElse(MOST_DAYS);
        }
        return sum;
    }

    /** Posterior of one set alone. */
    @Benchmark
    public WearPosterior posteriorOfOneSet() {
        return model.fit(NEW_DEPTHS, readings.getFirst());
    }
}
