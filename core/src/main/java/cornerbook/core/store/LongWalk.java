package cornerbook.core.store;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/**
 * A short way to many stops. One way to all of them is begun at the nearest and improved by turning parts round (2-opt, Croes 1958,
 * Oper. Res. 6:791) and by moving up to three stops elsewhere (Or-opt) until neither helps; then it is broken at four places and
 * improved again, many times, and kept when it is shorter (iterated local search with the double bridge, Martin, Otto and Felten 1991,
 * Complex Systems 5:299; all from memory). Where one carries less, the way is cut into rounds at the best places (Beasley 1983, Omega
 * 11:403, from memory), and each short round is made the shortest by {@link ExactRounds}.
 *
 * <p>Not proven to be the shortest: {@link LowerBound} says how much shorter it could be. The same stops give the same way.
 */
final class LongWalk {
    private static final int TRIES = 2000;
    /** Far apart, what was broken is seldom mended to something shorter. */
    private static final int LONGEST_BROKEN = 30;

    private static final int FEWEST_TO_BREAK = 8;
    private static final int LONGEST_MOVED = 3;
    private static final double ROUNDING_M = 1e-9;

    private final int stops;
    private final Distances distances;
    private final int perRound;

    LongWalk(int stops, Distances distances, int perRound) {
        this.stops = stops;
        this.distances = distances;
        this.perRound = perRound;
    }

    Walk solve() {
        var way = improved(nearestFirst());
        double length = length(way);
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(1);
        for (int i = 0; i < TRIES && stops >= FEWEST_TO_BREAK; i++) {
            var other = improved(broken(way, random));
            double otherLength = length(other);
            if (otherLength < length - ROUNDING_M) {
                way = other;
                length = otherLength;
            }
        }
        var tours = cut(way);
        double atLeast = new LowerBound(stops, distances, perRound).lengthM(tours.size() == 1 ? length : 2 * length);
        return Walk.ofTours(tours, distances, atLeast);
    }

    /** The door stands at 0 of a way and is left where it is. */
    private int[] nearestFirst() {
        var way = new int[stops + 1];
        var done = new boolean[stops + 1];
        for (int i = 1; i <= stops; i++) {
            int nearest = -1;
            for (int stop = 1; stop <= stops; stop++) {
                if (!done[stop]
                        && (nearest < 0
                                || distances.between(way[i - 1], stop) < distances.between(way[i - 1], nearest))) {
                    nearest = stop;
                }
            }
            way[i] = nearest;
            done[nearest] = true;
        }
        return way;
    }

    private double length(int[] way) {
        double sum = distances.between(way[stops], 0);
        for (int i = 1; i <= stops; i++) {
            sum += distances.between(way[i - 1], way[i]);
        }
        return sum;
    }

    private int[] improved(int[] way) {
        boolean better = true;
        while (better) {
            better = turnPart(way);
            better |= movePart(way);
        }
        return way;
    }

    private int at(int[] way, int index) {
        return index > stops ? 0 : way[index];
    }

    private boolean turnPart(int[] way) {
        boolean better = false;
        for (int from = 1; from < stops; from++) {
            for (int to = from + 1; to <= stops; to++) {
                int before = way[from - 1];
                int after = at(way, to + 1);
                double gain = distances.between(before, way[from])
                        + distances.between(way[to], after)
                        - distances.between(before, way[to])
                        - distances.between(way[from], after);
                if (gain > ROUNDING_M) {
                    turn(way, from, to);
                    better = true;
                }
            }
        }
        return better;
    }

    private static void turn(int[] way, int from, int to) {
        for (int i = from, j = to; i < j; i++, j--) {
            int kept = way[i];
            way[i] = way[j];
            way[j] = kept;
        }
    }

    private boolean movePart(int[] way) {
        boolean better = false;
        for (int count = 1; count <= LONGEST_MOVED && count < stops; count++) {
            for (int from = 1; from + count - 1 <= stops; from++) {
                better |= movePart(way, from, count);
            }
        }
        return better;
    }

