package cornerbook.core.quantity;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Refuses what lies outside the range in which a value can be meant. */
public final class Range {
    /** Nobody counts the digits of what is larger. */
    private static final double WRITTEN_OUT_BELOW = 1e9;

    private static final int SHOWN_DIGITS = 4;

    private Range() {}

    /**
     * The value itself.
     *
     * @param what the part, as a person calls it: "wrench length"
     * @throws Refused with one sentence that names the part, the value and the range
     */
    public static double check(Said what, double value, double lowest, double highest, String unit) {
        if (!(value >= lowest && value <= highest)) {
            throw new Refused(new QuantitySaid.OutOfRange(
                    what,
                    !Double.isFinite(value)
                            ? Said.verbatim(String.valueOf(value))
                            : isWritten(value)
                                    ? Amount.exact(value, unit)
                                    : Amount.significant(value, unit, SHOWN_DIGITS),
                    Between.exact(lowest, highest, unit)));
        }
        return value;
    }

    /** Refuses a value that is known and outside its range. */
    public static void checkKnown(Said what, @Nullable Double value, double lowest, double highest, String unit) {
        if (value != null) {
            check(what, value, lowest, highest, unit);
        }
    }

    /**
     * The value itself, where no input reaches: a value outside is a fault of the program.
     *
     * @param what the part, as a programmer calls it
     * @throws IllegalArgumentException with one sentence that names the part, the value and the range
     */
    public static double check(String what, double value, double lowest, double highest, String unit) {
        if (!(value >= lowest && value <= highest)) {
            throw new IllegalArgumentException("%s is %s, expected %s to %s"
                    .formatted(what, plain(value, unit), plain(lowest, ""), plain(highest, unit)));
        }
        return value;
    }

    /** Refuses a value that is known and outside its range, where no input reaches. */
    public static void checkKnown(String what, @Nullable Double value, double lowest, double highest, String unit) {
        if (value != null) {
            check(what, value, lowest, highest, unit);
        }
    }

    private static boolean isWritten(double value) {
        return value == Math.rint(value) && Math.abs(value) < WRITTEN_OUT_BELOW;
    }

    private static String plain(double value, String unit) {
        var digits = isWritten(value)
                ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, "%.4g", value);
        return (digits + " " + unit).strip();
    }
}
