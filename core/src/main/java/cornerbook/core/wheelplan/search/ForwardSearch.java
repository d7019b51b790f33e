package cornerbook.core.wheelplan.search;

import cornerbook.core.wheelplan.search.PlanSearch.Sequence;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The best sequence where the rules on depth bind, so that few endings can be put in order: all that can be run within
 * the rules, season by season, each N once. A first pass keeps only the most even wheels of each season and those with the
 * most left as a {@link Weighing} counts it, and finds a distance; the second keeps all that may still reach it, by each
 * wheel's fastest and slowest corner, equation (1) and what the {@link LastTwoSeasons} allow.
 */
final class ForwardSearch {
    private static final int FIRST_PASS = 40;
    /** What can be run but cannot reach the distance aimed at. */
    private static final State NOWHERE = new State(Ran.NOTHING, new double[Assignments.CORNERS][0], 0);

    private final SetNumbers numbers;
    private final CountLayout layout;
    private final int mostKept;
    /** What can be run before each season, as far as it is known. */
    private final List<Map<Ran, State>> layers = new ArrayList<>();
    /** Of the last of them those that are driven on from, how many already were, and what came of that. */
    private List<State> layer;

    private int driven;
    private Map<Ran, State> next = new HashMap<>();
    /** In all layers. */
    private int states = 1;

    private final List<End> ends = new ArrayList<>();
    /** Rate of the wheel's slowest and fastest corner by groove. */
    private final double[][] slowest;

    private final double[][] fastest;
    private final double[][][] slowestPairs;
    private final LastTwoSeasons lastTwo;
    private final Weighing weighing;
    private final double[] leftMm;
    /** By wheel and corner in the season looked at: distance that the wheel can run, its least groove after the season. */
    private final double[][] reachAt;

    private final double[][] leastAfterMm;
    /** Whether the wheel can, after the season there, still come to the distance aimed at with no more depth than is left. */
    private final boolean[][] mayStillReach;

    private final double[] least;
    private double aimThousandKm;

    private ForwardSearch(SetNumbers numbers, double aimThousandKm, int mostKept) {
        this.numbers = numbers;
        this.layout = new CountLayout(numbers, numbers.seasons - 1);
        this.aimThousandKm = aimThousandKm;
        this.mostKept = mostKept;
        var start = new State(Ran.NOTHING, numbers.slackMm, 0);
        layers.add(Map.of(Ran.NOTHING, start));
        layer = List.of(start);
        slowest = extremeRates(numbers, false);
        fastest = extremeRates(numbers, true);
        slowestPairs = slowestPairs(numbers);
        lastTwo = new LastTwoSeasons(numbers);
        weighing = new Weighing(numbers);
        leftMm = new double[numbers.grooves];
        reachAt = new double[numbers.wheels][numbers.wheels];
        leastAfterMm = new double[numbers.wheels][numbers.wheels];
        mayStillReach = new boolean[numbers.wheels][numbers.wheels];
        least = new double[numbers.wheels];
    }

    /** The best sequence, whatever it takes. */
    static Optional<Sequence> best(SetNumbers numbers) {
        var all = aimingAt(numbers, reachable(numbers));
        all.run(Integer.MAX_VALUE);
        return all.choose();
    }

    /** A distance that is sure to be reached, near the longest, thousand km. */
    static double reachable(SetNumbers numbers) {
        var first = new ForwardSearch(numbers, 0, FIRST_PASS);
        first.run(Integer.MAX_VALUE);
        return Math.max(0, first.aimThousandKm);
    }

    /** For all that reaches the distance; where nothing does, nothing is found. */
    static ForwardSearch aimingAt(SetNumbers numbers, double thousandKm) {
        return new ForwardSearch(numbers, thousandKm - PlanSearch.SAME_THOUSAND_KM, Integer.MAX_VALUE);
    }

    /** The longest distance alone, thousand km; 0 when nothing reaches the distance aimed at. */
    double longestThousandKm() {
        return ends.stream().mapToDouble(End::thousandKm).max().orElse(0);
    }

    /** Goes on where it was left, until it is at its end or there are more than so many N; whether it is at its end. */
    boolean run(int mostStates) {
        while (layers.size() <= numbers.seasons) {
            int season = layers.size() - 1;
            for (; driven < layer.size(); driven++) {
                if (states + next.size() > mostStates) {
                    return false;
                }
                drive(season, layer.get(driven));
            }
            states += next.size();
            layers.add(next);
            layer = kept(next);
            driven = 0;
            next = new HashMap<>();
        }
        return true;
    }

    private void drive(int season, State state) {
        lookAhead(season, state);
        for (int assignment : numbers.allowed) {
            if (numbers.mayFit(assignment, state.leastMm)) {
                drive(season, state, assignment);
            }
        }
    }

