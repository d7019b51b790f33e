package cornerbook.app.calibration.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.LogNormalDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.stat.inference.KolmogorovSmirnovTest;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

/** The simulated cars against what others have measured, and against the distributions of a general library. */
class FleetReferenceTest {
    private static final double LEAST_P = 0.01;

    /** 120 g in 1000 km on average, a motoring club's tests of 2021; read in the trade press. */
    @Test
    void carsLoseAsMuchTreadAsIsMeasured() {
        var random = new SplittableRandom(5);
        double gramsPer1000Km = 0;
        int cars = 2000;
        for (int car = 0; car < cars; car++) {
            var body = Body.any(random);
            var driver = Driver.any(random);
            gramsPer1000Km += 1000
                    * Tread.GRAMS_PER_KJ
                    * Arrays.stream(Corner.values())
                            .mapToDouble(corner -> body.workKjPerKm(driver, corner))
                            .sum()
                    / cars;
        }

        assertThat(gramsPer1000Km).isCloseTo(120, within(12.0));
    }

    /** 44 km a day and 16 015 km a year: light vehicles in Canada in 2006 (Statistics Canada, The Daily, 23 August 2007). */
    @Test
    void carsRunAsFarAsIsCounted() {
        var from = LocalDate.of(2016, 1, 1);

        assertThat(Fleet.cars(Scenario.CONTROL, 300, 7)
                        .mapToDouble(car -> car.truth().km(from, from.plusYears(3)) / 3)
                        .average()
                        .orElseThrow())
                .isCloseTo(16_015, within(1200.0));
    }

    /**
     * Days above 100 km are fewer than a fifth of the days driven and make 40 % of the distance; above 200 km fewer than a
     * twentieth, and 18 % (Plötz and Sprei 2021, Transp. Res. D 101:103126, abstract; 10 000 vehicles).
     */
    @Test
    void longDaysAreAsRareAndAsLongAsIsObserved() {
        var from = LocalDate.of(2016, 1, 1);
        double[] km = Fleet.cars(Scenario.CONTROL, 150, 7)
                .flatMapToDouble(car -> IntStream.range(0, 700)
                        .mapToDouble(day -> car.truth().km(from.plusDays(day), from.plusDays(day + 1L))))
                .filter(distance -> distance > 0)
                .toArray();
        double all = Arrays.stream(km).sum();

        assertThat(Arrays.stream(km).filter(day -> day > 100).count() / (double) km.length)
                .isLessThan(0.20);
        assertThat(Arrays.stream(km).filter(day -> day > 100).sum() / all).isCloseTo(0.40, within(0.08));
        assertThat(Arrays.stream(km).filter(day -> day > 200).count() / (double) km.length)
                .isLessThan(0.05);
        assertThat(Arrays.stream(km).filter(day -> day > 200).sum() / all).isCloseTo(0.18, within(0.06));
    }

    /**
     * Of tyres on one course a straight line of depth over distance explains more than 99 % (Brenner, Scheiner and Kondo 1975,
     * abstract, TRID 128465): so does it in the control within a winter.
     */
    @Test
    void depthFallsStraightWithDistanceOnTheControl() {
        double[] explained = Fleet.cars(Scenario.CONTROL, 60, 9)
                .mapToDouble(FleetReferenceTest::straightness)
                .filter(share -> !Double.isNaN(share))
                .toArray();

        assertThat(Arrays.stream(explained).average().orElseThrow()).isGreaterThan(0.99);
    }

    private static double straightness(SimulatedCar car) {
        var set = car.history().sets().stream()
                .filter(each -> each.season() == SeasonKind.WINTER)
                .findFirst()
                .orElseThrow();
        var from = LocalDate.of(2018, 11, 20);
        var first = car.history().visits().getFirst();
        var line = new SimpleRegression();
        for (int day = 0; day < 110; day += 5) {
            line.addData(
                    car.truth().km(from, from.plusDays(day)), car.truth().lowestMm(set, first, from.plusDays(day)));
        }
        return car.truth().lowestMm(set, first, from.plusDays(110)) > 0 ? line.getRSquare() : Double.NaN;
    }

    @Test
    void distancesOfDriversAreLogNormal() {
        var random = new SplittableRandom(11);
        double[] km = DoubleStream.generate(() -> Driver.any(random).kmPerDay())
                .limit(1000)
                .toArray();

        assertThat(new KolmogorovSmirnovTest()
                        .kolmogorovSmirnovTest(new LogNormalDistribution(Math.log(39.5), 0.45), km, false))
                .isGreaterThan(LEAST_P);
    }

    /** Rounded to tenths, the errors have the variance of hand and gauge and that of the rounding, 0.1² / 12. */
    @Test
    void errorsOfTheGaugeAreNormal() {
        var dice = new Dice(13);
        var tread = new Tread("x", 1, SeasonKind.WINTER, 0, Scenario.CONTROL, dice.tyres());
        var uniform = new SplittableRandom(17);
        var errors = new ArrayList<Double>();
        for (int sheetNumber = 0; sheetNumber < 80; sheetNumber++) {
            var sheet = new Sheet("v" + sheetNumber, Scenario.CONTROL, dice);
            sheet.read(tread);
            var readings = sheet.readings().iterator();
            for (int tyre = 0; tyre < Corner.values().length; tyre++) {
                for (var groove : List.of(Spot.values())) {
                    // What the rounding took is put back at random, so that the test sees no steps.
                    errors.add(
                            readings.next().value() + 0.1 * (uniform.nextDouble() - 0.5) - tread.depthMm(tyre, groove));
                }
            }
        }

        assertThat(new KolmogorovSmirnovTest()
                        .kolmogorovSmirnovTest(
                                new NormalDistribution(0, Math.sqrt(0.15 * 0.15 + 2 * 0.1 * 0.1 / 12)),
                                errors.stream().mapToDouble(Double::doubleValue).toArray(),
                                false))
                .isGreaterThan(LEAST_P);
    }
}
