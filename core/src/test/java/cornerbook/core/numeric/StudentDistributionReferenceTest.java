package cornerbook.core.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StudentDistributionReferenceTest {
    /** TDistribution of hipparchus-core 4.0.3. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 8, 17, 30, 99, 1000})
    void againstALibrary(int degreesOfFreedom) {
        var library = new TDistribution(degreesOfFreedom);
        for (double probability : new double[] {0.5, 0.9, 0.95, 0.99, 0.999}) {
            double expected = library.inverseCumulativeProbability((1 + probability) / 2);
            assertThat(StudentDistribution.within(probability, degreesOfFreedom))
                    .isCloseTo(expected, within(1e-6 * expected));
        }
    }

    /** NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, critical values of Student's t: 0.975 and ν = 5, 10, 60. */
    @Test
    void againstATable() {
        assertThat(StudentDistribution.within(0.95, 5)).isCloseTo(2.571, within(5e-4));
        assertThat(StudentDistribution.within(0.95, 10)).isCloseTo(2.228, within(5e-4));
        assertThat(StudentDistribution.within(0.95, 60)).isCloseTo(2.000, within(5e-4));
    }
}
