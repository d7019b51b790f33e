package cornerbook.core.visit;

import cornerbook.core.quantity.Range;
import org.jspecify.annotations.Nullable;

/** Range checks of the records in this feature. */
final class Checks {
    private Checks() {}

    static void range(String what, double value, double lowest, double highest, String unit) {
        if (!(value >= lowest && value <= highest)) {
            throw new IllegalArgumentException(
                    "%s is %s %s, expected %s to %s %s".formatted(what, value, unit, lowest, highest, unit));
        }
    }

    /** Refuses a value that is known and outside its range. */
    static void optional(String what, @Nullable Double value, double lowest, double highest, String unit) {
        if (value != null) {
            Range.check(what, value, lowest, highest, unit);
        }
    }
}
