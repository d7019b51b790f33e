package cornerbook.core.store;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The shortest rounds to a few stops, by dynamic programming over sets of stops (Held and Karp 1962, J. Soc. Indust. Appl. Math.
 * 10:196, equations (2) and (3)), and over how a set parts into rounds:
 *
 * <pre>
 *   C({j}, j) = d(0, j)
 *   C(S, j)   = min over i in S − j of  C(S − j, i) + d(i, j)                                   (1)
 *   R(S)      = min over j in S of  C(S, j) + d(j, 0),  for |S| up to what one carries           (2)
 *   B(S)      = min over T in S that has the first stop of S, of  R(T) + B(S − T)                (3)
 * </pre>
 *
 * Exact. Time 2^n n² for (1) and 3^n for (3), which is left out when one round is enough.
 */
final class ExactRounds {
    /** With one round. */
    private static final int MOST_STOPS = 15;

    /** With several. */
    private static final int MOST_STOPS_IN_ROUNDS = 13;

    private final int stops;
    private final Distances distances;
    private final int perRound;
    /** Equation (1), at [S * stops + j], stops from 0. */
    private final double[] reached;

    private final double[] round;

    ExactRounds(int stops, Distances distances, int perRound) {
        this.stops = stops;
        this.distances = distances;
        this.perRound = perRound;
        int sets = 1 << stops;
        reached = new double[sets * stops];
        round = new double[sets];
        Arrays.fill(reached, Double.POSITIVE_INFINITY);
        Arrays.fill(round, Double.POSITIVE_INFINITY);
    }

    static boolean takes(int stops, int perRound) {
        return stops <= (perRound >= stops ? MOST_STOPS : MOST_STOPS_IN_ROUNDS);
    }

    Walk solve() {
        reach();
        var tours = perRound >= stops ? List.of(tour((1 << stops) - 1)) : parted();
        return Walk.ofTours(tours, distances, Double.POSITIVE_INFINITY);
    }

    private void reach() {
        for (int set = 1; set < (1 << stops); set++) {
            if (Integer.bitCount(set) > perRound) {
                continue;
            }
            for (int last = 0; last < stops; last++) {
                if (((set >> last) & 1) == 1) {
                    double way = reach(set, last);
                    reached[set * stops + last] = way;
                    round[set] = Math.min(round[set], way + distances.between(last + 1, 0));
                }
            }
        }
    }

    private double reach(int set, int last) {
        int before = set & ~(1 << last);
        if (before == 0) {
            return distances.between(0, last + 1);
        }
        double best = Double.POSITIVE_INFINITY;
        for (int from = 0; from < stops; from++) {
            if (((before >> from) & 1) == 1) {
                best = Math.min(best, reached[before * stops + from] + distances.between(from + 1, last + 1));
            }
        }
        return best;
    }

    /** The round through a set, its stops from 1 on. */
    private List<Integer> tour(int set) {
        var backwards = new ArrayList<Integer>();
        int left = set;
        int after = 0;
        while (left != 0) {
            int best = Integer.numberOfTrailingZeros(left);
            for (int last = best + 1; last < stops; last++) {
                if (((left >> last) & 1) == 1 && way(left, last, after) < way(left, best, after)) {
                    best = last;
                }
            }
            backwards.add(best + 1);
            left &= ~(1 << best);
            after = best + 1;
        }
        return backwards.reversed();
    }

    private double way(int set, int last, int after) {
        return reached[set * stops + last] + distances.between(last + 1, after);
    }

    /** Equation (3). */
    private List<List<Integer>> parted() {
        int all = (1 << stops) - 1;
        var best = new double[all + 1];
        var first = new int[all + 1];
        for (int set = 1; set <= all; set++) {
            best[set] = Double.POSITIVE_INFINITY;
            int lowest = Integer.lowestOneBit(set);
            int rest = set & ~lowest;
            int other = rest;
            while (true) {
                int taken = other | lowest;
                double length = round[taken] + best[set & ~taken];
                if (length < best[set]) {
                    best[set] = length;
                    first[set] = taken;
                }
                if (other == 0) {
                    break;
                }
                other = (other - 1) & rest;
            }
        }
        var tours = new ArrayList<List<Integer>>();
        for (int set = all; set != 0; set &= ~first[set]) {
            tours.add(tour(first[set]));
        }
        return tours;
    }
}
