package cornerbook.core.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

class JointProbabilityReferenceTest {
    /** Genz's algorithm as R's package mvtnorm has it; the file's first line names the versions, its script lies beside it. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/wear/joint-probability.csv", numLinesToSkip = 1)
    void fourTyresTogether(ArgumentsAccessor row) {
        var numbers = IntStream.range(0, row.size())
                .mapToDouble(i -> Double.parseDouble(Objects.requireNonNull(row.getString(i))))
                .toArray();
        var correlation = new double[16];
        correlation[4] = numbers[4];
        correlation[8] = numbers[5];
        correlation[12] = numbers[6];
        correlation[9] = numbers[7];
        correlation[13] = numbers[8];
        correlation[14] = numbers[9];
        assertThat(JointProbability.allAbove(numbers, correlation, 4)).isCloseTo(numbers[10], within(0.0002));
    }

    /** Sheppard's formula: two variables with zero mean are both above zero with 1/4 + asin(ρ)/2π. */
    @Test
    void twoVariablesAtTheirMean() {
        for (double r : new double[] {-0.9, -0.4, 0, 0.3, 0.7, 0.9}) {
            assertThat(JointProbability.allAbove(new double[] {0, 0}, new double[] {1, 0, 0, 0, r}, 2))
                    .isCloseTo(0.25 + Math.asin(r) / (2 * Math.PI), within(1e-4));
        }
    }
}
