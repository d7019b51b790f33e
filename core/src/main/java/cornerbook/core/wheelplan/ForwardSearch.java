package cornerbook.core.wheelplan;

import cornerbook.core.wheelplan.PlanSearch.Sequence;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The best sequence where the rules on depth bind, so that few endings can be put in order: all that can be run within
 * the rules, season by season, each N once. A first pass keeps only the most even wheels of each season and finds a
 * distance; the second keeps all that may still reach it, by each wheel's fastest and slowest corner and equation (1).
 */
final class ForwardSearch {
    private static final int FIRST_PASS = 200;

    private final SetNumbers numbers;
    private final CountLayout layout;
    private final List<Map<Ran, State>> layers = new ArrayList<>();
    private final List<End> ends = new ArrayList<>();
    private double aimThousandKm;

    private ForwardSearch(SetNumbers numbers, double aimThousandKm) {
        this.numbers = numbers;
        this.layout = new CountLayout(numbers, numbers.seasons - 1);
        this.aimThousandKm = aimThousandKm;
    }

    static Optional<Sequence> best(SetNumbers numbers) {
        var first = new ForwardSearch(numbers, 0);
        first.run(FIRST_PASS);
        var all = new ForwardSearch(numbers, Math.max(0, first.aimThousandKm));
        all.run(Integer.MAX_VALUE);
        return all.choose();
    }

    private void run(int mostStates) {
        var depth = Arrays.stream(numbers.slackMm).map(double[]::clone).toArray(double[][]::new);
        layers.add(Map.of(Ran.NOTHING, new State(Ran.NOTHING, depth)));
        for (int season = 0; season < numbers.seasons; season++) {
            var next = new HashMap<Ran, State>();
            for (var state : kept(layers.get(season), mostStates)) {
                for (int assignment : numbers.allowed) {
                    drive(season, state, assignment, next);
                }
            }
            layers.add(next);
        }
    }

    private static List<State> kept(Map<Ran, State> states, int most) {
        var kept = new ArrayList<>(states.values());
        if (kept.size() > most) {
            kept.sort(Comparator.comparingDouble(state -> SetNumbers.spread(state.leastMm)));
            return kept.subList(0, most);
        }
        return kept;
    }

    private void drive(int season, State state, int assignment, Map<Ran, State> next) {
        int moves = movesTo(season, state, assignment);
        if (moves >= SeasonOrder.IMPOSSIBLE || !numbers.mayFit(assignment, state.leastMm)) {
            return;
        }
        double reach = Double.POSITIVE_INFINITY;
        for (int i = 0; i < Assignments.WHEELS; i++) {
            for (int g = 0; g < numbers.grooves; g++) {
                reach = Math.min(reach, state.depthMm[i][g] / numbers.rate[Assignments.corner(assignment, i)][g]);
            }
        }
        var atEnd = new State(state.ran, worn(state, assignment, Math.min(reach, numbers.season[season])));
        if (!numbers.withinDifferences(assignment, atEnd.leastMm)) {
            return;
        }
        double thousandKm = numbers.start[season] + reach;
        if (season == numbers.seasons - 1 || reach < numbers.season[season]) {
            if (thousandKm >= aimThousandKm) {
                var atLimit = new State(state.ran, worn(state, assignment, reach));
                ends.add(new End(season, state, assignment, thousandKm, SetNumbers.spread(atLimit.leastMm), moves));
                aimThousandKm = Math.max(aimThousandKm, thousandKm - PlanSearch.SAME_THOUSAND_KM);
            }
        } else if (mayStillReach(season + 1, atEnd.depthMm)) {
            var ran = state.ran.more(layout, layout.groupOf(season), assignment, numbers);
            var known = next.computeIfAbsent(ran, key -> new State(key, atEnd.depthMm));
            known.moves[assignment] = (byte) Math.min(known.moves[assignment], moves);
        }
    }

