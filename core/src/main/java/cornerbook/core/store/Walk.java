package cornerbook.core.store;

import java.util.ArrayList;
import java.util.List;

/**
 * The way through the store that fetches all stops: rounds that begin and end at the door.
 *
 * @param rounds numbers of the stops as they were given, from 0, in the order in which one comes to them
 * @param lengthM of all rounds together
 * @param atLeastM no way is shorter than this; equal to {@code lengthM} where the way is proven to be the shortest
 */
public record Walk(List<List<Integer>> rounds, double lengthM, double atLeastM) {
    public Walk {
        rounds = rounds.stream().map(List::copyOf).toList();
    }

    /** Whether no way is shorter. */
    public boolean isShortest() {
        return lengthM <= atLeastM;
    }

    /**
     * The way to fetch sets.
     *
     * @param stops where they lie; several may lie at one point
     * @param perRound sets that one carries at once, from 1
     */
    public static Walk of(List<FloorPoint> stops, int perRound) {
        var points = new ArrayList<FloorPoint>();
        points.add(FloorPoint.DOOR);
        points.addAll(stops);
        return of(stops.size(), (from, to) -> points.get(from).walkToM(points.get(to)), perRound);
    }

    static Walk of(int stops, Distances distances, int perRound) {
        if (perRound < 1) {
            throw new IllegalArgumentException("perRound is %s, expected 1 or more".formatted(perRound));
        }
        if (stops == 0) {
            return new Walk(List.of(), 0, 0);
        }
        return ExactRounds.takes(stops, perRound)
                ? new ExactRounds(stops, distances, perRound).solve()
                : new LongWalk(stops, distances, perRound).solve();
    }

    /** From numbers that have the door at 0. */
    static Walk ofTours(List<List<Integer>> tours, Distances distances, double atLeastM) {
        double lengthM =
                tours.stream().mapToDouble(tour -> length(tour, distances)).sum();
        return new Walk(
                tours.stream()
                        .map(tour -> tour.stream().map(stop -> stop - 1).toList())
                        .toList(),
                lengthM,
                Math.min(atLeastM, lengthM));
    }

    /** From the door by these stops and back. */
    static double length(List<Integer> tour, Distances distances) {
        double sum = 0;
        int at = 0;
        for (int stop : tour) {
            sum += distances.between(at, stop);
            at = stop;
        }
        return sum + distances.between(at, 0);
    }
}
