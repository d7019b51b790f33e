package cornerbook.bench.wear;

import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.tread.WearHistory;
import cornerbook.core.tread.WearKnowledge;
import cornerbook.core.tread.learn.BookOfWear;
import java.util.ArrayList;
import java.util.List;
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

/** Learning from a book of 10,000 invented cars, two sets each, of five tyre models. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
@Fork(1)
public class LearnBenchmark {
    private static final int MODELS = 5;

    private final List<WearHistory> histories = new ArrayList<>();

    /** Each car has a summer and a winter set. */
    @Setup
    public void invent() {
        var sets = FleetSideBySide.sets();
        for (int s = 0; s < FleetSideBySide.CARS_TO_LEARN_FROM * 2; s++) {
            histories.add(new WearHistory(
                    "invented-" + s / 2,
                    DriveLayout.ALL,
                    s % 2 == 0 ? SeasonKind.SUMMER : SeasonKind.WINTER,
                    "invented model " + s / 2 % MODELS,
                    FleetSideBySide.NEW_DEPTHS,
                    sets.get(s).readings()));
        }
    }

    @Benchmark
    public WearKnowledge learn() {
        return BookOfWear.learn(histories);
    }
}
