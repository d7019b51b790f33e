package cornerbook.core.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class DemandReferenceTest {
    private static final double TOLERANCE = 1e-12;

    private static Demand ofSingles(double... chances) {
        return Demand.of(
                Arrays.stream(chances).mapToObj(chance -> Need.of(1, chance)).toList());
    }

    /** The example in the description of the package fast-poibin (github.com/privet-kitty/fast-poibin, README), to its three digits. */
    @Test
    void threeCarsAsPublished() {
        var demand = ofSingles(0.1, 0.2, 0.2);
        assertThat(List.of(demand.probability(0), demand.probability(1), demand.probability(2), demand.probability(3)))
                .usingComparatorForType((a, b) -> Math.abs(a - b) < 5e-16 ? 0 : Double.compare(a, b), Double.class)
                .containsExactly(0.576, 0.352, 0.068, 0.004);
        assertThat(demand.chanceEnough(1)).isCloseTo(0.928, within(5e-16));
        assertThat(demand.chanceEnough(2)).isCloseTo(0.996, within(5e-16));
    }

    /** SciPy 1.17.1, scipy.stats.poisson_binom, which goes by a Fourier transform. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/order/poisson-binomial.csv", numLinesToSkip = 2)
    void agreesWithAGeneralLibrary(String name, String chances, int count, double probability, double upTo) {
        var demand = ofSingles(Arrays.stream(chances.split(" ", -1))
                .mapToDouble(Double::parseDouble)
                .toArray());
        assertThat(demand.probability(count)).as(name).isCloseTo(probability, within(TOLERANCE));
        assertThat(demand.chanceEnough(count)).as(name).isCloseTo(upTo, within(TOLERANCE));
    }

    /** Hipparchus' binomial distribution (4.0.3): a thousand cars of one chance, each with four tyres. */
    @Test
    void carsOfOneChanceAreBinomial() {
        var needs = new ArrayList<Need>();
        for (int car = 0; car < 1000; car++) {
            needs.add(Need.of(4, 0.07));
        }
        var demand = Demand.of(needs);
        var reference = new BinomialDistribution(1000, 0.07);
        for (int cars = 0; cars <= 1000; cars++) {
            assertThat(demand.probability(4 * cars)).isCloseTo(reference.probability(cars), within(1e-13));
        }
        assertThat(demand.quantity(0.95)).isEqualTo(4 * reference.inverseCumulativeProbability(0.95));
        assertThat(demand.mean()).isCloseTo(280, within(1e-9));
    }

    /**
     * The worked example of the discrete newsvendor in the lecture notes neoprimate.github.io/IEOR (supply-chain, newsvendor,
     * discrete): sold at 10, bought at 4, given away at 1; demand 10, 12, 14, 14, 16, 20 in six weeks. Order 14: the critical
     * ratio 6/9 is just reached by four weeks of six.
     */
    @Test
    void newsvendorOfSixWeeks() {
        double level = ServiceLevel.ofCosts(new BigDecimal("6"), new BigDecimal("3"));
        assertThat(level).isCloseTo(2.0 / 3, within(1e-15));
        var probabilities = new double[21];
        for (int sold : new int[] {10, 12, 14, 14, 16, 20}) {
            probabilities[sold] += 1.0 / 6;
        }
        assertThat(new Demand(probabilities, 86.0 / 6).quantity(level)).isEqualTo(14);
    }
}
