package cornerbook.core.wheelplan.search;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** All that some seasons can leave within the rules, the set whole at the end of each: depths, and who stands on which axle. */
final class SeasonsBefore {
    private final SetNumbers numbers;
    private final CountLayout layout;
    private final Map<Key, State> states;

    private SeasonsBefore(SetNumbers numbers, CountLayout layout, Map<Key, State> states) {
        this.numbers = numbers;
        this.layout = layout;
        this.states = states;
    }

    /** Before the first season: the wheels where they ran last. */
    static SeasonsBefore none(SetNumbers numbers) {
        var state = new State(Ran.NOTHING, numbers.slackMm, numbers.unmoved);
        return new SeasonsBefore(
                numbers,
                new CountLayout(numbers, numbers.seasons - 1),
                Map.of(key(Ran.NOTHING, numbers.unmoved), state));
    }

    /** With one season more, under any of these assignments. */
    SeasonsBefore next(int season, int... assignments) {
        var next = new HashMap<Key, State>();
        for (var state : states.values()) {
            double[] least = SetNumbers.least(state.depthMm);
            for (int assignment : assignments) {
                if (numbers.mayFit(assignment, least)) {
                    double[][] worn = numbers.worn(assignment, state.depthMm, numbers.season[season]);
                    double[] leastAfter = SetNumbers.least(worn);
                    if (isWhole(leastAfter) && numbers.withinDifferences(assignment, leastAfter)) {
                        var ran = state.ran.more(layout, layout.groupOf(season), assignment, numbers);
                        next.putIfAbsent(key(ran, assignment), new State(ran, worn, assignment));
                    }
                }
            }
        }
        return new SeasonsBefore(numbers, layout, next);
    }

    boolean isEmpty() {
        return states.isEmpty();
    }

    Collection<State> states() {
        return states.values();
    }

    private static boolean isWhole(double[] leastMm) {
        for (double least : leastMm) {
            if (least < -SetNumbers.TOLERANCE_MM) {
                return false;
            }
        }
        return true;
    }

    private static Key key(Ran ran, int latest) {
        int front = 1 << Assignments.wheelAt(latest, 0) | 1 << Assignments.wheelAt(latest, 1);
        int rear = 1 << Assignments.wheelAt(latest, 2) | 1 << Assignments.wheelAt(latest, 3);
        return new Key(ran, front, rear);
    }

    private record Key(Ran ran, int front, int rear) {}

    /**
     * What the seasons left.
     *
     * @param latest assignment of the latest of them
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record State(Ran ran, double[][] depthMm, int latest) {
        List<Double> depthsMm(int wheel, double limitMm) {
            var depths = new ArrayList<Double>();
            for (double depth : depthMm[wheel]) {
                depths.add(depth + limitMm);
            }
            return depths;
        }
    }
}
