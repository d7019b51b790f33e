package cornerbook.core.wheelplan.search;

import cornerbook.core.wheelplan.PlanRequest;
import cornerbook.core.wheelplan.Rule;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * The proven best sequence of assignments for one request, level by level: with K* the longest distance, the smallest
 * spread s* among the plans with K ≥ K* − 1 km, and the fewest moves among those with a spread up to s* + 0.01 mm.
 *
 * <p>Endings are searched from an upper bound of K downwards in growing steps, so that all that reach the step's
 * distance are known and the best of them that can be put in order is the optimum.
 */
final class PlanSearch {
    static final double SAME_THOUSAND_KM = 1e-3;
    static final double SAME_SPREAD_MM = 0.01;
    /** Share of the upper bound that is searched first; any share finds the same plan. */
    private static final double FIRST_GAP = 1e-3;

    /**
     * Where the rules on depth bind, endings and driving forward take turns, each with a limit that grows, as nothing says
     * beforehand which gets there first: endings put in order in vain, endings looked at, states driven to.
     */
    private static final int OUT_OF_ORDER = 100;

    private static final int LOOKED_AT = 4_000;
    private static final int DRIVEN_TO = 500;
    private static final int GROWTH = 4;

    private final SetNumbers numbers;
    private final List<EndingSearch> bySeason = new ArrayList<>();
    private final List<SeasonOrder> orders = new ArrayList<>();

    private int outOfOrder;
    private int mostOutOfOrder = Integer.MAX_VALUE;
    private int mostLookedAt = Integer.MAX_VALUE;

    private PlanSearch(SetNumbers numbers) {
        this.numbers = numbers;
        for (int season = 0; season < numbers.seasons; season++) {
            bySeason.add(new EndingSearch(numbers, season));
            orders.add(new SeasonOrder(numbers, bySeason.get(season).layout()));
        }
    }

    /** The best plan; empty when no sequence keeps the rules. */
    static Optional<Sequence> best(PlanRequest request) {
        var numbers = new SetNumbers(request);
        return numbers.spent() ? spent(numbers) : new PlanSearch(numbers).best();
    }

    /** The best plan over as many of the seasons as the rules can be kept for; empty when not even for the first. */
    static Optional<Planned> bestWithinRules(PlanRequest request) {
        int seasons = seasonsWithinRules(request);
        if (seasons == 0) {
            return Optional.empty();
        }
        var shorter = request.withSeasons(seasons);
        return best(shorter).map(best -> new Planned(shorter, best));
    }

    /** Whether the rules can be kept over all the seasons. */
    static boolean canBePlanned(PlanRequest request) {
        return seasonsWithinRules(request) == request.seasonsThousandKm().size();
    }

    /** The longest distance alone, thousand km; empty when no sequence keeps the rules. */
    static Optional<Double> longestThousandKm(PlanRequest request) {
        var numbers = new SetNumbers(request);
        if (numbers.spent()) {
            return spent(numbers).map(Sequence::thousandKm);
        }
        return new PlanSearch(numbers).longestThousandKm();
    }

    /** The rules each of which, left out alone, would let the request be planned; for a request that cannot be. */
    static List<Rule> binding(PlanRequest request) {
        return request.rules().kept().stream()
                .filter(rule -> canBePlanned(request.withRules(request.rules().without(rule))))
                .toList();
    }

    private static int seasonsWithinRules(PlanRequest request) {
        var numbers = new SetNumbers(request);
        if (numbers.spent()) {
            return spent(numbers).isPresent() ? numbers.seasons : 0;
        }
        return RunWithinRules.seasons(numbers);
    }

    /** A groove is at its limit already: no assignment adds distance, so the one with the fewest moves is left. */
    private static Optional<Sequence> spent(SetNumbers numbers) {
        double[] least = SetNumbers.least(numbers.slackMm);
        return Arrays.stream(numbers.allowed)
                .filter(assignment -> numbers.mayFit(assignment, least))
                .boxed()
                .min(Comparator.comparingInt(assignment -> numbers.firstMoves[assignment]))
                .map(assignment ->
                        new Sequence(List.of(assignment), 0, SetNumbers.spread(least), numbers.firstMoves[assignment]));
    }

    private Optional<Sequence> best() {
        if (!numbers.rulesOnDepth()) {
            return longest().map(this::evenWithFewestMoves);
        }
        if (RunWithinRules.seasons(numbers) < numbers.seasons) {
            return Optional.empty();
        }
        return byTurns(this::evenWithFewestMoves, ForwardSearch::choose);
    }

    /** What the first of both searches that ends makes of it. */
    private <T> Optional<T> byTurns(Function<Ending, T> ofEnding, Function<ForwardSearch, Optional<T>> ofDriving) {
        double reachable = -1;
        for (int limit = 1; ; limit *= GROWTH) {
            mostOutOfOrder = OUT_OF_ORDER * limit;
            mostLookedAt = LOOKED_AT * limit;
            outOfOrder = 0;
            var longest = longest();
            if (longest.isPresent()) {
                return longest.map(ofEnding);
            }
            reachable = reachable < 0 ? ForwardSearch.reachable(numbers) : reachable;
            var driven = ForwardSearch.within(numbers, reachable, DRIVEN_TO * limit);
            if (driven.isPresent()) {
                return ofDriving.apply(driven.get());
            }
        }
    }

