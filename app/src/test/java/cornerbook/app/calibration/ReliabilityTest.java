package cornerbook.app.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ReliabilityTest {
    @Test
    void honestChancesAreNotOff() {
        var random = new SplittableRandom(1);
        var reliability = new Reliability();
        for (int car = 0; car < 4000; car++) {
            double chance = random.nextDouble();
            reliability.add(chance, random.nextDouble() < chance);
            reliability.endCar();
        }

        assertThat(Figure.Bounds.upTo(5).hold(reliability.worst().orElseThrow().points()))
                .isTrue();
        assertThat(reliability.tenths())
                .hasSize(10)
                .allSatisfy(tenth -> assertThat(tenth.came()).isCloseTo(tenth.said(), within(4 * tenth.sd())));
    }

    /** Of independent forecasts it is that of a binomial share: the square root of p (1 − p) / n. */
    @Test
    void standardErrorOfIndependentForecastsIsThatOfAShare() {
        var reliability = new Reliability();
        for (int car = 0; car < 400; car++) {
            reliability.add(0.25, car % 4 == 0);
            reliability.endCar();
        }

        assertThat(reliability.tenths().getFirst().sd()).isCloseTo(Math.sqrt(0.25 * 0.75 / 400), within(1e-12));
    }

    @Test
    void forecastsOfOneCarCountAsOne() {
        var reliability = new Reliability();
        for (int car = 0; car < 40; car++) {
            for (int forecast = 0; forecast < 10; forecast++) {
                reliability.add(0.25, car % 4 == 0);
            }
            reliability.endCar();
        }

        assertThat(reliability.tenths().getFirst().sd()).isCloseTo(Math.sqrt(0.25 * 0.75 / 40), within(1e-12));
    }

    /** 33 of 33 of which 0.82 was said: honest chances do so once in 700 times, and no surer is it called off. */
    @Test
    void whereAllCameTrueTheErrorIsThatOfHonestChances() {
        var reliability = new Reliability();
        for (int car = 0; car < 33; car++) {
            reliability.add(0.82, true);
            reliability.endCar();
        }

        assertThat(reliability.tenths().getFirst().sd()).isCloseTo(Math.sqrt(0.82 * 0.18 / 33), within(1e-12));
    }

    @Test
    void theStretchThatIsOffIsFound() {
        var reliability = new Reliability();
        for (int car = 0; car < 1000; car++) {
            reliability.add(0.05, car % 20 == 0);
            reliability.add(0.35, car % 100 < 58);
            reliability.add(0.66, car % 100 < 81);
            reliability.add(0.95, car % 20 != 0);
            reliability.endCar();
        }
        var worst = reliability.worst().orElseThrow();

        assertThat(worst.low()).isTrue();
        assertThat(worst.from()).isEqualTo(0.3);
        assertThat(worst.points().value()).isCloseTo(23, within(1e-9));
    }

    @Test
    void fewForecastsTellNothing() {
        var reliability = new Reliability();
        reliability.add(0.9, false);
        reliability.endCar();

        assertThat(reliability.worst()).isEmpty();
    }
}
