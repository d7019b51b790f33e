package cornerbook.words;

import cornerbook.core.say.Amount;

/**
 * A quantity in the unit in which a person reads it, with the digits that the trade reads there.
 *
 * @param unit as it stands behind the number; "/32 in" for thin things
 */
record Measured(double value, String unit, int decimals) {
    /** Trade practice: what is worn and thinner than this is read in 32nds of an inch. */
    private static final double READ_IN_32NDS_BELOW_MM = 13;

    private static final double MM_PER_INCH = 25.4;
    private static final double MM_PER_32ND = MM_PER_INCH / 32;
    private static final double KM_PER_MILE = 1.609344;
    /** NIST Special Publication 811 (2008), appendix B.8: 1 lbf = 4.448 222 N. */
    private static final double POUNDS_FORCE_PER_KN = 1000 / 4.4482216152605;

    /**
     * Of a quantity.
     *
     * @param beside the largest value of those that are told together, for they go by the same unit
     */
    static Measured of(Amount amount, double beside, UnitSystem units) {
        return in(amount.value(), amount.unit(), amount.decimals(), beside, units, false);
    }

    /**
     * A difference: it has no zero of its own.
     *
     * @param beside the value beside which it is told, for it goes by the same unit
     */
    static Measured margin(double difference, String unit, int decimals, double beside, UnitSystem units) {
        return in(difference, unit, decimals, beside, units, true);
    }

    private static Measured in(
            double value, String unit, int decimals, double beside, UnitSystem units, boolean difference) {
        if (units == UnitSystem.METRIC) {
            return new Measured(value, unit, decimals);
        }
        return switch (unit) {
            case "mm" -> length(value, decimals, beside);
            case "mm/1000 km" -> new Measured(value / MM_PER_32ND * KM_PER_MILE, "/32 in/1000 mi", 2);
            case "km/day" -> new Measured(value / KM_PER_MILE, "mi/day", decimals);
            case "kN" -> new Measured(value * POUNDS_FORCE_PER_KN, "lbf", 0);
            case "kPa" ->
                new Measured(units.in(value, unit), "psi", difference ? 1 : gaugeDigits(units.in(value, unit)));
            case "°C" ->
                new Measured(
                        difference ? units.in(value, unit) - units.in(0, unit) : units.in(value, unit),
                        units.unitOf(unit),
                        decimals);
            default ->
                units.unitOf(unit).equals(unit)
                        ? new Measured(value, unit, decimals)
                        : new Measured(units.in(value, unit), units.unitOf(unit), decimals);
        };
    }

    /** A gauge shows tenths of a psi; a whole number is told as it was typed. */
    private static int gaugeDigits(double pressurePsi) {
        return Math.round(pressurePsi * 10) % 10 == 0 ? 0 : 1;
    }

    /** Thin things in 32nds as they are read, others in inches with the digits that the millimetres had. */
    private static Measured length(double valueMm, int decimals, double besideMm) {
        if (Math.abs(besideMm) < READ_IN_32NDS_BELOW_MM && decimals <= 1) {
            return new Measured(valueMm / MM_PER_32ND, "/32 in", 1);
        }
        int digits = decimals >= 2 ? decimals + 2 : decimals == 1 ? 3 : Math.abs(besideMm) < 100 ? 2 : 1;
        return new Measured(valueMm / MM_PER_INCH, "in", digits);
    }
}
