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
import java.util.stream.Stream;

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

    private static final double GAP_GROWTH = 1.5;
    /** What may be joined for a bound where the rules on depth bind: there it need not be the tightest. */
    private static final int STEPS_FOR_BOUND = 30_000;

    /** How much more each of the two searches may look at in its next turn, where the rules on depth bind. */
    private static final int TURN_GROWTH = 2;

    private final SetNumbers numbers;
    private final double knownBoundThousandKm;
    private final Weighing weighing;
    private final List<EndingSearch> bySeason = new ArrayList<>();
    private final List<SeasonOrder> orders = new ArrayList<>();

    private PlanSearch(SetNumbers numbers, double knownBoundThousandKm) {
        this.numbers = numbers;
        this.knownBoundThousandKm = knownBoundThousandKm;
        weighing = new Weighing(numbers);
        for (int season = 0; season < numbers.seasons; season++) {
            bySeason.add(new EndingSearch(numbers, season, weighing));
            orders.add(new SeasonOrder(numbers, bySeason.get(season).layout()));
        }
    }

    /** The best plan; empty when no sequence keeps the rules. */
    static Optional<Sequence> best(PlanRequest request) {
        return best(request, Double.POSITIVE_INFINITY);
    }

    /**
     * The best plan where it is known that none gets farther, as with a rule less: the search begins there.
     *
     * @param boundThousandKm may be the longest distance itself
     */
    static Optional<Sequence> best(PlanRequest request, double boundThousandKm) {
        var numbers = new SetNumbers(request);
        return numbers.spent() ? spent(numbers) : new PlanSearch(numbers, boundThousandKm).best();
    }

    /** The best plan over as many of the seasons as the rules can be kept for; empty when not even for the first. */
    static Optional<Planned> bestWithinRules(PlanRequest request) {
        return withinRules(request).flatMap(shorter -> best(shorter).map(best -> new Planned(shorter, best)));
    }

    /** The request for as many of the seasons as the rules can be kept for; empty when not even for the first. */
    static Optional<PlanRequest> withinRules(PlanRequest request) {
        int seasons = seasonsWithinRules(request);
        return seasons == 0 ? Optional.empty() : Optional.of(request.withSeasons(seasons));
    }

    /** Whether the rules can be kept over all the seasons. */
    static boolean canBePlanned(PlanRequest request) {
        return seasonsWithinRules(request) == request.seasonsThousandKm().size();
    }

    /** The longest distance alone, thousand km, if it is more than a floor; empty else. */
    static Optional<Double> longestBeyond(PlanRequest request, double floorThousandKm) {
        var numbers = new SetNumbers(request);
        return numbers.spent()
                ? Optional.empty()
                : new PlanSearch(numbers, Double.POSITIVE_INFINITY)
                        .longestBeyond(floorThousandKm)
                        .filter(longest -> longest > floorThousandKm);
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
                .map(assignment -> new Sequence(
                        List.of(assignment),
                        new Sequence.Bests(0, SetNumbers.spread(least), List.of(assignment), List.of(assignment)),
                        0,
                        SetNumbers.spread(least),
                        numbers.firstMoves[assignment]));
    }

    private Optional<Sequence> best() {
        if (numbers.allowed.length == 0) {
            return Optional.empty();
        }
        if (!numbers.rulesOnDepth()) {
            return longest().map(this::evenWithFewestMoves);
        }
        if (RunWithinRules.seasons(numbers) < numbers.seasons) {
            return Optional.empty();
        }
        return byTurns(0, this::evenWithFewestMoves, ForwardSearch::choose);
    }

    /**
     * What the first of both searches that ends makes of it: nothing says beforehand whether fewer endings would have to be
     * put in order in vain or fewer states driven to, so they take turns, each with a limit that grows.
     */
    private <T> Optional<T> byTurns(
            double floorThousandKm, Function<Ending, T> ofEnding, Function<ForwardSearch, Optional<T>> ofDriving) {
        double bound = Math.min(boundWithoutDepths(), knownBoundThousandKm);
        if (bound <= floorThousandKm) {
            return Optional.empty();
        }
        var inOrder = new LongestInOrder(numbers, bySeason, orders, bound, floorThousandKm);
        var driving = new ForwardTurns(numbers, floorThousandKm);
        for (int limit = 1; ; limit *= TURN_GROWTH) {
            var longest = inOrder.within(limit);
            if (longest.isPresent() || inOrder.isExhausted()) {
                return longest.map(ofEnding);
            }
            var driven = driving.within(limit);
            if (driven.isPresent()) {
                return ofDriving.apply(driven.get());
            }
        }
    }

    private Optional<Double> longestBeyond(double floorThousandKm) {
        if (!numbers.rulesOnDepth()) {
            return longest().map(ending -> ending.thousandKm);
        }
        return byTurns(floorThousandKm, ending -> ending.thousandKm, driven -> Optional.of(driven.longestThousandKm()));
    }

    /** The longest ending, whether or not the rules on depth let it be run. */
    private Optional<Ending> longest() {
        double bound = bound();
        double gap = FIRST_GAP * bound;
        for (double target = bound; target > 0; gap *= GAP_GROWTH) {
            target = Math.max(0, bound - gap);
            var longest = longest(new Window(target, Double.POSITIVE_INFINITY, Integer.MAX_VALUE));
            if (longest.isPresent()) {
                return longest;
            }
        }
        return Optional.empty();
    }

    /** No ending is longer, whether or not the rules on depth let it be run: the longest, or what few steps show. */
    private double boundWithoutDepths() {
        double bound = bound();
        double searched = bound;
        double gap = FIRST_GAP * bound;
        for (double target = bound; target > 0; gap *= GAP_GROWTH) {
            target = Math.max(0, bound - gap);
            var window = new Window(target, Double.POSITIVE_INFINITY, Integer.MAX_VALUE);
            window.stepsLeft = STEPS_FOR_BOUND;
            var longest = longest(window);
            if (window.stepsLeft < 0) {
                return searched;
            }
            if (longest.isPresent()) {
                return longest.get().thousandKm;
            }
            searched = target;
        }
        return 0;
    }

    private Optional<Ending> longest(Window window) {
        var found = new ArrayDeque<Ending>();
        visit(window, ending -> {
            found.push(ending);
            window.thousandKm = Math.nextUp(ending.thousandKm);
        });
        return Optional.ofNullable(found.peek());
    }

    private Sequence evenWithFewestMoves(Ending longest) {
        double enough = longest.thousandKm - SAME_THOUSAND_KM;
        var found = new ArrayDeque<>(List.of(longest));
        var even = new Window(enough, longest.spreadMm, Integer.MAX_VALUE).fittedWithin(numbers);
        visit(even, ending -> {
            if (ending.spreadMm < even.spreadMm && canBeOrdered(ending)) {
                found.push(ending);
                even.spreadMm = ending.spreadMm;
            }
        });
        var mostEven = found.element();
        var few = new Window(enough, even.spreadMm + SAME_SPREAD_MM, moves(mostEven, Integer.MAX_VALUE))
                .fittedWithin(numbers);
        visit(few, ending -> {
            int moves = moves(ending, few.moves - 1);
            if (moves < few.moves) {
                found.push(ending);
                few.moves = moves;
            }
        });
        var chosen = found.element();
        return new Sequence(
                order(chosen),
                new Sequence.Bests(longest.thousandKm, even.spreadMm, order(longest), order(mostEven)),
                chosen.thousandKm,
                chosen.spreadMm,
                few.moves);
    }

    private void visit(Window window, Consumer<Ending> visitor) {
        for (var search : bySeason.reversed()) {
            search.visit(window, visitor);
        }
    }

    private List<Integer> order(Ending ending) {
        return Arrays.stream(orders.get(ending.season).order(ending)).boxed().toList();
    }

    private int moves(Ending ending, int most) {
        return orders.get(ending.season).fewestMoves(ending, most);
    }

    /** No plan gets farther: each wheel on its own picks its corners, and no set outlives its weighed average. */
    private double bound() {
        double bound = weighing.boundThousandKm();
        for (int i = 0; i < numbers.wheels; i++) {
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
     * @param bests of all sequences, each of which it may miss by what counts as the same
     * @param thousandKm until the first groove reaches its limit
     * @param spreadMm of the wheels' least grooves then
     */
    record Sequence(List<Integer> assignments, Bests bests, double thousandKm, double spreadMm, int moves) {
        /**
         * The longest distance, and the smallest spread of those that count as as long.
         *
         * @param longest a sequence with the distance
         * @param mostEven a sequence with the spread
         */
        record Bests(double thousandKm, double spreadMm, List<Integer> longest, List<Integer> mostEven) {}

        /** Whether it keeps the rules of another request, and so do sequences that show both bests. */
        boolean isBestWithin(PlanRequest request) {
            var numbers = new SetNumbers(request);
            boolean isLongest = thousandKm == bests.thousandKm;
            boolean isMostEven = spreadMm == bests.spreadMm;
            return Stream.of(
                            assignments,
                            isLongest ? assignments : bests.longest,
                            isMostEven ? assignments : bests.mostEven)
                    .distinct()
                    .allMatch(sequence -> SequenceDrive.of(numbers, sequence).keepsRules());
        }
    }
}
