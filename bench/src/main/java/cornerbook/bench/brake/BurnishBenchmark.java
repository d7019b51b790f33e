package cornerbook.bench.brake;

import cornerbook.core.brake.burnish.BrakedCar;
import cornerbook.core.brake.burnish.BurnishPlan;
import cornerbook.core.brake.burnish.BurnishPlanner;
import cornerbook.core.brake.burnish.BurnishStop;
import cornerbook.core.brake.burnish.BurnishTarget;
import cornerbook.core.brake.burnish.DiscBody;
import cornerbook.core.corner.Axle;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One burnish plan, with a spacing that has to be searched for. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class BurnishBenchmark {
    private final BrakedCar car = new BrakedCar(1900, 1.05, 0.68, 2.05);
    private final DiscBody disc = new DiscBody(7.2, 0.21, 502, 0.9);
    private final BurnishStop stop = new BurnishStop(65, 15, 3, 0);
    private final BurnishTarget target = new BurnishTarget(5, 100, 200, 300, 60, 15, 600);

    /** Spacing, sixty stops, cooling down. */
    @Benchmark
    public BurnishPlan planOfSixtyStops() {
        return BurnishPlanner.plan(car, disc, Axle.FRONT, stop, target);
    }
}
