package cornerbook.bench.brake;

import cornerbook.core.brake.seizing.WeibullFit;
import cornerbook.core.brake.seizing.WeibullRegression;
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

/** The seizing hazard from 50 000 interval-censored pads with four covariates. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SeizingBenchmark {
    private final InventedPads pads = InventedPads.of(50_000, 11);
    private final WeibullRegression regression = WeibullRegression.withoutPriors(4);

    /** Maximum likelihood with standard errors. */
    @Benchmark
    public WeibullFit fitOf50000Pads() {
        return regression.fit(pads.times(), pads.covariates());
    }
}
