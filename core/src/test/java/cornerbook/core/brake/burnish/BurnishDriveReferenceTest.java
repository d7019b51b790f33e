package cornerbook.core.brake.burnish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Axle;
import cornerbook.core.say.Amount;
import org.junit.jupiter.api.Test;

class BurnishDriveReferenceTest {
    private static final BrakedCar CAR = new BrakedCar(1900, 1.05, 0.68, 2.05);
    private static final DiscBody DISC = new DiscBody(7.2, 0.21, 502, 0.9);

    private static BurnishDrive drive(double regenerationShare) {
        return BurnishDrive.of(
                CAR, DISC, Axle.FRONT, new BurnishStop(65, 15, 3, regenerationShare), BurnishTarget.everyday(5));
    }

    /** Load transfer by the moments about the contact points: Gillespie, Fundamentals of Vehicle Dynamics, chapter 3; from memory. */
    @Test
    void frontShareGrowsWithTheLoadThatBrakingMoves() {
        // 1000 kg at 9.80665 m/s² (1 g), h = 0.5 m, L = 2.5 m moves 20 % of the weight forward.
        assertThat(BrakedCar.frontShareWhenBraking(0.5, 500, 2500, 9.80665)).isCloseTo(0.7, within(1e-12));
        assertThat(BrakedCar.frontShareWhenBraking(0.5, 500, 2500, 0)).isCloseTo(0.5, within(1e-12));
    }

    /** Area of a ring: π/4 (D² − d²), both faces; the closed form of any handbook of geometry. */
    @Test
    void coolingAreaIsThatOfTheRings() {
        double ring = Math.PI * (0.16 * 0.16 - 0.096 * 0.096);
        assertThat(DiscBody.castIron(7, 320, false).coolingAreaM2()).isCloseTo(2 * ring, within(1e-12));
        assertThat(DiscBody.castIron(7, 320, true).coolingAreaM2()).isCloseTo(4 * ring, within(1e-12));
    }

    @Test
    void temperaturesFollowThePlan() {
        var drive = drive(0);
        var moments = drive.temperatures();
        assertThat(moments.getFirst().celsius()).isEqualTo(5);
        for (int i = 0; i < drive.plan().stops(); i++) {
            assertThat(moments.get(2 * i + 1).celsius())
                    .isEqualTo(drive.plan().peaksC().get(i));
        }
        assertThat(moments.getLast().celsius()).as("within 30 K of the air").isCloseTo(35, within(0.1));
        for (int i = 1; i < moments.size(); i++) {
            assertThat(moments.get(i).seconds())
                    .isGreaterThan(moments.get(i - 1).seconds());
        }
    }

    @Test
    void regenerationKeepsTheDiscColdAndThePlanSaysSo() {
        assertThat(drive(0).plan().warning()).isEqualTo(BurnishPlan.Warning.NONE);
        assertThat(drive(0.9).plan().warning()).isEqualTo(BurnishPlan.Warning.STAYS_TOO_COLD);
        assertThat(drive(0.9).cautions().getFirst()).isEqualTo(new BurnishSaid.StaysTooCold(Amount.of(100, "°C")));
    }

    @Test
    void aLowLimitOfTheDiscIsNeverExceededUnsaid() {
        var target = BurnishTarget.everyday(5).withLimit(110);
        var drive = BurnishDrive.of(CAR, DISC, Axle.FRONT, new BurnishStop(130, 15, 3, 0), target);
        assertThat(drive.plan().peaksC().getLast()).isGreaterThan(110);
        assertThat(drive.cautions().getFirst()).isEqualTo(new BurnishSaid.ExceedsLimit(Amount.of(110, "°C")));
    }
}
