package cornerbook.core.visit;

/** Range checks of the records in this feature. */
final class Checks {
    private Checks() {}

    static void range(String what, double value, double lowest, double highest, String unit) {
        if (!(value >= lowest && value <= highest)) {
            throw new IllegalArgumentException(
                    "%s is %s %s, expected %s to %s %s".formatted(what, value, unit, lowest, highest, unit));
        }
    }
}
