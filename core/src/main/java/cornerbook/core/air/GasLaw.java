package cornerbook.core.air;

import cornerbook.core.air.AirSaid.Input;
import cornerbook.core.quantity.Range;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Formula;

/**
 * Pressure of the air in a tyre at another temperature, volume constant: p2 = (p1 + p_air) T2 / T1 − p_air, with
 * absolute temperatures (ideal gas; Charles's law). Gauge pressures in kPa; at sea level unless told.
 */
public final class GasLaw {
    /** Standard atmosphere, kPa (ISO 2533, from memory). */
    public static final double STANDARD_ATMOSPHERE_KPA = 101.325;

    private static final double ZERO_CELSIUS_K = 273.15;

    /** As it stands in formulas. */
    static final Amount ZERO_CELSIUS = Amount.exact(ZERO_CELSIUS_K, "");

    private static final Amount AIR = Amount.exact(STANDARD_ATMOSPHERE_KPA, "");

    private static final double LAPSE_K_PER_M = 0.0065;
    private static final double SEA_LEVEL_K = 288.15;
    private static final double PRESSURE_EXPONENT = 5.25588;

    private GasLaw() {}

    /**
     * Gauge pressure at {@code toC} of a tyre that reads {@code gaugeKpa} at {@code fromC}.
     *
     * @param gaugeKpa 0 or more
     */
    public static double gaugePressureKpa(double gaugeKpa, double fromC, double toC) {
        return gaugePressureKpa(gaugeKpa, fromC, STANDARD_ATMOSPHERE_KPA, toC, STANDARD_ATMOSPHERE_KPA);
    }

    /** The same, with the pressure of the air around before and after, kPa absolute. */
    static double gaugePressureKpa(double gaugeKpa, double fromC, double fromAirKpa, double toC, double toAirKpa) {
        if (!(gaugeKpa >= 0 && fromC > -ZERO_CELSIUS_K && toC > -ZERO_CELSIUS_K)) {
            throw new IllegalArgumentException(
                    "pressure %s kPa from %s °C to %s °C, expected a gauge pressure from 0 kPa and temperatures above absolute zero"
                            .formatted(gaugeKpa, fromC, toC));
        }
        return (gaugeKpa + fromAirKpa) * (toC + ZERO_CELSIUS_K) / (fromC + ZERO_CELSIUS_K) - toAirKpa;
    }

    /** The formula with its numbers, the air at sea level around. */
    static Formula formula(double gaugeKpa, double fromC, double toC) {
        return Formula.of(
                "({} + {}) ({} + {})/({} + {}) − {}",
                Amount.significant(gaugeKpa, "", 4),
                AIR,
                Amount.significant(toC, "", 4),
                ZERO_CELSIUS,
                Amount.significant(fromC, "", 4),
                ZERO_CELSIUS,
                AIR);
    }

    /** Kelvin of a Celsius temperature. */
    static double absolute(double temperatureC) {
        return temperatureC + ZERO_CELSIUS_K;
    }

    /** Pressure of the standard atmosphere at an altitude of −500 to 5000 m: p0 (1 − 0.0065 h / 288.15)^5.25588 (ISO 2533, from memory). */
    public static double airPressureKpa(double altitudeM) {
        Range.check(Input.ALTITUDE, altitudeM, -500, 5000, "m");
        return STANDARD_ATMOSPHERE_KPA * Math.pow(1 - LAPSE_K_PER_M * altitudeM / SEA_LEVEL_K, PRESSURE_EXPONENT);
    }
}
