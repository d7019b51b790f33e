package cornerbook.core.battery.judge;

import cornerbook.core.battery.BatterySaid;
import cornerbook.core.battery.BatterySaid.Label;
import cornerbook.core.battery.ParkedDays;
import cornerbook.core.battery.TwelveVoltBattery;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.finding.Evidence;
import cornerbook.core.say.Amount;

/**
 * What a car draws asleep, and what is usual: 50 to 150 mA in an electric car (service literature), up to 50 mA in one with an
 * engine (vehicle makers' manuals: 25 to 50 mA). The car's own figure outranks both.
 *
 * @param currentMa as measured, or what is usual
 */
record Standby(Vehicle vehicle, TwelveVoltBattery battery, double currentMa, boolean measured) {
    private static final double ELECTRIC_MA = 100;
    private static final double MOST_ELECTRIC_MA = 150;
    private static final double MOST_COMBUSTION_MA = 50;
    private static final double MA_PER_A = 1000;
    /** So little that the days parked have no end worth telling. */
    private static final double LEAST_MA = 1;

    private static final double MOST_MA = 10_000;
    private static final double LEAST_HEALTH = 0.1;

    static Standby of(Vehicle vehicle, TwelveVoltBattery battery, StandingReadings readings) {
        return readings.ofVehicle(Measure.STANDBY_CURRENT)
                .map(Reading::value)
                .map(currentMa -> new Standby(vehicle, battery, currentMa, true))
                .orElseGet(() ->
                        new Standby(vehicle, battery, vehicle.electric() ? ELECTRIC_MA : MOST_COMBUSTION_MA, false));
    }

    /** Whether something is awake that should sleep. */
    boolean drains() {
        return currentMa > mostMa();
    }

    private double mostMa() {
        return vehicle.electric() ? MOST_ELECTRIC_MA : MOST_COMBUSTION_MA;
    }

    Amount current() {
        return Amount.of(currentMa, "mA");
    }

    /** The most that is usual. */
    Amount most() {
        return Amount.of(mostMa(), "mA");
    }

    /** How long the car may stand, with a health and from a charge of 0 to 1. */
    ParkedDays parked(double health, double charge) {
        return ParkedDays.of(
                battery.ratedCapacityAh(),
                Math.clamp(health, LEAST_HEALTH, 1),
                Math.clamp(currentMa, LEAST_MA, MOST_MA) / MA_PER_A,
                charge);
    }

    Evidence parked(Label what, double health, double charge) {
        return new Evidence(
                what,
                Amount.of(parked(health, charge).days(), "d"),
                new BatterySaid.ParkedBasis(vehicle.electric(), current(), measured));
    }
}
