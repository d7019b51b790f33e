package cornerbook.core.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Against Hipparchus' normal distribution (4.0.3). */
class NormalDistributionReferenceTest {
    @Test
    void cumulativeAndDensityAgree() {
        var reference = new org.hipparchus.distribution.continuous.NormalDistribution();
        for (double z = -12; z <= 12; z += 0.013) {
            double expected = reference.cumulativeProbability(z);
            assertThat(NormalDistribution.cumulative(z))
                    .as("z = %s", z)
                    .isCloseTo(expected, within(1e-14 + 1e-11 * Math.min(expected, 1e-3)));
            assertThat(NormalDistribution.density(z)).isCloseTo(reference.density(z), within(1e-15));
        }
    }
}
