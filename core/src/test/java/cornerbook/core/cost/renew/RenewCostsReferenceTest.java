package cornerbook.core.cost.renew;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Axle;
import org.hipparchus.distribution.continuous.LogNormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RenewCostsReferenceTest {
    private static final RenewRules FREE = new RenewRules(null, false, true);

    private static WayCost way(RenewCosts costs, RenewWay way) {
        return costs.ways().stream()
                .filter(each -> each.way() == way)
                .findFirst()
                .orElseThrow();
    }

    /** Chance that a season wears more than is left, against LogNormalDistribution of hipparchus-core 4.0.3. */
    @ParameterizedTest
    @CsvSource({"4.0, 0.2, 9000, 25", "3.6, 0.2, 9000, 25", "5.5, 0.31, 12000, 40", "3.3, 0.15, 10000, 10"})
    void chanceOfAVisitMore(double depthMm, double wear, double seasonKm, double spreadPercent) {
        var costs = RenewCosts.of(
                new PairOnAxle(Axle.FRONT, depthMm, wear),
                new PairOnAxle(Axle.REAR, 8, 0.01),
                new RenewUse(seasonKm, 8, 1.6, spreadPercent),
                new RenewPrices(150, 150, 70),
                FREE);
        var wearOfSeason =
                new LogNormalDistribution(Math.log(wear * seasonKm / 1000), Math.log(1 + spreadPercent / 100));
        assertThat(way(costs, RenewWay.FOUR_NEXT_SEASON).chanceOfVisit())
                .isCloseTo(1 - wearOfSeason.cumulativeProbability(depthMm - 1.6), within(1e-9));
    }

    /**
     * Renewal reward (Ross, Introduction to Probability Models: the long-run cost is the cost of a cycle over its length) in a case
     * where no cycle throws anything away: pairs of 6.4 mm to wear and 1.6 mm a season last 4 seasons of (just under) 10 000 km, so that
     * 2 × 2 × 160 is paid for 40 000 km, 16 for each 1000, in whichever way pairs are renewed as they are due.
     */
    @Test
    void costOfACycleOverItsLength() {
        var costs = RenewCosts.of(
                new PairOnAxle(Axle.FRONT, 4.8, 0.16),
                new PairOnAxle(Axle.REAR, 6.4, 0.16),
                new RenewUse(9_999.999, 8, 1.6, 1),
                new RenewPrices(160, 160, 0),
                FREE);
        assertThat(way(costs, RenewWay.EACH_WHEN_DUE).per1000Km()).isCloseTo(16, within(1e-4));
        assertThat(way(costs, RenewWay.EACH_WHEN_DUE).spent().thrownAway()).isCloseTo(0, within(1e-3));
        // By hand: 3.2 mm + 4.8 mm of 6.4 mm thrown away, at 320 for a pair, over the 3 seasons of the slowest way.
        assertThat(way(costs, RenewWay.FOUR_NOW).spent().thrownAway()).isCloseTo(400, within(1e-9));
        assertThat(way(costs, RenewWay.FOUR_NOW).per1000Km())
                .isCloseTo(16 + 400 / (costs.distanceKm() / 1000), within(1e-4));
    }

    /** By hand: 6.4 − 4.8 mm after a season on both axles, at 320 for 6.4 mm, and a visit at P = Φ(−ln(3.2/1.6)/ln 1.25). */
    @Test
    void fourNextSeasonByHand() {
        var costs = RenewCosts.of(
                new PairOnAxle(Axle.FRONT, 4.8, 0.16),
                new PairOnAxle(Axle.REAR, 6.4, 0.16),
                new RenewUse(10_000, 8, 1.6, 25),
                new RenewPrices(160, 160, 100),
                FREE);
        var next = way(costs, RenewWay.FOUR_NEXT_SEASON);
        assertThat(next.spent().thrownAway()).isCloseTo(320 * (1.6 + 3.2) / 6.4, within(1e-9));
        // Φ(−3.1063) = 0.000947, standard normal table.
        assertThat(next.chanceOfVisit()).isCloseTo(0.000947, within(1e-6));
    }
}
