package cornerbook.core.quantity;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Refuses what lies outside the range in which a value can be meant. */
public final class Range {
    /** Nobody counts the digits of what is larger. */
    private static final double WRITTEN_OUT_BELOW = 1e9;

    private Range() {}

    /**
     * The value itself.
     *
     * @param what the part, as a person calls it: "wrench length"
     * @throws IllegalArgumentException with one sentence that names the part, the value and the range
     */
    public static double check(String what, double value, double lowest, double highest, String unit) {
        if (!(value >= lowest && value <= highest)) {
            throw new IllegalArgumentException("%s is %s, expected %s to %s"
                    .formatted(what, plain(value, unit), plain(lowest, ""), plain(highest, unit)));
        }
        return value;
    }

    /** Refuses a value that is known and outside its range. */
    public static void checkKnown(String what, @Nullable Double value, double lowest, double highest, String unit) {
        if (value != null) {
            check(what, value, lowest, highest, unit);
        }
    }

    private static String plain(double value, String unit) {
        var digits = value == Math.rint(value) && Math.abs(value) < WRITTEN_OUT_BELOW
                ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, "%.4g", value);
        return (digits + " " + unit).strip();
    }
}
