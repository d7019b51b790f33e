package cornerbook.core.wheelplan.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;

/**
 * Takes one option per wheel so that each corner class gets what it can take: the wheels with the fewest options one by one,
 * then the two with the most. A branch is cut as soon as it leaves the window. Where few branches are left for the last two,
 * one of them is gone through and the other looked up; where many are, the pairs of the two are made once and looked up.
 */
final class EndingJoin {
    private final SetNumbers numbers;
    private final CountLayout layout;
    private final int season;
    private final Window window;
    private final double spreadMarginMm;
    private final Consumer<Ending> visitor;
    /** The wheels from that with the fewest options to that with the most. */
    private final int[] wheelAtStep;

    private final WheelOption[][] options;
    /** Of the options, beside each other: most are passed over for what they ran alone. */
    private final long[][] counts;

    private final int paired;
    private final WheelOption[] taken;
    private final double[][] leftMm;
    private final double[] leftShare;
    private final List<Branch> branches = new ArrayList<>();

    /**
     * A join over the options of each wheel.
     *
     * @param leftMm depth above the limit that the wheels have together at the distance aimed at, by groove
     * @param leftShare the same weighed
     * @param spreadMarginMm how much a wheel may still wear between there and the ending
     */
    EndingJoin(
            SetNumbers numbers,
            CountLayout layout,
            List<List<WheelOption>> options,
            double[] leftMm,
            double leftShare,
            Window window,
            double spreadMarginMm,
            Consumer<Ending> visitor) {
        this.numbers = numbers;
        this.layout = layout;
        this.season = layout.wholeSeasons();
        this.window = window;
        this.spreadMarginMm = spreadMarginMm;
        this.visitor = visitor;
        paired = numbers.wheels - 2;
        this.options = new WheelOption[numbers.wheels][];
        wheelAtStep = bySize(options);
        counts = new long[numbers.wheels][];
        taken = new WheelOption[numbers.wheels];
        this.leftShare = new double[numbers.wheels];
        this.leftMm = new double[numbers.wheels][];
        this.leftShare[0] = leftShare;
        for (int step = 0; step < numbers.wheels; step++) {
            this.leftMm[step] = leftMm.clone();
            this.options[step] = options.get(wheelAtStep[step]).toArray(WheelOption[]::new);
            Arrays.sort(
                    this.options[step],
                    step > paired
                            ? Comparator.comparingLong(option -> option.counts)
                            : window.spreadMm == Double.POSITIVE_INFINITY
                                    ? Comparator.comparingDouble(option -> -option.reach)
                                    : Comparator.comparingDouble(option -> option.leastMm));
            counts[step] = Arrays.stream(this.options[step])
                    .mapToLong(option -> option.counts)
                    .toArray();
        }
    }

    private static int[] bySize(List<List<WheelOption>> options) {
        var wheels = new ArrayList<Integer>();
        for (int i = 0; i < options.size(); i++) {
            wheels.add(i);
        }
        wheels.sort(Comparator.comparingInt(wheel -> options.get(wheel).size()));
        return wheels.stream().mapToInt(Integer::intValue).toArray();
    }

    void run() {
        branch(0, layout.capacity(), 0, 0);
        if (branches.size() > 2 * options[paired + 1].length) {
            joinPairs();
        } else {
            branches.forEach(this::joinOneByOne);
        }
    }

    private void branch(int step, long remaining, int moves, double frontOverRear) {
        if (step == paired) {
            branches.add(new Branch(List.of(Arrays.copyOf(taken, paired)), remaining, moves, frontOverRear));
            return;
        }
        long[] ran = counts[step];
        if ((window.stepsLeft -= ran.length) < 0) {
            return;
        }
        for (int k = 0; k < ran.length; k++) {
            var option = options[step][k];
            if (layout.fits(ran[k], remaining) && inWindow(option, moves) && leaves(step, option)) {
                taken[step] = option;
                branch(
                        step + 1,
                        remaining - option.counts,
                        moves + option.leastMoves,
                        frontOverRear + option.frontOverRearMm);
            }
        }
    }