    private int movesTo(int season, State state, int assignment) {
        if (season == 0) {
            return numbers.firstMoves[assignment];
        }
        int before = SeasonOrder.cheapestBefore(state.moves, assignment, numbers.allowed);
        return state.moves[before] + Assignments.moves(before, assignment);
    }

    private double[][] worn(State state, int assignment, double distance) {
        var depth = new double[Assignments.WHEELS][numbers.grooves];
        for (int i = 0; i < Assignments.WHEELS; i++) {
            for (int g = 0; g < numbers.grooves; g++) {
                depth[i][g] = state.depthMm[i][g] - distance * numbers.rate[Assignments.corner(assignment, i)][g];
            }
        }
        return depth;
    }

    private boolean mayStillReach(int season, double[][] depthMm) {
        double distance = aimThousandKm - numbers.start[season];
        if (distance <= 0) {
            return true;
        }
        for (int g = 0; g < numbers.grooves; g++) {
            double left = 0;
            for (int i = 0; i < Assignments.WHEELS; i++) {
                left += depthMm[i][g] - distance * numbers.rate[i][g];
            }
            for (int i = 0; i < Assignments.WHEELS; i++) {
                double slowest = depthMm[i][g] - distance * extremeRate(i, g, false);
                double fastest = depthMm[i][g] - distance * extremeRate(i, g, true);
                if (slowest < -SetNumbers.TOLERANCE_MM || fastest > left + EndingSearch.SUM_TOLERANCE_MM) {
                    return false;
                }
            }
        }
        return true;
    }

    private double extremeRate(int wheel, int groove, boolean fastest) {
        double extreme = fastest ? 0 : Double.POSITIVE_INFINITY;
        for (int c = 0; c < numbers.classes; c++) {
            if ((numbers.classesFor[wheel] >> c & 1) == 1) {
                double rate = numbers.classRate[c][groove];
                extreme = fastest ? Math.max(extreme, rate) : Math.min(extreme, rate);
            }
        }
        return extreme;
    }

    private Optional<Sequence> choose() {
        double longest = ends.stream().mapToDouble(End::thousandKm).max().orElse(0);
        var longEnough = ends.stream()
                .filter(end -> end.thousandKm >= longest - PlanSearch.SAME_THOUSAND_KM)
                .toList();
        double even = longEnough.stream().mapToDouble(End::spreadMm).min().orElse(0);
        return longEnough.stream()
                .filter(end -> end.spreadMm <= even + PlanSearch.SAME_SPREAD_MM)
                .min(Comparator.comparingInt(End::moves).thenComparingDouble(end -> -end.thousandKm))
                .map(end -> new Sequence(order(end), end.thousandKm, end.spreadMm, end.moves));
    }

    private List<Integer> order(End end) {
        var order = new ArrayList<>(List.of(end.assignment));
        var state = end.state;
        for (int season = end.season; season > 0; season--) {
            int before = SeasonOrder.cheapestBefore(state.moves, order.getFirst(), numbers.allowed);
            order.addFirst(before);
            var ran = state.ran.less(layout, layout.groupOf(season - 1), before, numbers);
            state = Objects.requireNonNull(layers.get(season - 1).get(ran));
        }
        return order;
    }

    private record End(int season, State state, int assignment, double thousandKm, double spreadMm, int moves) {}

    /** Depths after what was run, and the fewest moves to it by the latest assignment. */
    private static final class State {
        private final Ran ran;
        private final double[][] depthMm;
        private final double[] leastMm;
        private final byte[] moves = new byte[Assignments.COUNT];

        State(Ran ran, double[][] depthMm) {
            this.ran = ran;
            this.depthMm = depthMm;
            leastMm = Arrays.stream(depthMm)
                    .mapToDouble(depths -> Arrays.stream(depths).min().orElseThrow())
                    .toArray();
            Arrays.fill(moves, SeasonOrder.IMPOSSIBLE);
        }
    }
}
