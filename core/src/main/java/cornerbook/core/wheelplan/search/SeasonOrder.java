package cornerbook.core.wheelplan.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Puts the seasons of an ending into the order with the fewest moves that keeps the rules on depth. Backward over what
 * the wheels have run: the fewest moves to have run N with assignment p as the latest are
 *
 * <pre>  m(N, p) = min over q of m(N − p, q) + moves(q, p),   m(0, p) = moves from where the wheels ran last    (2)</pre>
 *
 * and infinite where the season under p breaks a rule. Each N is worked out once for all endings.
 */
final class SeasonOrder {
    static final byte IMPOSSIBLE = Byte.MAX_VALUE;

    private final SetNumbers numbers;
    private final CountLayout layout;
    private final List<Map<Ran, byte[]>> movesByLayer = new ArrayList<>();
    private final List<Map<Ran, Boolean>> runnableByLayer = new ArrayList<>();

    SeasonOrder(SetNumbers numbers, CountLayout layout) {
        this.numbers = numbers;
        this.layout = layout;
        for (int layer = 0; layer <= layout.wholeSeasons(); layer++) {
            movesByLayer.add(new HashMap<>());
            runnableByLayer.add(new HashMap<>());
        }
    }

    /** Whether some order of the ending's seasons keeps the rules. */
    boolean canBeRun(Ending ending) {
        int layer = layout.wholeSeasons();
        for (int last : numbers.allowed) {
            if (ending.endsWith(last) && ending.keepsRules(last)) {
                return canBeRun(layer, ran(ending));
            }
        }
        return false;
    }

    private boolean canBeRun(int layer, Ran ran) {
        if (layer == 0) {
            return true;
        }
        var known = runnableByLayer.get(layer).get(ran);
        if (known != null) {
            return known;
        }
        boolean runnable = false;
        var latest = new LatestSeason(numbers, layout, layer, ran);
        for (int p : numbers.allowed) {
            if (latest.keepsRules(p) && canBeRun(layer - 1, ran.less(layout, latest.group(), p, numbers))) {
                runnable = true;
                break;
            }
        }
        runnableByLayer.get(layer).put(ran, runnable);
        return runnable;
    }

    /** Fewest moves to the ending, the last season's included; {@link Integer#MAX_VALUE} when no order keeps the rules. */
    int fewestMoves(Ending ending) {
        return best(ending).moves;
    }

    /** An order with the fewest moves: the assignment of each season to the ending's. */
    int[] order(Ending ending) {
        int layer = layout.wholeSeasons();
        var order = new int[layer + 1];
        order[layer] = best(ending).assignment;
        var ran = ran(ending);
        while (layer > 0) {
            int next = order[layer];
            int before = cheapestBefore(moves(layer, ran), next);
            order[--layer] = before;
            ran = ran.less(layout, layout.groupOf(layer), before, numbers);
        }
        return order;
    }

    private Step best(Ending ending) {
        var best = new Step(-1, Integer.MAX_VALUE);
        int layer = layout.wholeSeasons();
        byte[] before = layer == 0 ? null : moves(layer, ran(ending));
        for (int last : numbers.allowed) {
            if (ending.endsWith(last) && ending.keepsRules(last)) {
                int moves = numbers.firstMoves[last];
                if (before != null) {
                    int cheapest = cheapestBefore(before, last);
                    moves = before[cheapest] == IMPOSSIBLE
                            ? Integer.MAX_VALUE
                            : before[cheapest] + Assignments.moves(cheapest, last);
                }
                if (moves < best.moves) {
                    best = new Step(last, moves);
                }
            }
        }
        return best;
    }

    private static Ran ran(Ending ending) {
        return new Ran(ending.counts(0), ending.counts(1), ending.counts(2), ending.counts(3));
    }

    private int cheapestBefore(byte[] before, int next) {
        return cheapestBefore(before, next, numbers.allowed);
    }

    /** The latest assignment from which {@code next} is reached with the fewest moves in all; rather none than another. */
    static int cheapestBefore(byte[] before, int next, int[] allowed) {
        int cheapest = next;
        for (int q : allowed) {
            if (before[q] + Assignments.moves(q, next) < before[cheapest] + Assignments.moves(cheapest, next)) {
                cheapest = q;
            }
        }
        return cheapest;
    }

    /** Fewest moves to have run so, by the latest assignment. */
    private byte[] moves(int layer, Ran ran) {
        var known = movesByLayer.get(layer).get(ran);
        if (known != null) {
            return known;
        }
        var moves = new byte[Assignments.COUNT];
        Arrays.fill(moves, IMPOSSIBLE);
        var latest = new LatestSeason(numbers, layout, layer, ran);
        for (int p : numbers.allowed) {
            if (latest.keepsRules(p)) {
                moves[p] = (byte) fewestBefore(layer, ran.less(layout, latest.group(), p, numbers), p);
            }
        }
        movesByLayer.get(layer).put(ran, moves);
        return moves;
    }

    private int fewestBefore(int layer, Ran earlier, int assignment) {
        if (layer == 1) {
            return numbers.firstMoves[assignment];
        }
        var before = moves(layer - 1, earlier);
        int cheapest = cheapestBefore(before, assignment);
        return before[cheapest] == IMPOSSIBLE ? IMPOSSIBLE : before[cheapest] + Assignments.moves(cheapest, assignment);
    }

    private record Step(int assignment, int moves) {}
}
