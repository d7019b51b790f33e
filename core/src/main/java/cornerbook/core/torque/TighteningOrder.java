package cornerbook.core.torque;

import cornerbook.core.say.Refused;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.List;

/**
 * The order in which the fasteners of a wheel are tightened, numbered clockwise from the top: each next one as far across as
 * the circle allows. An odd number is a star; an even one goes to and fro across, a quarter on each time (the
 * star pattern of ASME PCC-1, from memory, for 4 and 8; the others by the same rule).
 *
 * @param order the numbers 1 to n, each once
 */
public record TighteningOrder(List<Integer> order, Explanation explanation) implements Explained {
    private static final List<List<Integer>> BY_COUNT = List.of(
            List.of(1, 2, 3),
            List.of(1, 3, 2, 4),
            List.of(1, 3, 5, 2, 4),
            List.of(1, 4, 2, 5, 3, 6),
            List.of(1, 4, 7, 3, 6, 2, 5),
            List.of(1, 5, 3, 7, 2, 6, 4, 8),
            List.of(1, 5, 9, 4, 8, 3, 7, 2, 6),
            List.of(1, 6, 3, 8, 5, 10, 7, 2, 9, 4));

    private static final int FEWEST = 3;

    public TighteningOrder {
        order = List.copyOf(order);
    }

    /** The order for {@code count} fasteners, 3 to 10. */
    public static TighteningOrder of(int count) {
        int most = FEWEST + BY_COUNT.size() - 1;
        if (count < FEWEST || count > most) {
            throw new Refused(new TorqueSaid.FastenerCount(count, FEWEST, most));
        }
        return new TighteningOrder(
                BY_COUNT.get(count - FEWEST),
                new Explanation(
                        List.of(TorqueSaid.Caution.GO_ROUND_TWICE),
                        List.of(new Step(
                                TorqueSaid.Part.FASTENERS_PER_WHEEL,
                                TorqueSaid.Label.COUNT_FORMULA,
                                count,
                                "",
                                TorqueSaid.Label.COUNT_SOURCE))));
    }
}