    private void joinOneByOne(Branch branch) {
        long[] ran = counts[paired];
        if ((window.stepsLeft -= ran.length) < 0) {
            return;
        }
        take(branch);
        for (int k = 0; k < ran.length; k++) {
            var option = options[paired][k];
            if (layout.fits(ran[k], branch.remaining) && inWindow(option, branch.moves) && leaves(paired, option)) {
                int found = Arrays.binarySearch(counts[paired + 1], branch.remaining - ran[k]);
                if (found >= 0) {
                    end(branch, option, options[paired + 1][found]);
                }
            }
        }
    }

    private void joinPairs() {
        var pairs = new OptionPairs();
        for (int of = 0; of < options[paired].length; of++) {
            var one = options[paired][of];
            if (!layout.fits(one.counts, layout.capacity()) || !inWindow(one, 0)) {
                continue;
            }
            leave(0, one);
            long[] ran = counts[paired + 1];
            if ((window.stepsLeft -= ran.length) < 0) {
                return;
            }
            long remaining = layout.capacity() - one.counts;
            for (int k = 0; k < ran.length; k++) {
                var other = options[paired + 1][k];
                if (layout.fits(ran[k], remaining) && inWindow(other, one.leastMoves) && leaves(1, other)) {
                    pairs.add(of, k, one.counts + ran[k]);
                }
            }
        }
        for (var branch : branches) {
            take(branch);
            for (int pair = pairs.first(branch.remaining); pair >= 0; pair = pairs.next(pair, branch.remaining)) {
                if (--window.stepsLeft < 0) {
                    return;
                }
                end(branch, options[paired][pairs.one(pair)], options[paired + 1][pairs.other(pair)]);
            }
        }
    }

    private void take(Branch branch) {
        for (int step = 0; step < paired; step++) {
            taken[step] = branch.taken.get(step);
            leave(step, taken[step]);
        }
    }

    private boolean inWindow(WheelOption option, int moves) {
        return numbers.start[season] + option.reach >= window.thousandKm
                && option.leastMm <= window.spreadMm + spreadMarginMm
                && moves + option.leastMoves < window.moves;
    }

    private boolean leaves(int step, WheelOption option) {
        leave(step, option);
        if (leftShare[step + 1] < -EndingSearch.SUM_TOLERANCE_MM) {
            return false;
        }
        for (double left : leftMm[step + 1]) {
            if (left < -EndingSearch.SUM_TOLERANCE_MM) {
                return false;
            }
        }
        return true;
    }

    private void leave(int step, WheelOption option) {
        leftShare[step + 1] = leftShare[step] - option.share;
        for (int g = 0; g < numbers.grooves; g++) {
            leftMm[step + 1][g] = leftMm[step][g] - option.depthMm[g];
        }
    }

    private void end(Branch branch, WheelOption one, WheelOption other) {
        int moves = branch.moves + one.leastMoves;
        if (!inWindow(one, branch.moves)
                || !inWindow(other, moves)
                || branch.frontOverRearMm + one.frontOverRearMm + other.frontOverRearMm > window.frontOverRearMm) {
            return;
        }
        double reach = Math.min(one.reach, other.reach);
        for (var option : branch.taken) {
            reach = Math.min(reach, option.reach);
        }
        double thousandKm = numbers.start[season] + reach;
        boolean here = season == numbers.seasons - 1 || reach < numbers.season[season];
        if (!here || thousandKm < window.thousandKm || thousandKm >= window.belowThousandKm) {
            return;
        }
        taken[paired] = one;
        taken[paired + 1] = other;
        var ofWheel = new WheelOption[numbers.wheels];
        for (int step = 0; step < numbers.wheels; step++) {
            ofWheel[wheelAtStep[step]] = taken[step];
        }
        var ending = new Ending(numbers, season, ofWheel, reach);
        if (ending.spreadMm <= window.spreadMm) {
            visitor.accept(ending);
        }
    }

    /** One option for each wheel but the last two, and what is left for those. */
    private record Branch(List<WheelOption> taken, long remaining, int moves, double frontOverRearMm) {}
}
