package cornerbook.core.brake.burnish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Axle;
import cornerbook.core.quantity.QuantitySaid;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Refused;
import org.junit.jupiter.api.Test;

class BurnishPlannerPropertyTest {
    private static final BrakedCar CAR = new BrakedCar(1900, 1.05, 0.68, 2.05);
    private static final DiscBody DISC = new DiscBody(7.2, 0.21, 502, 0.9);
    private static final BurnishTarget TARGET = BurnishTarget.everyday(5);

    /** The bulletin's own drive (65 to 15 km/h, moderate) lands in the band, with about as many stops as it asks. */
    @Test
    void theBulletinsDriveReachesTheBand() {
        var plan = BurnishPlanner.plan(CAR, DISC, Axle.FRONT, new BurnishStop(65, 15, 3, 0), TARGET);
        assertThat(plan.warning()).isEqualTo(BurnishPlan.Warning.NONE);
        assertThat(plan.stops()).isBetween(8, 10);
        assertThat(plan.peaksC().getLast()).isBetween(TARGET.lowestC(), TARGET.highestC());
        assertThat(plan.peaksC()).isSorted();
    }

    @Test
    void regenerationLeavesTheDiscCold() {
        var plan = BurnishPlanner.plan(CAR, DISC, Axle.FRONT, new BurnishStop(65, 15, 3, 0.9), TARGET);
        assertThat(plan.warning()).isEqualTo(BurnishPlan.Warning.STAYS_TOO_COLD);
    }

    @Test
    void hardStopsFromSpeedExceedTheLimit() {
        var plan = BurnishPlanner.plan(CAR, DISC, Axle.FRONT, new BurnishStop(130, 0, 7, 0), TARGET);
        assertThat(plan.warning()).isEqualTo(BurnishPlan.Warning.EXCEEDS_THE_LIMIT);
        assertThat(plan.spacingS()).isEqualTo(TARGET.longestSpacingS());
    }

    @Test
    void spacingIsTheShortestThatStaysInTheBand() {
        var stop = new BurnishStop(65, 15, 3, 0);
        var patient = new BurnishTarget(5, 100, 200, 300, 60, 15, 600);
        var plan = BurnishPlanner.plan(CAR, DISC, Axle.FRONT, stop, patient);
        assertThat(plan.spacingS()).isGreaterThan(15);
        assertThat(plan.peaksC().getLast()).isCloseTo(200, within(0.5)).isLessThanOrEqualTo(200);
    }

    @Test
    void energyFollowsMassAndShare() {
        var stop = new BurnishStop(65, 15, 3, 0);
        var front = BurnishPlanner.plan(CAR, DISC, Axle.FRONT, stop, TARGET);
        var rear = BurnishPlanner.plan(CAR, DISC, Axle.REAR, stop, TARGET);
        double speeds = (65 * 65 - 15 * 15) / (3.6 * 3.6);
        assertThat(2 * (front.energyPerStopJ() + rear.energyPerStopJ()))
                .as("the four discs take the share of all the energy that goes into discs")
                .isCloseTo(0.9 * 0.5 * 1900 * 1.05 * speeds, within(1e-6));
    }

    @Test
    void whatCannotBeIsRefusedInASentence() {
        assertThatThrownBy(() -> new BurnishStop(65, 70, 3, 0))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refusal -> assertThat(refusal.said())
                                .isEqualTo(new QuantitySaid.OutOfRange(
                                        BurnishSaid.Part.SPEED_AFTER,
                                        Amount.of(70, "km/h"),
                                        Between.exact(0, 64, "km/h"))));
        assertThatThrownBy(() -> new BurnishTarget(5, 100, 90, 300, 8, 15, 30)).hasMessageContaining("HIGHEST_PEAK");
    }
}