    /** The states of a season that are driven on from. */
    private List<State> kept(Map<Ran, State> states) {
        var kept = new ArrayList<>(states.values());
        kept.removeIf(state -> state == NOWHERE);
        if (kept.size() > mostKept) {
            kept.sort(Comparator.comparingDouble(state -> state.spreadMm));
            int even = mostKept / 2;
            kept.subList(even, kept.size()).sort(Comparator.comparingDouble(state -> -state.weighed));
            return kept.subList(0, mostKept);
        }
        return kept;
    }

    /** What a season at each corner would do to each wheel, which all assignments share. */
    private void lookAhead(int season, State state) {
        double distance = numbers.season[season];
        double beyond = Math.max(0, aimThousandKm - numbers.start[season] - distance);
        for (int g = 0; g < numbers.grooves; g++) {
            leftMm[g] = leftMm(g);
        }
        for (int i = 0; i < numbers.wheels; i++) {
            for (int c = 0; c < numbers.wheels; c++) {
                double reach = Double.POSITIVE_INFINITY;
                double least = Double.POSITIVE_INFINITY;
                boolean within = true;
                for (int g = 0; g < numbers.grooves; g++) {
                    double rate = numbers.rate[c][g];
                    double worn = state.depthMm[i][g] - distance * rate;
                    reach = Math.min(reach, SetNumbers.reach(state.depthMm[i][g], rate));
                    least = Math.min(least, worn);
                    within &= beyond == 0
                            || (worn - beyond * slowest[i][g] >= -SetNumbers.TOLERANCE_MM
                                    && worn - beyond * fastest[i][g] <= leftMm[g] + EndingSearch.SUM_TOLERANCE_MM);
                }
                reachAt[i][c] = reach;
                leastAfterMm[i][c] = least;
                mayStillReach[i][c] = within;
            }
        }
    }

    /** Equation (1) at the distance aimed at: it is the same whoever ran where. */
    private double leftMm(int groove) {
        double left = 0;
        for (int i = 0; i < numbers.wheels; i++) {
            left += numbers.slackMm[i][groove] - aimThousandKm * numbers.rate[i][groove];
        }
        return left;
    }

    private void drive(int season, State state, int assignment) {
        double reach = Double.POSITIVE_INFINITY;
        boolean reaches = true;
        for (int i = 0; i < numbers.wheels; i++) {
            int corner = Assignments.corner(assignment, i);
            reach = Math.min(reach, reachAt[i][corner]);
            reaches &= mayStillReach[i][corner];
            least[i] = leastAfterMm[i][corner];
        }
        if (season == numbers.seasons - 1 || reach < numbers.season[season]) {
            end(season, state, assignment, reach);
        } else if (reaches && numbers.withinDifferences(assignment, least)) {
            var ran = state.ran.more(layout, layout.groupOf(season), assignment, numbers);
            var known = next.get(ran);
            if (known == null) {
                double[][] worn = numbers.worn(assignment, state.depthMm, numbers.season[season]);
                known = mayReach(season + 1, worn) ? new State(ran, worn, weighing.weighed(worn)) : NOWHERE;
                next.put(ran, known);
            }
            if (known != NOWHERE) {
                known.latest.set(assignment);
            }
        }
    }

    /** Whether depths before a season may still come to the distance aimed at. */
    private boolean mayReach(int season, double[][] depthMm) {
        return pairsMayReach(depthMm, aimThousandKm - numbers.start[season])
                && (!lastTwo.isNext(season) || lastTwo.mayReach(aimThousandKm, depthMm));
    }

    /** Whether each two wheels, at the two corners that are best for them, come that far: one corner takes one of them. */
    private boolean pairsMayReach(double[][] depthMm, double beyond) {
        if (beyond <= 0) {
            return true;
        }
        for (int i = 0; i < numbers.wheels; i++) {
            for (int j = 0; j < i; j++) {
                double[] slowestPair = slowestPairs[i][j];
                for (int g = 0, pair = 0; g < numbers.grooves; g++) {
                    for (int h = 0; h < numbers.grooves; h++, pair++) {
                        if (depthMm[i][g] + depthMm[j][h] < beyond * slowestPair[pair] - SetNumbers.TOLERANCE_MM) {
                            return false;
                        }
                    }
                }
            }
        }
        return true;
    }

    /** What two wheels wear together at two corners, the least of any two, by wheels and their grooves. */
    private static double[][][] slowestPairs(SetNumbers numbers) {
        var slowest = new double[numbers.wheels][numbers.wheels][numbers.grooves * numbers.grooves];
        for (int i = 0; i < numbers.wheels; i++) {
            for (int j = 0; j < i; j++) {
                Arrays.fill(slowest[i][j], Double.POSITIVE_INFINITY);
                for (int assignment : numbers.allowed) {
                    double[] one = numbers.rate[Assignments.corner(assignment, i)];
                    double[] other = numbers.rate[Assignments.corner(assignment, j)];
                    for (int g = 0, pair = 0; g < numbers.grooves; g++) {
                        for (int h = 0; h < numbers.grooves; h++, pair++) {
                            slowest[i][j][pair] = Math.min(slowest[i][j][pair], one[g] + other[h]);
                        }
                    }
                }
            }
        }
        return slowest;
    }

