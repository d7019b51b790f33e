package cornerbook.app.book.visit;

import java.util.Arrays;
import java.util.List;

/**
 * Where the car of a visit is. A visit that was opened waits; its first reading, tick or wheel says that it is on the hoist, its
 * hand-over that it is gone. What a person says by hand holds until the next of these happens.
 */
public enum VisitState implements VisitSaid {
    EXPECTED,
    WAITING,
    ON_THE_HOIST,
    DONE,
    GONE;

    /** What a person may say by hand: a car is gone by its hand-over, which asks for what is open. */
    public static List<VisitState> byHand() {
        return Arrays.stream(values()).filter(state -> state != GONE).toList();
    }

    /**
     * By what has happened alone.
     *
     * @param begun whether anything was entered of the work
     */
    static VisitState happened(boolean begun, boolean handedOver) {
        return handedOver ? GONE : begun ? ON_THE_HOIST : WAITING;
    }
}
