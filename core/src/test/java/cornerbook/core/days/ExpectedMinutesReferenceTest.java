package cornerbook.core.days;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.distribution.continuous.GammaDistribution;
import org.hipparchus.distribution.continuous.LogNormalDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Against the model itself, integrated on a grid with Hipparchus' normal and gamma densities: no closed form is used. The precision has
 * a gamma density, the mean given it a normal one, each logarithm of a clocked time another.
 */
class ExpectedMinutesReferenceTest {
    private static final double START = Math.log(35);
    private static final double SPREAD = 0.35;

    @ParameterizedTest
    @CsvSource({"''", "52", "41 38 55", "61 58 75 49 66 70 52 63 80 57 60 68", "12 140"})
    void isTheModelIntegrated(String written) {
        var clocked = written.isEmpty()
                ? List.<Double>of()
                : List.of(written.split(" ", -1)).stream().map(Double::valueOf).toList();
        var expected = ExpectedMinutes.of(PlannedWork.WHEELS, clocked);

        // Four degrees of freedom at the variance: the precision's shape is two.
        var precisions = new GammaDistribution(2, 1 / (2 * SPREAD * SPREAD));
        double all = 0;
        double belowUsual = 0;
        double belowNine = 0;
        for (double precision = 0.05; precision < 60; precision += 0.1) {
            double sd = 1 / Math.sqrt(precision);
            var means = new NormalDistribution(START, sd / 2);
            for (double mean = 1.5; mean < 6; mean += 0.01) {
                double weight = precisions.density(precision) * means.density(mean);
                var next = new NormalDistribution(mean, sd);
                for (double minutes : clocked) {
                    weight *= next.density(Math.log(minutes));
                }
                all += weight;
                belowUsual += weight * next.cumulativeProbability(Math.log(expected.usual()));
                belowNine += weight * next.cumulativeProbability(Math.log(expected.nineInTen()));
            }
        }
        assertThat(belowUsual / all).isCloseTo(0.5, within(0.002));
        assertThat(belowNine / all).isCloseTo(0.9, within(0.002));
        assertThat(expected.visits()).isEqualTo(clocked.size());
    }

    /** What is left of begun work, against Hipparchus' log-normal distribution: half of those that go on so long are done by then. */
    @ParameterizedTest
    @CsvSource({"125, 0.5", "125, 20", "125, 125", "125, 160", "125, 290", "15, 40", "35, 600"})
    void whatIsLeftIsTheMiddleOfAllThatTakeSoLong(double minutes, double elapsed) {
        var expected = ExpectedMinutes.of(PlannedWork.WHEELS_AND_BRAKES, List.of(118.0, 140.0, 96.0));
        double spread = Math.log(expected.nineInTen() / expected.usual())
                / new NormalDistribution(0, 1).inverseCumulativeProbability(0.9);
        var times = new LogNormalDistribution(Math.log(minutes), spread);
        double left = expected.left(minutes, elapsed);
        // Above the middle Hipparchus' 1 - F loses digits: the probability between the two is held against the one
        // behind both.
        assertThat(times.probability(elapsed, elapsed + left))
                .isCloseTo((1 - times.cumulativeProbability(elapsed)) / 2, within(1e-9));
    }
}
