package cornerbook.core.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;

class BatteryPropertyTest {
    private static final int CASES = 300;

    /** More volts never mean less charge, and of two batteries with one voltage the colder one is not the emptier. */
    @ParameterizedTest
    @EnumSource(value = Chemistry.class, names = "LITHIUM", mode = Mode.EXCLUDE)
    void chargeIsMonotoneInVoltageAndTemperature(Chemistry chemistry) {
        var random = new SplittableRandom(20_261_126);
        for (int i = 0; i < CASES; i++) {
            double volts = random.nextDouble(11, 13);
            double temperatureC = random.nextDouble(-30, 50);
            double charge = RestVoltage.of(chemistry, volts, temperatureC, 12).stateOfCharge();
            assertThat(charge).isBetween(0.0, 1.0);
            assertThat(RestVoltage.of(chemistry, volts + 0.1, temperatureC, 12).stateOfCharge())
                    .isGreaterThanOrEqualTo(charge);
            assertThat(RestVoltage.of(chemistry, volts, temperatureC - 10, 12).stateOfCharge())
                    .isGreaterThanOrEqualTo(charge);
        }
    }

    /** More measured is healthier, more rated less; a tester that knows no temperature is helped in the cold, and only there. */
    @Test
    void healthIsMonotoneInEachArgument() {
        var random = new SplittableRandom(20_261_127);
        for (int i = 0; i < CASES; i++) {
            double measuredA = random.nextDouble(100, 900);
            double ratedA = random.nextDouble(300, 900);
            double temperatureC = random.nextDouble(-17, 26);
            double share = health(measuredA, ratedA, temperatureC, false);
            assertThat(health(measuredA + 10, ratedA, temperatureC, false)).isGreaterThan(share);
            assertThat(health(measuredA, ratedA + 10, temperatureC, false)).isLessThan(share);
            assertThat(health(measuredA, ratedA, temperatureC - 0.5, false)).isGreaterThan(share);
            assertThat(health(measuredA, ratedA, temperatureC, true)).isLessThan(share);
            assertThat(health(measuredA, ratedA, temperatureC, true)).isCloseTo(measuredA / ratedA, within(1e-12));
        }
    }

    private static double health(double measuredA, double ratedA, double temperatureC, boolean corrected) {
        return BatteryHealth.of(measuredA, ratedA, RatingStandard.EN, temperatureC, corrected)
                .share();
    }

    /** A warmer battery has to hold more volts; whoever passes at a voltage passes at a higher one. */
    @Test
    void theLoadTestIsMonotone() {
        for (double temperatureC = -18; temperatureC < 40; temperatureC++) {
            assertThat(LoadTest.leastVolts(temperatureC + 1)).isGreaterThanOrEqualTo(LoadTest.leastVolts(temperatureC));
            double leastV = LoadTest.leastVolts(temperatureC);
            assertThat(LoadTest.of(Chemistry.EFB, 600, leastV + 0.01, temperatureC)
                            .passes())
                    .isTrue();
            assertThat(LoadTest.of(Chemistry.EFB, 600, leastV - 0.01, temperatureC)
                            .passes())
                    .isFalse();
        }
    }

    /** The charge drawn in the days found is what was above the reserve; more of each but the draw makes more days. */
    @Test
    void parkedDaysComeBackAsTheChargeAboveTheReserve() {
        var random = new SplittableRandom(20_261_128);
        for (int i = 0; i < CASES; i++) {
            double capacityAh = random.nextDouble(20, 100);
            double health = random.nextDouble(0.3, 0.9);
            double standbyA = random.nextDouble(0.02, 0.5);
            double charge = random.nextDouble(0.55, 0.95);
            var parked = ParkedDays.of(capacityAh, health, standbyA, charge);
            assertThat(parked.days() * 24 * standbyA)
                    .isCloseTo((charge - ParkedDays.RESERVE) * capacityAh * health, within(1e-9));
            assertThat(parked.chargeAfter(parked.days())).isCloseTo(ParkedDays.RESERVE, within(1e-12));
            assertThat(ParkedDays.of(capacityAh + 1, health, standbyA, charge).days())
                    .isGreaterThan(parked.days());
            assertThat(ParkedDays.of(capacityAh, health + 0.05, standbyA, charge)
                            .days())
                    .isGreaterThan(parked.days());
            assertThat(ParkedDays.of(capacityAh, health, standbyA + 0.01, charge)
                            .days())
                    .isLessThan(parked.days());
            assertThat(ParkedDays.of(capacityAh, health, standbyA, charge + 0.05)
                            .days())
                    .isGreaterThan(parked.days());
        }
        assertThat(ParkedDays.of(60, 1, 0.1, 0.5).days()).isZero();
        assertThat(ParkedDays.of(60, 1, 0.1, 0.4).cautions()).isNotEmpty();
    }

    /** The emptier, the sooner it freezes; never warmer than water and never colder than the table's full battery. */
    @Test
    void theEmptierTheSoonerItFreezes() {
        double before = Double.POSITIVE_INFINITY;
        for (double charge = 0; charge <= 1; charge += 0.01) {
            double freezesC = Electrolyte.freezesAtC(Electrolyte.specificGravity(charge));
            assertThat(freezesC).isLessThan(before).isBetween(-60.0, 0.0);
            assertThat(RestVoltage.freezesAtC(charge)).isGreaterThanOrEqualTo(freezesC);
            before = freezesC;
        }
    }
}
