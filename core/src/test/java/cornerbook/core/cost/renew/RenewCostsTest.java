package cornerbook.core.cost.renew;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Axle;
import cornerbook.core.cost.renew.RenewSaid.ClosedBy;
import cornerbook.core.cost.renew.RenewSaid.DifferTooMuch;
import cornerbook.core.cost.renew.RenewSaid.NewDoesNotLast;
import cornerbook.core.cost.renew.RenewSaid.WouldNotHold;
import cornerbook.core.quantity.QuantitySaid.OutOfRange;
import cornerbook.core.say.Refused;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class RenewCostsTest {
    private static final RenewUse USE = new RenewUse(8500, 8, 1.6, 25);
    private static final RenewPrices PRICES = new RenewPrices(168, 160, 60);
    private static final RenewRules FREE = new RenewRules(null, false, true);

    private static RenewCosts costs(double frontMm, double rearMm, RenewPrices prices, RenewRules rules) {
        return RenewCosts.of(
                new PairOnAxle(Axle.FRONT, frontMm, 0.21), new PairOnAxle(Axle.REAR, rearMm, 0.14), USE, prices, rules);
    }

    private static WayCost way(RenewCosts costs, RenewWay way) {
        return costs.ways().stream()
                .filter(each -> each.way() == way)
                .findFirst()
                .orElseThrow();
    }

    private static RenewSaid.@Nullable Closed closed(RenewCosts costs, RenewWay way) {
        return way(costs, way).closed();
    }

    @Test
    void withNoDiscountForFourNobodyIsToldToThrowTreadAway() {
        var costs = costs(4.9, 6.4, new RenewPrices(168, 168, 60), FREE);
        assertThat(costs.cheapest().spent().thrownAway())
                .isLessThan(way(costs, RenewWay.FOUR_NOW).spent().thrownAway());
        assertThat(costs.ways().getLast().way()).isEqualTo(RenewWay.FOUR_NOW);
    }

    @Test
    void aLargeDiscountForFourPaysForTheTreadThatIsThrownAway() {
        assertThat(costs(4.0, 5.0, new RenewPrices(168, 60, 60), FREE)
                        .cheapest()
                        .way()
                        .fourTogether())
                .isTrue();
    }

    /** Of an all-wheel-drive car: 8 mm beside 6.4 mm is 1.6 mm apart. */
    @Test
    void twoAreNotOpenWhereTheAxlesWouldDifferTooMuch() {
        assertThat(closed(costs(4.9, 6.4, PRICES, new RenewRules(1.59, false, true)), RenewWay.TWO_AS_DUE))
                .isInstanceOfSatisfying(DifferTooMuch.class, differ -> {
                    assertThat(differ.difference().value()).isCloseTo(1.6, within(1e-9));
                    assertThat(differ.season()).isZero();
                });
        // Later on: the pair bought now has worn when the other is bought.
        assertThat(closed(costs(4.9, 6.4, PRICES, new RenewRules(4.0, false, true)), RenewWay.TWO_AS_DUE))
                .isInstanceOfSatisfying(
                        DifferTooMuch.class,
                        differ -> assertThat(differ.season()).isPositive());
        assertThat(closed(costs(4.9, 6.4, PRICES, new RenewRules(0.1, false, true)), RenewWay.FOUR_NOW))
                .as("four new ones differ in nothing")
                .isNull();
    }

    @Test
    void nothingIsLeftOnThatIsNotLikelyToHold() {
        var costs = costs(3.0, 7.0, PRICES, FREE);
        assertThat(closed(costs, RenewWay.FOUR_NEXT_SEASON))
                .isInstanceOfSatisfying(
                        WouldNotHold.class, worn -> assertThat(worn.axle()).isEqualTo(Axle.FRONT));
        assertThat(closed(costs, RenewWay.EACH_WHEN_DUE)).isInstanceOf(WouldNotHold.class);
        assertThat(closed(costs, RenewWay.TWO_AS_DUE)).isNull();
        assertThat(way(costs, RenewWay.TWO_AS_DUE).firstAxle()).isEqualTo(Axle.FRONT);
        assertThat(closed(costs(1.6, 1.6, PRICES, FREE), RenewWay.TWO_AS_DUE)).isInstanceOf(WouldNotHold.class);
    }

    @Test
    void placesAreNotChangedAgainstTheRules() {
        assertThat(closed(costs(4.9, 6.4, PRICES, new RenewRules(null, true, true)), RenewWay.MOVE_THEN_FOUR))
                .isEqualTo(ClosedBy.DEEPER_PAIR_WOULD_BE_IN_FRONT);
        assertThat(closed(costs(6.4, 4.9, PRICES, new RenewRules(null, true, true)), RenewWay.MOVE_THEN_FOUR))
                .isNull();
        assertThat(closed(costs(4.9, 6.4, PRICES, new RenewRules(null, false, false)), RenewWay.MOVE_THEN_FOUR))
                .isEqualTo(ClosedBy.SIZES_DIFFER);
    }

    /** What is paid is what is driven off, what is thrown away, and visits: no coin is lost between them. */
    @Test
    void nothingIsLostBetweenWhatIsPaidAndWhatIsDriven() {
        var random = new Random(20261129);
        for (int i = 0; i < 500; i++) {
            double price = 50 + 200 * random.nextDouble();
            double frontWear = 0.05 + 0.25 * random.nextDouble();
            double rearWear = 0.05 + 0.25 * random.nextDouble();
            var use = new RenewUse(3000 + 12_000 * random.nextDouble(), 8, 1.6, 5 + 40 * random.nextDouble());
            var costs = RenewCosts.of(
                    new PairOnAxle(Axle.FRONT, 8 * random.nextDouble(), frontWear),
                    new PairOnAxle(Axle.REAR, 8 * random.nextDouble(), rearWear),
                    use,
                    new RenewPrices(price, price, 100 * random.nextDouble()),
                    FREE);
            double drivenOff = 2 * price * (frontWear + rearWear) * costs.distanceKm() / 1000 / 6.4;
            for (var way : costs.ways()) {
                if (way.isOpen()) {
                    assertThat(way.per1000Km() * costs.distanceKm() / 1000)
                            .isCloseTo(
                                    drivenOff
                                            + way.spent().thrownAway()
                                            + way.spent().visits(),
                                    within(1e-6));
                    assertThat(costs.moreThanCheapest(way)).isNotNegative();
                }
            }
            assertThat(way(costs, RenewWay.FOUR_NOW).isOpen()).isTrue();
        }
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> RenewCosts.of(
                        new PairOnAxle(Axle.FRONT, 5, 0.2), new PairOnAxle(Axle.REAR, 5, 2), USE, PRICES, FREE))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.said())
                                .isInstanceOfSatisfying(
                                        NewDoesNotLast.class,
                                        not -> assertThat(not.axle()).isEqualTo(Axle.REAR)));
        assertThatThrownBy(() -> new RenewUse(8500, 3.9, 1.6, 25))
                .isInstanceOfSatisfying(
                        Refused.class, refused -> assertThat(refused.said()).isInstanceOf(OutOfRange.class));
        assertThatThrownBy(() -> new PairOnAxle(Axle.REAR, -0.1, 0.2)).isInstanceOf(Refused.class);
    }
}
