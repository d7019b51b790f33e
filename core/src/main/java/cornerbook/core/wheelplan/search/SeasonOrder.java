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
 * and infinite where the season under p breaks a rule. It is asked with a number of moves that grows from one that is sure to
 * be needed, each wheel's number of other corner classes, so that few N are looked at (iterative deepening, Korf 1985,
 * Artificial Intelligence 27, 97–109); what is known of an N serves all endings.
 */
final class SeasonOrder {
    static final byte IMPOSSIBLE = Byte.MAX_VALUE;

    private final SetNumbers numbers;
    private final CountLayout layout;
    private final List<Map<Ran, Known>> knownByLayer = new ArrayList<>();
    private final List<Map<Ran, Boolean>> runnableByLayer = new ArrayList<>();

    SeasonOrder(SetNumbers numbers, CountLayout layout) {
        this.numbers = numbers;
        this.layout = layout;
        for (int layer = 0; layer <= layout.wholeSeasons(); layer++) {
            knownByLayer.add(new HashMap<>());
            runnableByLayer.add(new HashMap<>());
        }
    }

    /** Whether some order of the ending's seasons keeps the rules. */
    boolean canBeRun(Ending ending) {
        return lastMayBeRun(ending) && canBeRun(layout.wholeSeasons(), ran(ending));
    }

    /** Whether the rules are kept in the ending's last season, whatever was run before. */
    boolean lastMayBeRun(Ending ending) {
        for (int last : numbers.allowed) {
            if (ending.endsWith(last) && ending.keepsRules(last)) {
                return true;
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

    /**
     * Fewest moves to the ending, the last season's included.
     *
     * @param most more are of no interest
     * @return {@link Integer#MAX_VALUE} when no order with so few keeps the rules
     */
    int fewestMoves(Ending ending, int most) {
        if (!canBeRun(ending)) {
            return Integer.MAX_VALUE;
        }
        int least = Math.min(most, numbers.wheels * (layout.wholeSeasons() + 1));
        for (int moves = ending.leastMoves(); moves <= least; moves++) {
            if (last(ending, moves) >= 0) {
                return moves;
            }
        }
        return Integer.MAX_VALUE;
    }

    /** An order with the fewest moves: the assignment of each season to the ending's. */
    int[] order(Ending ending) {
        int layer = layout.wholeSeasons();
        int moves = fewestMoves(ending, Integer.MAX_VALUE);
        var order = new int[layer + 1];
        order[layer] = last(ending, moves);
        for (var ran = ran(ending); layer > 0; ran = ran.less(layout, layout.groupOf(layer), order[layer], numbers)) {
            int next = order[layer];
            int before = before(layer, ran, next, moves);
            moves -= Assignments.moves(before, next);
            order[--layer] = before;
        }
        return order;
    }

    /** A last assignment with which the ending takes no more moves; below 0 when there is none. */
    private int last(Ending ending, int moves) {
        int layer = layout.wholeSeasons();
        for (int last : numbers.allowed) {
            if (ending.endsWith(last)
                    && ending.keepsRules(last)
                    && (layer == 0
                            ? numbers.firstMoves[last] <= moves
                            : before(layer, ran(ending), last, moves) >= 0)) {
                return last;
            }
        }
        return -1;
    }

    /** An assignment as the latest of N from which {@code next} is reached with so many moves in all; rather none than another. */
    private int before(int layer, Ran ran, int next, int moves) {
        if (within(layer, ran, next, moves)) {
            return next;
        }
        for (int q : numbers.allowed) {
            if (within(layer, ran, q, moves - Assignments.moves(q, next))) {
                return q;
            }
        }
        return -1;
    }

    /** Whether N can be run with the assignment as the latest and so many moves. */
    private boolean within(int layer, Ran ran, int latest, int moves) {
        if (moves < 0) {
            return false;
        }
        var known = knownByLayer.get(layer).get(ran);
        if (known == null) {
            known = new Known(layer, ran);
            knownByLayer.get(layer).put(ran, known);
        }
        if (moves < known.atLeast[latest] || moves >= known.atMost[latest]) {
            return moves >= known.atMost[latest];
        }
        var earlier = ran.less(layout, layout.groupOf(layer - 1), latest, numbers);
        boolean within = layer == 1
                ? numbers.firstMoves[latest] <= moves
                : canBeRun(layer - 1, earlier) && before(layer - 1, earlier, latest, moves) >= 0;
        if (within) {
            known.atMost[latest] = (byte) moves;
        } else {
            known.atLeast[latest] = (byte) (moves + 1);
        }
        return within;
    }

    private Ran ran(Ending ending) {
        return new Ran(
                ending.counts(0),
                ending.counts(1),
                ending.counts(2),
                ending.counts(3),
                numbers.wheels > Assignments.CORNERS ? ending.counts(Assignments.SPARE) : 0);
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

    /** Between how many moves the fewest to have run N lie, by the latest assignment. */
    private final class Known {
        private final byte[] atLeast = new byte[numbers.assignments];
        private final byte[] atMost = new byte[numbers.assignments];

        Known(int layer, Ran ran) {
            Arrays.fill(atLeast, IMPOSSIBLE);
            Arrays.fill(atMost, IMPOSSIBLE);
            var latest = new LatestSeason(numbers, layout, layer, ran);
            int others = 0;
            for (int i = 0; i < numbers.wheels; i++) {
                int classes = numbers.startClass[i] | layout.classesUsed(ran.counts(i), layer);
                others += Integer.bitCount(classes) - 1;
            }
            for (int p : numbers.allowed) {
                if (latest.keepsRules(p)) {
                    atLeast[p] = (byte) others;
                }
            }
        }
    }
}
