package cornerbook.core.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

class JointProbabilityReferenceTest {
    /** Genz's algorithm as R's package mvtnorm has it; the file's first line names the versions, its script lies beside it. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/wear/joint-probability.csv", numLinesToSkip = 2)
    void fourTyresTogether(ArgumentsAccessor row) {
        equalsReference(row, 4, 0.012);
    }

    /** Genz's algorithm as SciPy has it, on what is known of the grooves of sets of tyres; its script lies beside the file. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/wear/twelve-grooves.csv", numLinesToSkip = 2)
    void twelveGroovesTogether(ArgumentsAccessor row) {
        equalsReference(row, 12, 0.005);
    }

    /** Sheppard's formula: two variables with zero mean are both above zero with 1/4 + asin(ρ)/2π. */
    @Test
    void twoVariablesAtTheirMean() {
        for (double r : new double[] {-0.9, -0.4, 0, 0.3, 0.7, 0.9}) {
            assertThat(JointProbability.allAbove(new double[] {0, 0}, new double[] {1, r, r, 1}))
                    .as("correlation %s", r)
                    .isCloseTo(0.25 + Math.asin(r) / (2 * Math.PI), within(0.005));
        }
    }

    @Test
    void oneVariableAndNone() {
        assertThat(JointProbability.allAbove(new double[0], new double[0])).isEqualTo(1);
        assertThat(JointProbability.allAbove(new double[] {2}, new double[] {4}))
                .isEqualTo(NormalDistribution.cumulative(1));
    }

    /** A row: each mean over its standard deviation, the correlations above the diagonal by rows, the probability. */
    private static void equalsReference(ArgumentsAccessor row, int size, double error) {
        var numbers = IntStream.range(0, row.size())
                .mapToDouble(i -> Double.parseDouble(Objects.requireNonNull(row.getString(i))))
                .toArray();
        var correlation = new double[size * size];
        int next = size;
        for (int i = 0; i < size; i++) {
            correlation[i * size + i] = 1;
            for (int j = i + 1; j < size; j++) {
                correlation[i * size + j] = numbers[next];
                correlation[j * size + i] = numbers[next++];
            }
        }
        assertThat(JointProbability.allAbove(Arrays.copyOf(numbers, size), correlation))
                .isCloseTo(numbers[next], within(error));
    }
}