    /** Takes a part out and puts it where that helps most, either way round. */
    private boolean movePart(int[] way, int from, int count) {
        int to = from + count - 1;
        double saved = distances.between(way[from - 1], way[from])
                + distances.between(way[to], at(way, to + 1))
                - distances.between(way[from - 1], at(way, to + 1));
        double bestGain = ROUNDING_M;
        int bestAfter = -1;
        boolean turned = false;
        for (int after = 0; after <= stops; after++) {
            if (after >= from - 1 && after <= to) {
                continue;
            }
            int left = way[after];
            int right = at(way, after + 1);
            double free = saved + distances.between(left, right);
            double straight = free - distances.between(left, way[from]) - distances.between(way[to], right);
            double turnedRound = free - distances.between(left, way[to]) - distances.between(way[from], right);
            if (Math.max(straight, turnedRound) > bestGain) {
                bestGain = Math.max(straight, turnedRound);
                bestAfter = after;
                turned = turnedRound > straight;
            }
        }
        if (bestAfter < 0) {
            return false;
        }
        var part = Arrays.copyOfRange(way, from, to + 1);
        if (turned) {
            turn(part, 0, count - 1);
        }
        if (bestAfter > to) {
            System.arraycopy(way, to + 1, way, from, bestAfter - to);
            System.arraycopy(part, 0, way, bestAfter - count + 1, count);
        } else {
            System.arraycopy(way, bestAfter + 1, way, bestAfter + 1 + count, from - bestAfter - 1);
            System.arraycopy(part, 0, way, bestAfter + 1, count);
        }
        return true;
    }

    /** The way with two parts that follow each other, of random lengths, in each other's place. */
    private int[] broken(int[] way, RandomGenerator random) {
        int from = random.nextInt(Math.max(1, stops + 1 - LONGEST_BROKEN));
        var cuts = random.ints(from + 1, Math.min(stops, from + LONGEST_BROKEN) + 1)
                .distinct()
                .limit(3)
                .sorted()
                .toArray();
        var other = new int[stops + 1];
        int at = copy(way, 0, cuts[0], other, 0);
        at = copy(way, cuts[1], cuts[2], other, at);
        at = copy(way, cuts[0], cuts[1], other, at);
        copy(way, cuts[2], stops + 1, other, at);
        return other;
    }

    private static int copy(int[] from, int first, int end, int[] to, int at) {
        System.arraycopy(from, first, to, at, end - first);
        return at + end - first;
    }

    /** Rounds of at most so many stops, in the order of the way, cut where all of them together are shortest. */
    private List<List<Integer>> cut(int[] way) {
        var best = new double[stops + 1];
        var from = new int[stops + 1];
        Arrays.fill(best, 1, stops + 1, Double.POSITIVE_INFINITY);
        for (int first = 1; first <= stops; first++) {
            double inside = 0;
            for (int last = first; last <= stops && last - first < perRound; last++) {
                inside += last == first ? 0 : distances.between(way[last - 1], way[last]);
                double length =
                        best[first - 1] + distances.between(0, way[first]) + inside + distances.between(way[last], 0);
                if (length < best[last]) {
                    best[last] = length;
                    from[last] = first;
                }
            }
        }
        var tours = new ArrayList<List<Integer>>();
        for (int last = stops; last > 0; last = from[last] - 1) {
            var tour = new ArrayList<Integer>();
            for (int i = from[last]; i <= last; i++) {
                tour.add(way[i]);
            }
            tours.addFirst(shortest(tour));
        }
        return tours;
    }

    private List<Integer> shortest(List<Integer> tour) {
        if (!ExactRounds.takes(tour.size(), tour.size())) {
            return tour;
        }
        Distances within = (i, j) -> distances.between(i == 0 ? 0 : tour.get(i - 1), j == 0 ? 0 : tour.get(j - 1));
        return new ExactRounds(tour.size(), within, tour.size())
                .solve().rounds().getFirst().stream().map(tour::get).toList();
    }
}
