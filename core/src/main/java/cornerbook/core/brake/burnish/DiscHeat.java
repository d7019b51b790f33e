package cornerbook.core.brake.burnish;

import cornerbook.core.corner.Axle;

/**
 * The temperature of one disc through stops and the driving between them, as a lump that is hotter than the air by θ:
 *
 * <pre>
 *   m c dθ/dt = P(t) − h A θ                                              (1)
 *   stop: P falls linearly from P₀ to P₁ with the speed, at constant deceleration
 *         θ(t) = (θ₀ − a) e^(−βt) + a − b t,  β = hA/(mc), b = k/(mcβ), a = (P₀/(mc) + b)/β, k = (P₀ − P₁)/duration   (2)
 *   between: θ(t) = θ₀ e^(−βt)                                              (3)
 *   h = 1.3 + 0.0751 n W/(m²·K), n in turns per minute                             (4)
 * </pre>
 *
 * (4) is the line through the coefficients 27.0, 52.7 and 78.3 W/(m²·K) measured at 342, 684 and 1025 turns per minute in
 * the vanes of a vented disc: McPhee and Johnson, International Journal of Thermal Sciences 47 (2008), 458–467. It is used
 * for the whole surface, and below 342 turns too: common practice, no source.
 *
 * <p>Assumes one temperature for the whole disc and no radiation, which is small below about 300 °C; a face is hotter than
 * the lump for seconds after a stop.
 */
final class DiscHeat {
    private static final double COEFFICIENT_AT_REST = 1.3;
    private static final double COEFFICIENT_PER_TURN_PER_MINUTE = 0.0751;

    private final BrakedCar car;
    private final DiscBody disc;
    private final double wheelShare;

    DiscHeat(BrakedCar car, DiscBody disc, Axle axle) {
        this.car = car;
        this.disc = disc;
        wheelShare = (axle == Axle.FRONT ? car.frontShare() : 1 - car.frontShare()) / 2;
    }

    /** Heat that one stop puts into this disc, J. */
    double energyJ(BurnishStop stop) {
        double from = stop.fromKmh() / 3.6;
        double to = stop.toKmh() / 3.6;
        return 0.5 * car.massKg() * car.rotatingMassFactor() * (from * from - to * to) * discShare(stop);
    }

    /** Rise in one stop when nothing cools, K. */
    double adiabaticRiseK(BurnishStop stop) {
        return energyJ(stop) / disc.heatCapacityJPerK();
    }

    /** Heat flow into the disc at a speed during a stop, W. */
    double powerW(BurnishStop stop, double speedKmh) {
        return car.massKg() * car.rotatingMassFactor() * stop.decelerationMPerS2() * speedKmh / 3.6 * discShare(stop);
    }

    /** Equation (2): hotter than the air by this at the end of a stop. */
    double afterStop(BurnishStop stop, double hotterByK) {
        double rate = coolingRatePerS((stop.fromKmh() + stop.toKmh()) / 2);
        double capacity = disc.heatCapacityJPerK();
        double power = powerW(stop, stop.fromKmh());
        double slope = (power - powerW(stop, stop.toKmh())) / stop.durationS();
        double b = slope / (capacity * rate);
        double a = (power / capacity + b) / rate;
        return (hotterByK - a) * Math.exp(-rate * stop.durationS()) + a - b * stop.durationS();
    }

    /** Equation (3): what is left of it after driving on. */
    double afterDriving(double hotterByK, double speedKmh, double seconds) {
        return hotterByK * Math.exp(-coolingRatePerS(speedKmh) * seconds);
    }

    /** β of (2) and (3) at a speed, with (4). */
    double coolingRatePerS(double speedKmh) {
        double coefficient = COEFFICIENT_AT_REST + COEFFICIENT_PER_TURN_PER_MINUTE * car.turnsPerMinute(speedKmh);
        return coefficient * disc.coolingAreaM2() / disc.heatCapacityJPerK();
    }

    private double discShare(BurnishStop stop) {
        return wheelShare * (1 - stop.regenerationShare()) * disc.heatShare();
    }
}
