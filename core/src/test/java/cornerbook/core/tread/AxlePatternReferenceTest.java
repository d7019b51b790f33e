package cornerbook.core.tread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.tread.AxlePattern.Cause;
import org.hipparchus.analysis.integration.RombergIntegrator;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.multivariate.MultivariateNormalDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AxlePatternReferenceTest {
    private static final double SPREAD = 0.05;
    private static final double SIZE = 0.9;

    /** Left inner, outer, right inner, outer against their centres: the same directions, written down once more. */
    private static double[] direction(Cause cause) {
        return switch (cause) {
            case EVEN -> new double[] {0, 0, 0, 0};
            case BOTH_INNER -> new double[] {-1, 0, -1, 0};
            case BOTH_OUTER -> new double[] {0, -1, 0, -1};
            case LEFT_INNER -> new double[] {-1, 0, 0, 0};
            case LEFT_OUTER -> new double[] {0, -1, 0, 0};
            case RIGHT_INNER -> new double[] {0, 0, -1, 0};
            case RIGHT_OUTER -> new double[] {0, 0, 0, -1};
            case SHOULDERS -> new double[] {-1, -1, -1, -1};
            case CENTRES -> new double[] {1, 1, 1, 1};
        };
    }

    /** The multivariate normal density, its half-normal size integrated by Romberg (hipparchus-core and -stat 4.0.3). */
    @ParameterizedTest
    @CsvSource({"-0.8,0.1,-0.6,0.0", "0.2,-0.1,-0.9,0.1", "0.0,0.1,-0.1,0.0", "-0.5,-0.4,-0.5,-0.6", "0.6,0.5,0.4,0.7"})
    void closedFormEqualsNumericalIntegration(
            double leftInner, double leftOuter, double rightInner, double rightOuter) {
        double[] x = {leftInner, leftOuter, rightInner, rightOuter};
        double[][] covariance = {
            {2 * SPREAD, SPREAD, 0, 0},
            {SPREAD, 2 * SPREAD, 0, 0},
            {0, 0, 2 * SPREAD, SPREAD},
            {0, 0, SPREAD, 2 * SPREAD}
        };
        var left = new TreadAcross(6 + leftInner, 6, 6 + leftOuter);
        var right = new TreadAcross(6 + rightInner, 6, 6 + rightOuter);
        double even = new MultivariateNormalDistribution(new double[4], covariance).density(x);
        var half = new NormalDistribution(0, SIZE);
        for (var cause : Cause.values()) {
            double[] d = direction(cause);
            double integrated = new RombergIntegrator(1e-10, 1e-300, 8, 30)
                    .integrate(
                            10_000_000,
                            b -> {
                                double[] mean = new double[4];
                                for (int i = 0; i < mean.length; i++) {
                                    mean[i] = b * d[i];
                                }
                                return 2
                                        * half.density(b)
                                        * new MultivariateNormalDistribution(mean, covariance).density(x);
                            },
                            0,
                            8 * SIZE);
            double evidence = AxlePattern.evidence(cause, left, right, SPREAD, SIZE);
            assertThat(evidence).as(cause.name()).isCloseTo(integrated / even, within(1e-6 * evidence));
        }
    }
}
