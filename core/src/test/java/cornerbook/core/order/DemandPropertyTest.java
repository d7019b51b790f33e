package cornerbook.core.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DemandPropertyTest {
    private static List<Need> someNeeds(Random random) {
        var needs = new ArrayList<Need>();
        int cars = random.nextInt(9);
        for (int car = 0; car < cars; car++) {
            double once = random.nextInt(4) == 0 ? random.nextInt(2) : random.nextDouble();
            needs.add(new Need(
                    1 + random.nextInt(4), once, random.nextInt(3) == 0 ? 0 : (1 - once) * random.nextDouble()));
        }
        return needs;
    }

    /** Every way in which each car may need nothing, once or twice its pieces, one by one. */
    private static double[] enumerated(List<Need> needs) {
        var probabilities = new double[needs.stream().mapToInt(Need::pieces).sum() * 2 + 1];
        int ways = (int) Math.pow(3, needs.size());
        for (int way = 0; way < ways; way++) {
            double chance = 1;
            int pieces = 0;
            int rest = way;
            for (var need : needs) {
                int times = rest % 3;
                rest /= 3;
                chance *= times == 0 ? 1 - need.once() - need.twice() : times == 1 ? need.once() : need.twice();
                pieces += times * need.pieces();
            }
            probabilities[pieces] += chance;
        }
        return probabilities;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void isTheSumOverAllWays(long seed) {
        var random = new Random(seed);
        for (int trial = 0; trial < 20; trial++) {
            var needs = someNeeds(random);
            var demand = Demand.of(needs);
            var expected = enumerated(needs);
            double mean = 0;
            for (int pieces = 0; pieces < expected.length; pieces++) {
                assertThat(demand.probability(pieces))
                        .as("%s of %s", pieces, needs)
                        .isCloseTo(expected[pieces], within(1e-13));
                mean += pieces * expected[pieces];
            }
            assertThat(demand.mean()).isCloseTo(mean, within(1e-12));
            assertThat(demand.chanceEnough(demand.most())).isCloseTo(1, within(1e-13));
        }
    }

    /** Ordering by the level of two costs costs least on average, tried for every quantity. */
    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25, 26})
    void newsvendorQuantityCostsLeast(long seed) {
        var random = new Random(seed);
        for (int trial = 0; trial < 20; trial++) {
            var needs = someNeeds(random);
            int missing = 1 + random.nextInt(200);
            int left = 1 + random.nextInt(200);
            var demand = Demand.of(needs);
            var probabilities = enumerated(needs);
            int chosen = demand.quantity(ServiceLevel.ofCosts(BigDecimal.valueOf(missing), BigDecimal.valueOf(left)));
            double least = Double.POSITIVE_INFINITY;
            for (int order = 0; order < probabilities.length; order++) {
                least = Math.min(least, cost(probabilities, order, missing, left));
            }
            assertThat(cost(probabilities, chosen, missing, left)).isCloseTo(least, within(1e-9));
        }
    }

    private static double cost(double[] probabilities, int order, int missing, int left) {
        double cost = 0;
        for (int needed = 0; needed < probabilities.length; needed++) {
            cost += probabilities[needed]
                    * (needed > order ? missing * (double) (needed - order) : left * (double) (order - needed));
        }
        return cost;
    }

    @Test
    void moreChanceNeverNeedsFewer() {
        var random = new Random(31);
        for (int trial = 0; trial < 50; trial++) {
            var demand = Demand.of(someNeeds(random));
            int before = 0;
            for (double level = 0; level <= 1; level += 0.05) {
                int quantity = demand.quantity(level);
                assertThat(quantity).isGreaterThanOrEqualTo(before);
                assertThat(demand.chanceEnough(quantity)).isGreaterThanOrEqualTo(level - 1e-12);
                assertThat(quantity == 0 || demand.chanceEnough(quantity - 1) < level)
                        .isTrue();
                before = quantity;
            }
        }
    }

    @Test
    void nobodyNeedsNothing() {
        var demand = Demand.of(List.of());
        assertThat(demand.quantity(0.99)).isZero();
        assertThat(demand.mean()).isZero();
        assertThat(Demand.of(List.of(Need.of(4, 1))).quantity(0)).isZero();
        assertThat(Demand.of(List.of(Need.of(4, 1))).quantity(0.01)).isEqualTo(4);
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> new Need(0, 0.5, 0)).hasMessageContaining("pieces is 0");
        assertThatThrownBy(() -> new Need(2, 0.6, 0.5)).hasMessageContaining("0.6 and 0.5");
        assertThatThrownBy(() -> new Need(2, Double.NaN, 0)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> Demand.of(List.of()).quantity(1.1)).hasMessageContaining("level is 1.1");
        assertThatThrownBy(() -> ServiceLevel.ofCosts(BigDecimal.ZERO, BigDecimal.ONE))
                .hasMessageContaining("above 0");
    }
}
