package cornerbook.core.torque;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FastenerPropertyTest {
    private static final ScrewThread THREAD = ScrewThread.parse("M14×1.5");

    /** Torque from the clamp load gives the torque again; more friction or a cone takes clamp load away. */
    @Test
    void clampLoadIsMonotoneAndGoesBackToItsTorque() {
        var random = new SplittableRandom(20_260_110);
        for (int i = 0; i < 300; i++) {
            double friction = random.nextDouble(0.05, 0.35);
            double torqueNm = random.nextDouble(40, 250);
            double meanMm = random.nextDouble(15, 25);
            var flat = new SeatFace(meanMm, 1);
            var load = load(flat, friction, friction, torqueNm);
            assertThat(load.leastN()).isCloseTo(load.mostN(), within(1e-9));
            assertThat(load.leastN() / 1000 * Tightening.torquePerLoadMm(THREAD, flat, friction))
                    .isCloseTo(torqueNm, within(1e-9 * torqueNm));
            assertThat(load(flat, friction, friction + 0.02, torqueNm).leastN()).isLessThan(load.leastN());
            assertThat(load(SeatFace.cone(meanMm, 60), friction, friction, torqueNm)
                            .leastN())
                    .isLessThan(load.leastN());
            assertThat(load(flat, friction, friction, torqueNm + 1).leastN()).isGreaterThan(load.leastN());
        }
    }

    private static ClampLoad load(SeatFace seat, double lowest, double highest, double torqueNm) {
        return ClampLoad.of(THREAD, PropertyClass.CLASS_10_9, seat, new FrictionBand(lowest, highest), torqueNm);
    }

    /** A finer thread of the same diameter is thicker at its root, and clamps more at the same torque. */
    @Test
    void aFinerThreadClampsMore() {
        var coarse = ScrewThread.parse("M14");
        assertThat(THREAD.stressAreaMm2()).isGreaterThan(coarse.stressAreaMm2());
        assertThat(Tightening.torquePerLoadMm(THREAD, SeatFace.cone(18, 60), 0.15))
                .isLessThan(Tightening.torquePerLoadMm(coarse, SeatFace.cone(18, 60), 0.15));
    }

    @Test
    void theSettingFallsTheMoreTheAdapterLengthensTheWrench() {
        for (double length = 0; length <= 200; length += 20) {
            double longer = WrenchSetting.of(130, 450, length + 20, 0).settingNm();
            assertThat(longer).isLessThan(WrenchSetting.of(130, 450, length, 0).settingNm());
            assertThat(WrenchSetting.of(130, 450, length, 90).settingNm()).isCloseTo(130, within(1e-9));
            assertThat(WrenchSetting.of(130, 450, length + 20, 180).settingNm()).isGreaterThan(130);
        }
        for (double angle = 0; angle < 180; angle += 15) {
            assertThat(WrenchSetting.of(130, 450, 150, angle + 15).settingNm())
                    .isGreaterThan(WrenchSetting.of(130, 450, 150, angle).settingNm());
        }
    }

    /** Each number once, and each next fastener at least a quarter of the circle away; an even number goes in pairs straight across. */
    @ParameterizedTest
    @ValueSource(ints = {3, 4, 5, 6, 7, 8, 9, 10})
    void theOrderGoesAcross(int count) {
        var order = TighteningOrder.of(count).order();
        assertThat(new HashSet<>(order)).hasSize(count).allMatch(number -> number >= 1 && number <= count);
        for (int i = 1; i < count; i++) {
            int apart = Math.floorMod(order.get(i) - order.get(i - 1), count);
            double share = Math.min(apart, count - apart) / (double) count;
            assertThat(share).as("step %d of %s", i, order).isGreaterThanOrEqualTo(0.25);
            if (count % 2 == 0 && i % 2 == 1) {
                assertThat(share).as("pair of %s", order).isEqualTo(0.5);
            }
        }
    }

    /** The two formulas tell the same story: the short form's dry band overlaps that of the thread's geometry. */
    @Test
    void theShortFormAgreesWithTheGeometry() {
        var geometry = ClampLoad.of(THREAD, PropertyClass.CLASS_10_9, SeatFace.flat(15.5, 22), FrictionBand.DRY, 130);
        var shortForm = ShortForm.of(THREAD, PropertyClass.CLASS_10_9, ThreadState.DRY, 130);
        assertThat(shortForm.leastN()).isLessThan(geometry.mostN());
        assertThat(shortForm.mostN()).isGreaterThan(geometry.leastN());
    }
}
