package cornerbook.core.wheelplan.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The longest ending that the rules on depth let be run: from the longest of all downwards in growing steps, those of a step
 * put in order longest first. Works in turns and goes on where the turn before came to its limit.
 */
final class LongestInOrder {
    /** Share of the distance that the first step goes down; any share finds the same ending. */
    private static final double FIRST_GAP = 1e-5;

    private static final double GAP_GROWTH = 1.3;
    /** What the first turn may try: options joined for a step, and endings put in order in vain. */
    private static final int JOINED = 10_000;

    private static final int IN_VAIN = 100;

    private final SetNumbers numbers;
    private final List<EndingSearch> bySeason;
    private final List<SeasonOrder> orders;
    private final double longestThousandKm;
    private final double floorThousandKm;
    private double gap;
    /** No ending from here on can be run, apart from those of the step that are not tried yet. */
    private double searchedThousandKm = Double.POSITIVE_INFINITY;

    private List<Ending> step = List.of();
    private int tried;

    /**
     * A search among the endings from the longest of all down to a floor.
     *
     * @param longestThousandKm of all endings, whether or not they can be run
     * @param floorThousandKm what is no longer than that is of no interest; 0 for any
     */
    LongestInOrder(
            SetNumbers numbers,
            List<EndingSearch> bySeason,
            List<SeasonOrder> orders,
            double longestThousandKm,
            double floorThousandKm) {
        this.numbers = numbers;
        this.bySeason = bySeason;
        this.orders = orders;
        this.longestThousandKm = longestThousandKm;
        this.floorThousandKm = floorThousandKm;
        gap = FIRST_GAP * longestThousandKm;
    }

    /** The ending; empty when more than {@code limit} times what the first turn may would have to be looked at. */
    Optional<Ending> within(int limit) {
        for (int left = IN_VAIN * limit; left > 0; ) {
            for (; tried < step.size() && left > 0; tried++, left--) {
                var ending = step.get(tried);
                if (orders.get(ending.season).canBeRun(ending)) {
                    return Optional.of(ending);
                }
            }
            if (tried == step.size() && (isExhausted() || !nextStep((long) JOINED * limit))) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** Whether nothing above the floor can be run. */
    boolean isExhausted() {
        return tried == step.size() && searchedThousandKm <= floorThousandKm;
    }

    /** Whether the endings of the next step are few enough. */
    private boolean nextStep(long most) {
        double target = Math.max(floorThousandKm, longestThousandKm - gap);
        var window = new Window(target, Double.POSITIVE_INFINITY, Integer.MAX_VALUE).fittedWithin(numbers);
        window.belowThousandKm = searchedThousandKm;
        var found = new ArrayList<Ending>();
        window.stepsLeft = most;
        for (var search : bySeason.reversed()) {
            search.visit(window, ending -> {
                if (orders.get(ending.season).lastMayBeRun(ending)) {
                    found.add(ending);
                }
            });
        }
        if (window.stepsLeft < 0) {
            return false;
        }
        found.sort(Comparator.comparingDouble(ending -> -ending.thousandKm));
        step = found;
        tried = 0;
        searchedThousandKm = target;
        gap *= GAP_GROWTH;
        return true;
    }
}
