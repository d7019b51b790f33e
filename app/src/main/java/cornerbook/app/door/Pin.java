package cornerbook.app.door;

import cornerbook.core.say.Said;
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
    static Optional<Said> problem(String digits) {
        if (!digits.matches("[0-9]{%s,%s}".formatted(SHORTEST, LONGEST))) {
            return Optional.of(new DoorSaid.PinNeeded(SHORTEST, LONGEST));
        }
        return digits.matches("([0-9])\\1*|(19|20)[0-9]{2}") || UP.contains(digits) || DOWN.contains(digits)
                ? Optional.of(new DoorSaid.PinGuessed())
                : Optional.empty();
    }
}
