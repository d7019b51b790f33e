package cornerbook.core.brake.burnish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Axle;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class DiscHeatReferenceTest {
    /** Two equal discs take half of the energy each, so that one axle with all of it stands for the whole brake. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/brake/one-stop.csv", numLinesToSkip = 1)
    void adiabaticRiseOfWorkedExamples(
            double carKg,
            double speedKmh,
            double allDiscsKg,
            double specificHeatJPerKgK,
            double riseK,
            double toleranceK,
            String source) {
        var car = new BrakedCar(carKg, 1, 1, 2);
        var disc = new DiscBody(allDiscsKg / 2, 0.1, specificHeatJPerKgK, 1);
        var heat = new DiscHeat(car, disc, Axle.FRONT);
        assertThat(heat.adiabaticRiseK(new BurnishStop(speedKmh, 0, 5, 0)))
                .as(source)
                .isCloseTo(riseK, within(toleranceK));
    }

    /** (1) and the heat given off, integrated by Hipparchus (hipparchus-ode 4.0.3, Dormand–Prince 8(5,3)). */
    @ParameterizedTest
    @CsvSource({"65,15,3,0,30", "100,0,5,40,15", "50,20,1,150,60"})
    void closedFormEqualsNumericalIntegration(
            double from, double to, double deceleration, double hotterByK, double pauseS) {
        var car = new BrakedCar(1900, 1.05, 0.68, 2.05);
        var disc = new DiscBody(7.2, 0.21, 502, 0.9);
        var stop = new BurnishStop(from, to, deceleration, 0.2);
        var heat = new DiscHeat(car, disc, Axle.FRONT);
        double capacity = disc.heatCapacityJPerK();
        double duringStop = heat.coolingRatePerS((from + to) / 2);

        var end = integrate(
                t -> heat.powerW(stop, from - 3.6 * deceleration * t),
                duringStop,
                capacity,
                hotterByK,
                stop.durationS());
        double afterStop = heat.afterStop(stop, hotterByK);
        assertThat(afterStop).isCloseTo(end[0], within(1e-9 * end[0]));
        assertThat(heat.energyJ(stop))
                .as("what came in is what is stored and what was given off")
                .isCloseTo(capacity * (afterStop - hotterByK) + end[1], within(1e-6 * heat.energyJ(stop)));

        var later = integrate(t -> 0, heat.coolingRatePerS(from), capacity, afterStop, pauseS);
        assertThat(heat.afterDriving(afterStop, from, pauseS)).isCloseTo(later[0], within(1e-9 * later[0]));
    }

    /** McPhee and Johnson 2008: 27.0, 52.7, 78.3 W/(m²·K) at 342, 684, 1025 turns per minute. */
    @ParameterizedTest
    @CsvSource({"342,27.0", "684,52.7", "1025,78.3"})
    void coolingCoefficientAsMeasured(double turnsPerMinute, double coefficient) {
        var car = new BrakedCar(1500, 1, 0.7, 2);
        var disc = new DiscBody(1, 1, 500, 1);
        double speedKmh = turnsPerMinute / 60 * 2 * 3.6;
        assertThat(new DiscHeat(car, disc, Axle.FRONT).coolingRatePerS(speedKmh) * 500)
                .isCloseTo(coefficient, within(0.1));
    }

    /**
     * Peaks of short stops are a geometric series over the time from one stop to the next: Newcomb's and Limpert's formula for
     * repeated braking (from memory).
     */
    @Test
    void repeatedShortStopsAreAGeometricSeries() {
        var car = new BrakedCar(1500, 1, 1, 2);
        var disc = new DiscBody(6, 0.2, 500, 1);
        var heat = new DiscHeat(car, disc, Axle.FRONT);
        var stop = new BurnishStop(60, 55, 10, 0);
        double retained = Math.exp(-heat.coolingRatePerS(60) * (20 + stop.durationS()));
        double hotterByK = 0;
        for (int n = 1; n <= 10; n++) {
            hotterByK = heat.afterStop(stop, heat.afterDriving(hotterByK, 60, 20));
            double series = heat.adiabaticRiseK(stop) * (1 - Math.pow(retained, n)) / (1 - retained);
            assertThat(hotterByK).isCloseTo(series, within(1e-3 * series));
        }
    }

    private interface Power {
        double at(double seconds);
    }

    /** Hotter by, and heat given off, after this time. */
    private static double[] integrate(Power power, double ratePerS, double capacity, double hotterByK, double seconds) {
        var equation = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 2;
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
                double givenOff = ratePerS * capacity * y[0];
                return new double[] {(power.at(t) - givenOff) / capacity, givenOff};
            }
        };
        return new DormandPrince853Integrator(1e-6, 10, 1e-10, 1e-12)
                .integrate(equation, new ODEState(0, new double[] {hotterByK, 0}), seconds)
                .getPrimaryState();
    }
}
