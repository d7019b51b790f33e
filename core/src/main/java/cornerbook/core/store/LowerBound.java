package cornerbook.core.store;

import java.util.Arrays;

/**
 * No way through all stops is shorter than this. Of a way that is one round, each stop but the door is on a tree and the door on two
 * edges; the shortest such figure (a 1-tree) is no longer than the shortest round, also after each stop i was given a weight w that
 * lengthens its edges and is taken off again (Held and Karp 1970, Oper. Res. 18:1138; from memory):
 *
 * <pre>
 *   L(w) = length of the shortest 1-tree by d(i, j) + w(i) + w(j)  −  2 Σ w(i)
 * </pre>
 *
 * The weights go step by step where stops have more or fewer than two edges. In several rounds each stop is passed too, and a way
 * without the visits to the door between them is no longer where the direct way is the shortest; and of a round that carries q sets each
 * is at most half of the round away: all rounds are at least 2/q Σ d(0, i) long.
 */
final class LowerBound {
    private static final int STEPS = 300;
    private static final double FIRST_STEP = 2;
    private static final double SHRINK = 0.97;

    private final int stops;
    private final Distances distances;
    private final int perRound;

    LowerBound(int stops, Distances distances, int perRound) {
        this.stops = stops;
        this.distances = distances;
        this.perRound = perRound;
    }

    /**
     * The bound, m.
     *
     * @param knownM length of a way that is known, which sets the step
     */
    double lengthM(double knownM) {
        double away = 0;
        for (int stop = 1; stop <= stops; stop++) {
            away += distances.between(0, stop);
        }
        double best = 2 * away / Math.min(perRound, stops);
        var weights = new double[stops + 1];
        double scale = FIRST_STEP;
        for (int step = 0; step < STEPS; step++) {
            var edges = new int[stops + 1];
            double length =
                    shortestTree(weights, edges) - 2 * Arrays.stream(weights).sum();
            best = Math.max(best, length);
            int off = Arrays.stream(edges).map(each -> (each - 2) * (each - 2)).sum();
            if (off == 0) {
                return best;
            }
            double move = scale * Math.max(0, knownM - length) / off;
            for (int stop = 0; stop <= stops; stop++) {
                weights[stop] += move * (edges[stop] - 2);
            }
            scale *= SHRINK;
        }
        return best;
    }

    /** Prim's tree over the stops and the two shortest edges of the door; counts the edges of each. */
    private double shortestTree(double[] weights, int[] edges) {
        var in = new boolean[stops + 1];
        var nearest = new double[stops + 1];
        var to = new int[stops + 1];
        Arrays.fill(nearest, Double.POSITIVE_INFINITY);
        nearest[1] = 0;
        double sum = 0;
        for (int i = 0; i < stops; i++) {
            int next = 0;
            for (int stop = 1; stop <= stops; stop++) {
                if (!in[stop] && (next == 0 || nearest[stop] < nearest[next])) {
                    next = stop;
                }
            }
            in[next] = true;
            if (to[next] != 0) {
                sum += nearest[next];
                edges[next]++;
                edges[to[next]]++;
            }
            for (int stop = 1; stop <= stops; stop++) {
                double way = distances.between(next, stop) + weights[next] + weights[stop];
                if (!in[stop] && way < nearest[stop]) {
                    nearest[stop] = way;
                    to[stop] = next;
                }
            }
        }
        return sum + shortestDoor(weights, edges);
    }

    private double shortestDoor(double[] weights, int[] edges) {
        int first = 0;
        int second = 0;
        for (int stop = 1; stop <= stops; stop++) {
            if (first == 0 || toDoor(stop, weights) < toDoor(first, weights)) {
                second = first;
                first = stop;
            } else if (second == 0 || toDoor(stop, weights) < toDoor(second, weights)) {
                second = stop;
            }
        }
        edges[0] = 2;
        edges[first]++;
        edges[second]++;
        return toDoor(first, weights) + toDoor(second, weights);
    }

    private double toDoor(int stop, double[] weights) {
        return distances.between(0, stop) + weights[0] + weights[stop];
    }
}
