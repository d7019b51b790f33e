package cornerbook.core.say;

/**
 * From one quantity to another, with the unit once: "4.0 to 5.2 mm".
 *
 * @param unit as in {@link Amount}
 */
public record Between(double lowest, double highest, String unit, int decimals) implements Said {
    /** The limits of a range as they were written: "0 to 25 mm". */
    public static Between exact(double lowest, double highest, String unit) {
        int decimals = Math.max(
                Amount.exact(lowest, unit).decimals(),
                Amount.exact(highest, unit).decimals());
        return new Between(lowest, highest, unit, decimals);
    }

    public Amount low() {
        return new Amount(lowest, unit, decimals);
    }

    public Amount high() {
        return new Amount(highest, unit, decimals);
    }
}
