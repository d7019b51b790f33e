package cornerbook.core.brake.interval;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.distribution.continuous.WeibullDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AgeReplacementReferenceTest {
    private static final IterativeLegendreGaussIntegrator INTEGRATOR =
            new IterativeLegendreGaussIntegrator(5, 1e-10, 1e-12);

    private static DoubleUnaryOperator weibull(double shape, double scale) {
        return t -> Math.exp(-Math.pow(t / scale, shape));
    }

    /**
     * The example of a reliability handbook on the web, "Optimum Replacement Time": Weibull with β = 2.5 and η = 1000 h, 5 after a
     * failure and 1 planned. Its answer, 493.0470 h, is from memory; the next test finds the same by another way.
     */
    @Test
    void publishedExample() {
        assertThat(new AgeReplacement(weibull(2.5, 1000), 1, 5).bestAge(3000)).isCloseTo(493.0470, within(1e-3));
    }

    /**
     * Barlow and Hunter's condition for the best age, h(t) ∫R − F(t) = c_p/(c_f − c_p), with hazard, distribution, integral and root
     * of hipparchus-core 4.0.3.
     */
    @ParameterizedTest
    @CsvSource({"2.5, 1000, 1, 5", "2, 54, 140, 560", "3, 20, 100, 1000", "1.5, 36, 10, 90"})
    void conditionOfTheBestAge(double shape, double scale, double planned, double failed) {
        var weibull = new WeibullDistribution(shape, scale);
        double expected = new BrentSolver(1e-9)
                .solve(
                        200,
                        t -> shape
                                        / scale
                                        * Math.pow(t / scale, shape - 1)
                                        * INTEGRATOR.integrate(100_000, x -> 1 - weibull.cumulativeProbability(x), 0, t)
                                - weibull.cumulativeProbability(t)
                                - planned / (failed - planned),
                        scale / 100,
                        3 * scale);
        var policy = new AgeReplacement(weibull(shape, scale), planned, failed);
        double best = policy.bestAge(3 * scale);
        assertThat(best).isCloseTo(expected, within(1e-4 * scale));
        // At the best age the cost for each unit of time is (c_f − c_p) h(t): the same authors.
        assertThat(policy.costRate(best))
                .isCloseTo(
                        (failed - planned) * shape / scale * Math.pow(best / scale, shape - 1),
                        within(1e-4 * policy.costRate(best)));
    }

    /** With a hazard that does not grow nothing is gained by planning: c_f/mean is the least (from the formula, R = e^(−t/η)). */
    @Test
    void aHazardThatDoesNotGrowHasNoBestAge() {
        var policy = new AgeReplacement(weibull(1, 10), 1, 5);
        assertThat(policy.bestAge(200)).isEqualTo(200);
        assertThat(policy.costRate(200)).isCloseTo(0.5, within(1e-6));
    }
}
