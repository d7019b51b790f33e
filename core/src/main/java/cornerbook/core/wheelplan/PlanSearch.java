package cornerbook.core.wheelplan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

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

    /** So many endings that cannot be put in order show that the rules on depth bind. */
    private static final int MOST_OUT_OF_ORDER = 100;

    private final SetNumbers numbers;
    private final List<EndingSearch> bySeason = new ArrayList<>();
    private final List<SeasonOrder> orders = new ArrayList<>();

    private int outOfOrder;

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
        for (int seasons = request.seasonsThousandKm().size(); seasons > 0; seasons--) {
            var shorter = request.withSeasons(seasons);
            var best = best(shorter);
            if (best.isPresent()) {
                return Optional.of(new Planned(shorter, best.get()));
            }
        }
        return Optional.empty();
    }

    /** The rules each of which, left out alone, would let the request be planned; for a request that cannot be. */
    static List<Rule> binding(PlanRequest request) {
        return request.rules().kept().stream()
                .filter(rule ->
                        best(request.withRules(request.rules().without(rule))).isPresent())
                .toList();
    }

    /** A groove is at its limit already: no assignment adds distance, so the one with the fewest moves is left. */
    private static Optional<Sequence> spent(SetNumbers numbers) {
        var least = new double[Assignments.WHEELS];
        for (int i = 0; i < least.length; i++) {
            least[i] = Double.POSITIVE_INFINITY;
            for (double slack : numbers.slackMm[i]) {
                least[i] = Math.min(least[i], slack);
            }
        }
        return Arrays.stream(numbers.allowed)
                .filter(assignment -> numbers.mayFit(assignment, least))
                .boxed()
                .min(Comparator.comparingInt(assignment -> numbers.firstMoves[assignment]))
                .map(assignment ->
                        new Sequence(List.of(assignment), 0, SetNumbers.spread(least), numbers.firstMoves[assignment]));
    }

    private Optional<Sequence> best() {
        double bound = bound();
        double gap = FIRST_GAP * bound;
        double searched = Double.POSITIVE_INFINITY;
        for (double target = bound; target > 0; gap *= 1.5) {
            target = Math.max(0, bound - gap);
            var longest = longest(target, searched);
            if (longest.isPresent()) {
                return longest.map(this::evenWithFewestMoves);
            }
            if (outOfOrder > MOST_OUT_OF_ORDER) {
                return ForwardSearch.best(numbers);
            }
            searched = target;
        }
        return Optional.empty();
    }

    /** The longest ending that can be put in order; given up as empty when too many cannot. */
    private Optional<Ending> longest(double thousandKm, double searchedThousandKm) {
        var window = new Window(thousandKm, Double.POSITIVE_INFINITY, Integer.MAX_VALUE);
        var found = new ArrayDeque<Ending>();
        visit(window, ending -> {
            if (ending.thousandKm >= searchedThousandKm) {
                return;
            }
            if (canBeOrdered(ending)) {
                found.push(ending);
                window.thousandKm = Math.nextUp(ending.thousandKm);
            } else if (++outOfOrder > MOST_OUT_OF_ORDER) {
                window.thousandKm = Double.POSITIVE_INFINITY;
            }
        });
        return outOfOrder > MOST_OUT_OF_ORDER ? Optional.empty() : Optional.ofNullable(found.peek());
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

    /** Without rules on depth each ending can be put in order: König's theorem on regular bipartite graphs. */
    private boolean canBeOrdered(Ending ending) {
        return !numbers.rulesOnDepth() || moves(ending) < Integer.MAX_VALUE;
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
