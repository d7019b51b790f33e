package cornerbook.core.tyre;

/**
 * Pressure of the air in a tyre at another temperature, volume constant: p2 = (p1 + p_air) T2 / T1 − p_air, with
 * absolute temperatures (ideal gas; Charles's law). Gauge pressures in kPa; at sea level unless told.
 */
public final class GasLaw {
    /** Standard atmosphere, kPa (ISO 2533). */
    public static final double STANDARD_ATMOSPHERE_KPA = 101.325;

    private static final double ZERO_CELSIUS_K = 273.15;

    private GasLaw() {}

    /**
     * Gauge pressure at {@code toC} of a tyre that reads {@code gaugeKpa} at {@code fromC}.
     *
     * @param gaugeKpa 0 or more
     */
    public static double gaugePressureKpa(double gaugeKpa, double fromC, double toC) {
        if (!(gaugeKpa >= 0 && fromC > -ZERO_CELSIUS_K && toC > -ZERO_CELSIUS_K)) {
            throw new IllegalArgumentException(
                    "pressure %s kPa from %s °C to %s °C, expected a gauge pressure from 0 kPa and temperatures above absolute zero"
                            .formatted(gaugeKpa, fromC, toC));
        }
        return (gaugeKpa + STANDARD_ATMOSPHERE_KPA) * (toC + ZERO_CELSIUS_K) / (fromC + ZERO_CELSIUS_K)
                - STANDARD_ATMOSPHERE_KPA;
    }
}
