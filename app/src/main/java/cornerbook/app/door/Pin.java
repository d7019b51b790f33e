package cornerbook.app.door;

import java.util.Optional;

/**
 * What stands for a person on a tablet. The weak ones are those that are tried first: all digits the same, a run up or down, a
 * year from 1900 to 2099.
 */
final class Pin {
    static final int SHORTEST = 4;
    static final int LONGEST = 12;
    private static final String UP = "01234567890123456789";
    private static final String DOWN = new StringBuilder(UP).reverse().toString();

    private Pin() {}

    /** Why it cannot be taken, in one sentence; empty when it can. */
    static Optional<String> problem(String digits) {
        if (!digits.matches("[0-9]{%d,%d}".formatted(SHORTEST, LONGEST))) {
            return Optional.of("A PIN is needed, expected %d to %d digits.".formatted(SHORTEST, LONGEST));
        }
        return digits.matches("([0-9])\\1*|(19|20)[0-9]{2}") || UP.contains(digits) || DOWN.contains(digits)
                ? Optional.of(
                        "This PIN is guessed too easily, expected digits that are not all the same, no run as 1234 and no year as 1984.")
                : Optional.empty();
    }
}
