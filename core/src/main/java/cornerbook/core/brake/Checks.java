package cornerbook.core.brake;

/** Range checks with the one sentence that a person can act on. */
final class Checks {
    private Checks() {}

    static void range(String what, double value, double lowest, double highest, String unit) {
        if (!(value >= lowest && value <= highest)) {
            throw new IllegalArgumentException(
                    "%s is %s%s, expected %s to %s%s".formatted(what, value, unit, lowest, highest, unit));
        }
    }
}