    private void end(int season, State state, int assignment, double reach) {
        double thousandKm = numbers.start[season] + reach;
        if (thousandKm < aimThousandKm) {
            return;
        }
        double[][] worn = numbers.worn(assignment, state.depthMm, Math.min(reach, numbers.season[season]));
        if (numbers.withinDifferences(assignment, SetNumbers.least(worn))) {
            double spread = SetNumbers.spread(SetNumbers.least(numbers.worn(assignment, state.depthMm, reach)));
            ends.add(new End(season, state, assignment, thousandKm, spread));
            aimThousandKm = Math.max(aimThousandKm, thousandKm - PlanSearch.SAME_THOUSAND_KM);
        }
    }

    /** Fewest moves of all seasons up to one under the assignment, from a state before it. */
    private int movesTo(int season, State state, int assignment) {
        if (season == 0) {
            return numbers.firstMoves[assignment];
        }
        byte[] moves = moves(season, state);
        int before = SeasonOrder.cheapestBefore(moves, assignment, numbers.allowed);
        return moves[before] + Assignments.moves(before, assignment);
    }

    /** The fewest moves to a state before a season by the latest assignment; asked of few, so counted when asked. */
    private byte[] moves(int season, State state) {
        if (state.moves == null) {
            state.moves = new byte[numbers.assignments];
            Arrays.fill(state.moves, SeasonOrder.IMPOSSIBLE);
            for (int latest : numbers.allowed) {
                if (state.latest.get(latest)) {
                    state.moves[latest] = (byte) movesTo(season - 1, before(season, state, latest), latest);
                }
            }
        }
        return state.moves;
    }

    /** The state a season earlier. */
    private State before(int season, State state, int latest) {
        var ran = state.ran.less(layout, layout.groupOf(season - 1), latest, numbers);
        return Objects.requireNonNull(layers.get(season - 1).get(ran));
    }

    private static double[][] extremeRates(SetNumbers numbers, boolean fastest) {
        var extremes = new double[numbers.wheels][numbers.grooves];
        for (int i = 0; i < numbers.wheels; i++) {
            for (int g = 0; g < numbers.grooves; g++) {
                extremes[i][g] = fastest ? 0 : Double.POSITIVE_INFINITY;
                for (int c = 0; c < numbers.classes; c++) {
                    if ((numbers.classesFor[i] >> c & 1) == 1) {
                        double rate = numbers.classRate[c][g];
                        extremes[i][g] = fastest ? Math.max(extremes[i][g], rate) : Math.min(extremes[i][g], rate);
                    }
                }
            }
        }
        return extremes;
    }

    /** The best of all. */
    Optional<Sequence> choose() {
        double longest = longestThousandKm();
        var longEnough = ends.stream()
                .filter(end -> end.thousandKm >= longest - PlanSearch.SAME_THOUSAND_KM)
                .toList();
        double even = longEnough.stream().mapToDouble(End::spreadMm).min().orElse(0);
        return longEnough.stream()
                .filter(end -> end.spreadMm <= even + PlanSearch.SAME_SPREAD_MM)
                .min(Comparator.<End>comparingInt(this::moves).thenComparingDouble(end -> -end.thousandKm))
                .map(end -> new Sequence(order(end), bests(longEnough), end.thousandKm, end.spreadMm, moves(end)));
    }

    private Sequence.Bests bests(List<End> longEnough) {
        var longest = Collections.max(longEnough, Comparator.comparingDouble(End::thousandKm));
        var mostEven = Collections.min(longEnough, Comparator.comparingDouble(End::spreadMm));
        return new Sequence.Bests(longest.thousandKm, mostEven.spreadMm, order(longest), order(mostEven));
    }

    private int moves(End end) {
        return movesTo(end.season, end.state, end.assignment);
    }

    private List<Integer> order(End end) {
        var order = new ArrayList<>(List.of(end.assignment));
        var state = end.state;
        for (int season = end.season; season > 0; season--) {
            int latest = SeasonOrder.cheapestBefore(moves(season, state), order.getFirst(), numbers.allowed);
            order.addFirst(latest);
            state = before(season, state, latest);
        }
        return order;
    }

    private record End(int season, State state, int assignment, double thousandKm, double spreadMm) {}

    /** Depths after what was run, and under which assignments the latest season of it may have been. */
    private static final class State {
        private final Ran ran;
        private final double[][] depthMm;
        private final double[] leastMm;
        private final double spreadMm;
        /** What it has left, as a {@link Weighing} counts it. */
        private final double weighed;

        private final BitSet latest = new BitSet();
        private byte @Nullable [] moves;

        State(Ran ran, double[][] depthMm, double weighed) {
            this.ran = ran;
            this.depthMm = depthMm;
            this.weighed = weighed;
            leastMm = SetNumbers.least(depthMm);
            spreadMm = SetNumbers.spread(leastMm);
        }
    }
}
