package cornerbook.core.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.quantity.QuantitySaid;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Refused;
import java.time.LocalDate;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PressureSensorPropertyTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 26);

    /** What a sensor reads too much, the warning comes later, by as much; a tyre at that pressure is read as 75 % of the placard. */
    @Test
    void theWarningComesLaterByWhatTheSensorReadsTooMuch() {
        var random = new SplittableRandom(20_261_126);
        for (int i = 0; i < 300; i++) {
            double gaugeKpa = random.nextDouble(180, 320);
            double offKpa = random.nextDouble(-40, 40);
            double placardKpa = random.nextDouble(200, 300);
            var check = SensorCheck.of(gaugeKpa + offKpa, null, gaugeKpa, null, placardKpa);
            assertThat(check.differenceKpa()).isCloseTo(offKpa, within(1e-9));
            assertThat(check.warnsAtKpa() + check.differenceKpa()).isCloseTo(0.75 * placardKpa, within(1e-9));
            assertThat(check.answer() == SensorCheck.Answer.ACCURATE)
                    .isEqualTo(Math.abs(offKpa) <= SensorCheck.ACCURATE_KPA);
            assertThat(SensorCheck.of(gaugeKpa + offKpa + 1, null, gaugeKpa, null, placardKpa)
                            .warnsAtKpa())
                    .isLessThan(check.warnsAtKpa());
        }
    }

    /** A sensor that is right is right at whatever temperatures the two were read. */
    @Test
    void temperatureAloneIsNoDifference() {
        var random = new SplittableRandom(20_261_127);
        for (int i = 0; i < 300; i++) {
            double sensorC = random.nextDouble(-30, 60);
            double tyreC = random.nextDouble(-30, 60);
            double sensorKpa = random.nextDouble(180, 320);
            double gaugeKpa = GasLaw.gaugePressureKpa(sensorKpa, sensorC, tyreC);
            var check = SensorCheck.of(sensorKpa, sensorC, gaugeKpa, tyreC, 250);
            assertThat(check.differenceKpa()).isCloseTo(0, within(1e-9));
            assertThat(check.cautions()).isEmpty();
        }
    }

    @Test
    void aQuarterOfThePlacardIsOfNoUse() {
        assertThat(SensorCheck.of(313, null, 250, null, 250).answer()).isEqualTo(SensorCheck.Answer.USELESS);
        assertThat(SensorCheck.of(187, null, 250, null, 250).answer()).isEqualTo(SensorCheck.Answer.USELESS);
        assertThat(SensorCheck.of(312, null, 250, null, 250).answer()).isEqualTo(SensorCheck.Answer.OFF);
        assertThat(catchThrowableOfType(Refused.class, () -> SensorCheck.of(1100, null, 250, null, 250))
                        .said())
                .isEqualTo(new QuantitySaid.OutOfRange(
                        AirSaid.Input.SENSOR_PRESSURE, new Amount(1100, "kPa", 0), new Between(0, 1000, "kPa", 0)));
    }

    @Test
    void aBatteryGrowsOlderByTheDayAndEndsAfterTenYears() {
        var since = DAY.minusYears(7);
        assertThat(SensorAge.of(since, DAY).old()).isTrue();
        assertThat(SensorAge.of(since.plusDays(3), DAY).old()).isFalse();
        assertThat(SensorAge.of(since, DAY).years())
                .isLessThan(SensorAge.of(since, DAY.plusDays(1)).years());
        assertThat(SensorAge.of(since, DAY).endsOn()).isEqualTo(DAY.plusYears(3));
        assertThat(catchThrowableOfType(Refused.class, () -> SensorAge.of(DAY.plusDays(1), DAY))
                        .said())
                .isEqualTo(new AirSaid.BatteryOfLaterDay(DAY.plusDays(1), DAY));
    }
}
