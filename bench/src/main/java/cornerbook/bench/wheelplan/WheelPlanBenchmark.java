package cornerbook.bench.wheelplan;

import cornerbook.core.wheelplan.PlanRequest;
import cornerbook.core.wheelplan.WheelPlan;
import cornerbook.core.wheelplan.search.WheelPlanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Plans of one set, a different request each time. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class WheelPlanBenchmark {
    private static final int REQUESTS = 64;

    @Param({"4", "8"})
    int seasons;

    private final List<PlanRequest> requests = new ArrayList<>();
    private int next;

    /** Tyres of one size that may go anywhere. */
    @Setup
    public void invent() {
        var random = new SplittableRandom(8);
        for (int i = 0; i < REQUESTS; i++) {
            requests.add(Requests.free(random, seasons));
        }
    }

    /** The proven best plan with its gain and the costs of its rules. */
    @Benchmark
    public Optional<WheelPlan> plan() {
        next = (next + 1) % REQUESTS;
        return WheelPlanner.plan(requests.get(next), List.of(), List.of());
    }
}