    private Optional<Double> longestThousandKm() {
        if (RunWithinRules.seasons(numbers) < numbers.seasons) {
            return Optional.empty();
        }
        return numbers.rulesOnDepth()
                ? byTurns(ending -> ending.thousandKm, driven -> Optional.of(driven.longestThousandKm()))
                : longest().map(ending -> ending.thousandKm);
    }

    /** The longest ending that can be put in order; empty when too many would have to be tried. */
    private Optional<Ending> longest() {
        double bound = bound();
        double gap = FIRST_GAP * bound;
        double searched = Double.POSITIVE_INFINITY;
        for (double target = bound; target > 0 && outOfOrder <= mostOutOfOrder; gap *= 1.5) {
            target = Math.max(0, bound - gap);
            var longest = numbers.rulesOnDepth() ? longestInOrder(target, searched) : longest(target);
            if (longest.isPresent()) {
                return longest;
            }
            searched = target;
        }
        return Optional.empty();
    }

    /** The longest ending, where each can be put in order: König's theorem on regular bipartite graphs. */
    private Optional<Ending> longest(double thousandKm) {
        var window = new Window(thousandKm, Double.POSITIVE_INFINITY, Integer.MAX_VALUE);
        var found = new ArrayDeque<Ending>();
        visit(window, ending -> {
            found.push(ending);
            window.thousandKm = Math.nextUp(ending.thousandKm);
        });
        return Optional.ofNullable(found.peek());
    }

    /** The longest ending within the rules on depth: those that reach the distance, longest first. */
    private Optional<Ending> longestInOrder(double thousandKm, double searchedThousandKm) {
        var window = new Window(thousandKm, Double.POSITIVE_INFINITY, Integer.MAX_VALUE);
        var found = new ArrayList<Ending>();
        visit(window, ending -> {
            if (ending.thousandKm < searchedThousandKm) {
                found.add(ending);
            }
            if (found.size() > mostLookedAt) {
                window.thousandKm = Double.POSITIVE_INFINITY;
            }
        });
        if (found.size() > mostLookedAt) {
            outOfOrder = Integer.MAX_VALUE;
            return Optional.empty();
        }
        found.sort(Comparator.comparingDouble(ending -> -ending.thousandKm));
        for (var ending : found) {
            if (canBeOrdered(ending)) {
                return Optional.of(ending);
            }
            if (++outOfOrder > mostOutOfOrder) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    private Sequence evenWithFewestMoves(Ending longest) {
        double enough = longest.thousandKm - SAME_THOUSAND_KM;
        var found = new ArrayDeque<>(List.of(longest));
        var even = new Window(enough, longest.spreadMm, Integer.MAX_VALUE);
        visit(even, ending -> {
            if (ending.spreadMm < even.spreadMm && canBeOrdered(ending)) {
                found.push(ending);
                even.spreadMm = ending.spreadMm;
            }
        });
        var few = new Window(enough, even.spreadMm + SAME_SPREAD_MM, moves(found.element()));
        visit(few, ending -> {
            int moves = moves(ending);
            if (moves < few.moves) {
                found.push(ending);
                few.moves = moves;
            }
        });
        var chosen = found.element();
        return new Sequence(
                Arrays.stream(orders.get(chosen.season).order(chosen)).boxed().toList(),
                chosen.thousandKm,
                chosen.spreadMm,
                few.moves);
    }

    private void visit(Window window, Consumer<Ending> visitor) {
        for (var search : bySeason.reversed()) {
            search.visit(window, visitor);
        }
    }

    private int moves(Ending ending) {
        return orders.get(ending.season).fewestMoves(ending);
    }

    /** No plan gets farther: each wheel on its own picks its corners, and no wheel outlives the average. */
    private double bound() {
        double bound = Double.POSITIVE_INFINITY;
        for (int g = 0; g < numbers.grooves; g++) {
            double slack = 0;
            double rate = 0;
            for (int i = 0; i < Assignments.WHEELS; i++) {
                slack += numbers.slackMm[i][g];
                rate += numbers.rate[i][g];
            }
            bound = Math.min(bound, slack / rate);
        }
        for (int i = 0; i < Assignments.WHEELS; i++) {
            double ofWheel = 0;
            for (var search : bySeason) {
                ofWheel = Math.max(ofWheel, search.boundThousandKm(i));
            }
            bound = Math.min(bound, ofWheel);
        }
        return bound;
    }

    private boolean canBeOrdered(Ending ending) {
        return !numbers.rulesOnDepth() || orders.get(ending.season).canBeRun(ending);
    }

    /** A request, cut to the seasons that can be planned, and its best sequence. */
    record Planned(PlanRequest request, Sequence sequence) {
        int seasons() {
            return request.seasonsThousandKm().size();
        }
    }

    /**
     * A sequence of assignments.
     *
     * @param assignments one for each season that begins before the set reaches its limit
     * @param thousandKm until the first groove reaches its limit
     * @param spreadMm of the wheels' least grooves then
     */
    record Sequence(List<Integer> assignments, double thousandKm, double spreadMm, int moves) {}
}
