package cornerbook.core.tread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.numeric.Estimate;
import cornerbook.core.tread.TreadPattern.Cause;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.hipparchus.distribution.multivariate.MultivariateNormalDistribution;
import org.junit.jupiter.api.Test;

class TreadPatternTest {
    private static Estimate mm(double depth) {
        return new Estimate(depth, 0.12);
    }

    @Test
    void namesEachCauseByWhichGrooveIsLow() {
        assertThat(TreadPattern.name(mm(4.5), mm(6), mm(4.6), 2).orElseThrow().cause())
                .isEqualTo(Cause.UNDER_INFLATION);
        assertThat(TreadPattern.name(mm(6), mm(4.6), mm(6.1), 2).orElseThrow().cause())
                .isEqualTo(Cause.OVER_INFLATION);
        assertThat(TreadPattern.name(mm(4.4), mm(6), mm(6.1), 2).orElseThrow().cause())
                .isEqualTo(Cause.INNER_ALIGNMENT);
        assertThat(TreadPattern.name(mm(6), mm(6.1), mm(4.4), 2).orElseThrow().cause())
                .isEqualTo(Cause.OUTER_ALIGNMENT);
        assertThat(TreadPattern.name(mm(6), mm(6.1), mm(5.9), 2)).isEmpty();
    }

    @Test
    void chancesSumToOneAndMirror() {
        var chances = TreadPattern.chances(mm(4.9), mm(5.5), mm(5.7), 3);
        var mirrored = TreadPattern.chances(mm(5.7), mm(5.5), mm(4.9), 3);
        assertThat(chances.values().stream().mapToDouble(Double::doubleValue).sum())
                .isCloseTo(1, within(1e-12));
        assertThat(chances.get(Cause.INNER_ALIGNMENT)).isEqualTo(mirrored.get(Cause.OUTER_ALIGNMENT), within(1e-12));
    }

    /** Equation (3) against numerical integration over the size of the fault by Hipparchus. */
    @Test
    void closedFormEqualsIntegration() {
        double wornMm = 3;
        double natural = 0.05 * wornMm;
        double shared = 0.12 * 0.12 + natural * natural;
        double size = 0.35 * wornMm;
        double[] x = {-0.7, 0.1};
        var noise = new double[][] {{2 * shared, shared}, {shared, 2 * shared}};
        double even = new MultivariateNormalDistribution(new double[] {0, 0}, noise).density(x);
        double inner = new IterativeLegendreGaussIntegrator(20, 1e-10, 1e-12)
                .integrate(
                        100_000,
                        b -> 2
                                * Math.exp(-b * b / (2 * size * size))
                                / (size * Math.sqrt(2 * Math.PI))
                                * new MultivariateNormalDistribution(new double[] {-b, 0}, noise).density(x),
                        0,
                        8 * size);
        var chances = TreadPattern.chances(mm(5.3), mm(6), mm(6.1), wornMm);
        double odds = chances.getOrDefault(Cause.INNER_ALIGNMENT, 0.0) / chances.getOrDefault(Cause.EVEN, 0.0);
        assertThat(odds).isCloseTo(inner * 0.025 / (even * 0.9), within(1e-6 * odds));
    }
}
