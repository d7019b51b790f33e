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
 * </pre>
 *
 * hA is {@link DiscBody#coolingWPerK}.
 *
 * <p>Assumes one temperature for the whole disc and no radiation, which is small below about 300 °C; a face is hotter than
 * the lump for seconds after a stop.
 */
final class DiscHeat {
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

    /** β of (2) and (3) at a speed. */
    double coolingRatePerS(double speedKmh) {
        return disc.coolingWPerK(car.turnsPerMinute(speedKmh)) / disc.heatCapacityJPerK();
    }

    private double discShare(BurnishStop stop) {
        return wheelShare * (1 - stop.regenerationShare()) * disc.heatShare();
    }
}
