package cornerbook.core.battery;

/**
 * State of charge of a flooded 12 V lead-acid battery from its open-circuit voltage, linear between the points of the
 * BCI table for 80 °F (26.7 °C): 12.65 V 100 %, 12.45 V 75 %, 12.24 V 50 %, 12.06 V 25 %, 11.89 V discharged. Valid at
 * rest, with no charger or converter at work. Sealed lead-acid batteries (EFB, AGM) rest somewhat higher, so for them the
 * result is a lower bound's stand-in: callers say so.
 */
public final class StateOfCharge {
    private static final double[] VOLTS = {11.89, 12.06, 12.24, 12.45, 12.65};
    private static final double[] SHARE = {0, 0.25, 0.50, 0.75, 1.00};
    /** Above this a lead-acid battery at rest is still being held up by a charger, or has just been. */
    public static final double HELD_UP_VOLTS = 13.2;

    private StateOfCharge() {}

    /**
     * State of charge of a flooded battery at 80 °F.
     *
     * @param openCircuitVolts 0 to {@link #HELD_UP_VOLTS}
     * @return 0 to 1
     * @throws IllegalArgumentException when the voltage is not one of a battery at rest
     */
    public static double ofFloodedLeadAcid(double openCircuitVolts) {
        if (!(openCircuitVolts >= 0 && openCircuitVolts <= HELD_UP_VOLTS)) {
            throw new IllegalArgumentException("battery voltage is %s V, expected 0 to %s V of a battery at rest"
                    .formatted(openCircuitVolts, HELD_UP_VOLTS));
        }
        return interpolate(VOLTS, openCircuitVolts);
    }

    /** Share of charge by a table of five voltages for 0, 25, 50, 75 and 100 %. */
    static double interpolate(double[] volts, double openCircuitVolts) {
        return between(volts, SHARE, openCircuitVolts);
    }

    /** Linear between the points of a rising table; outside it the value of its end. */
    static double between(double[] points, double[] values, double at) {
        if (at <= points[0]) {
            return values[0];
        }
        for (int i = 1; i < points.length; i++) {
            if (at <= points[i]) {
                double part = (at - points[i - 1]) / (points[i] - points[i - 1]);
                return values[i - 1] + part * (values[i] - values[i - 1]);
            }
        }
        return values[values.length - 1];
    }
}
