package cornerbook.core.lift;

import static cornerbook.core.lift.Ratings.rated;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Corner;
import cornerbook.core.say.Facts;
import cornerbook.core.say.Said;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ArmLoadsPropertyTest {
    private static final LiftPoints POINTS = LiftPoints.symmetric(600, 2200, 1500);

    private static ArmLoads of(CarMass car, PartOff... off) {
        return ArmLoads.of(car, POINTS, List.of(off), rated(1200, 4000));
    }

    private static double load(ArmLoads loads, Corner corner) {
        return loads.arm(corner).loadKg();
    }

    /** Loads balance the car, a symmetric car loads both sides alike, and none is above the most it may be. */
    @Test
    void loadsBalanceAndMirror() {
        var random = new SplittableRandom(20_260_111);
        for (int i = 0; i < 300; i++) {
            double left = random.nextDouble(0.47, 0.53);
            double frontKg = random.nextDouble(700, 1400);
            double rearKg = random.nextDouble(700, 1400);
            var loads = of(new CarMass(frontKg, rearKg, 2800, left, 1600));
            var mirrored = of(new CarMass(frontKg, rearKg, 2800, 1 - left, 1600));
            var even = of(new CarMass(frontKg, rearKg, 2800, 0.5, 1600));
            double sum = 0;
            double momentX = 0;
            double momentY = 0;
            for (var corner : Corner.values()) {
                double load = load(loads, corner);
                sum += load;
                momentX += load * POINTS.get(corner).behindFrontAxleMm();
                momentY += load * POINTS.get(corner).leftOfCentreMm();
                assertThat(loads.arm(corner).mostKg()).isGreaterThanOrEqualTo(load - 1e-9);
            }
            assertThat(sum).isCloseTo(frontKg + rearKg, within(1e-8));
            assertThat(momentX / sum).isCloseTo(loads.centreBehindFrontAxleMm(), within(1e-8));
            assertThat(momentY / sum).isCloseTo(loads.centreLeftMm(), within(1e-8));
            assertThat(load(loads, Corner.LF)).isCloseTo(load(mirrored, Corner.RF), within(1e-8));
            assertThat(load(even, Corner.LR)).isCloseTo(load(even, Corner.RR), within(1e-8));
        }
    }

    /** A pad does not pull: near a corner the opposite one is left out, and three carry all. */
    @Test
    void aPadThatWouldPullCarriesNothing() {
        var loads = new Support(POINTS, 1000, 700, 600).equalSprings();
        assertThat(loads[Corner.RR.ordinal()]).isZero();
        assertThat(loads[Corner.LF.ordinal()]).isPositive();
        assertThat(java.util.Arrays.stream(loads).sum()).isCloseTo(1000, within(1e-9));
    }

    /** The drive battery off moves the centre of gravity away from where it was. */
    @Test
    void aPartOffMovesTheCentreAway() {
        var car = new CarMass(1000, 1100, 2800, 0.5, 1600);
        double before = of(car).centreBehindFrontAxleMm();
        var battery = new PartOff(Said.verbatim("drive battery"), 450, 1600, 0);
        var without = of(car, battery);
        assertThat(without.centreBehindFrontAxleMm()).isLessThan(before);
        assertThat(without.totalKg()).isCloseTo(1650, within(1e-9));
        assertThat(ArmLoads.of(car, POINTS, PartOff.wheels(24, 2800), rated(1200, 4000))
                        .totalKg())
                .isCloseTo(2004, within(1e-9));
    }

    @Test
    void whatMustNotBeLiftedIsRefusedOrWarnedOf() {
        assertThat(Facts.refused(() -> ArmLoads.of(
                        new CarMass(1500, 600, 2800, 0.5, 1600),
                        LiftPoints.symmetric(900, 2000, 1500),
                        List.of(),
                        rated(1200, 4000))))
                .isEqualTo("WouldTip(800 mm, 0 mm, 100 mm)");
        assertThat(Facts.refused(() -> LiftPoints.symmetric(2000, 900, 1500))).isEqualTo("NotAhead(LF, LR)");
        var heavy = ArmLoads.of(new CarMass(1400, 1400, 2800, 0.5, 1600), POINTS, List.of(), rated(750, 2500));
        assertThat(heavy.holds()).isFalse();
        assertThat(heavy.cautions()).first().isEqualTo(LiftSaid.Sentence.TOO_HEAVY);
        assertThat(heavy.cautions()).contains(LiftSaid.Sentence.PADS_AT_POINTS);
    }

    @Test
    void blocksMakeUpForWhatIsMissing() {
        var low = LiftStack.of(140, 110, 95, 60, 0);
        assertThat(low.goesUnder()).isFalse();
        assertThat(low.neededMm()).isCloseTo(95 + 60 + 10 - 140.0, within(1e-12));
        assertThat(LiftStack.of(140, 110, 95, 60, low.neededMm()).goesUnder()).isTrue();
        assertThat(LiftStack.of(140, 100, 95, 0, 0).neededMm()).isCloseTo(5, within(1e-12));
        assertThat(Facts.refused(() -> LiftStack.of(140, 110, 95, 60, 400)))
                .isEqualTo("OutOfRange(BLOCK_HEIGHT, 400 mm, 0 to 300 mm)");
    }

    /** The margin is the distance to the place on the nearest side, whatever the car. */
    @Test
    void theNearestSideIsAsFarAwayAsTheMargin() {
        var random = new SplittableRandom(20_261_126);
        for (int i = 0; i < 300; i++) {
            double x = random.nextDouble(700, 2100);
            double y = random.nextDouble(-700, 700);
            var side = POINTS.nearestOnSide(x, y);
            assertThat(Math.hypot(side.behindFrontAxleMm() - x, side.leftOfCentreMm() - y))
                    .isCloseTo(POINTS.marginMm(x, y), within(1e-9));
        }
    }
}
