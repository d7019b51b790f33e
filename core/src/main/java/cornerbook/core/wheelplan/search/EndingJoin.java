package cornerbook.core.wheelplan.search;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/**
 * Takes one option per wheel so that each corner class gets what it can take: the wheel with the fewest options first,
 * and the last wheel takes what remains. A branch is cut as soon as it leaves the window.
 */
final class EndingJoin {
    private final SetNumbers numbers;
    private final CountLayout layout;
    private final int season;
    private final Window window;
    private final double spreadMarginMm;
    private final Consumer<Ending> visitor;
    private final WheelOption[][] options;
    private final int[] wheelAtStep;
    private final long[] lastWheelsCounts;
    private final WheelOption[] taken;
    private final double[][] leftMm;
    private final double[] leftShare;

    /**
     * A join over the options of each wheel, which are sorted by their counts.
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
        this.options = new WheelOption[numbers.wheels][];
        taken = new WheelOption[numbers.wheels];
        this.leftShare = new double[numbers.wheels];
        this.leftMm = new double[numbers.wheels][];
        this.leftMm[0] = leftMm;
        this.leftShare[0] = leftShare;
        wheelAtStep = IntStream.range(0, numbers.wheels)
                .boxed()
                .sorted(Comparator.comparingInt(
                        (Integer wheel) -> options.get(wheel).size()))
                .mapToInt(Integer::intValue)
                .toArray();
        int last = wheelAtStep[numbers.wheels - 1];
        lastWheelsCounts =
                options.get(last).stream().mapToLong(option -> option.counts).toArray();
        for (int i = 0; i < numbers.wheels; i++) {
            this.leftMm[i] = leftMm.clone();
            this.options[i] = options.get(i).toArray(WheelOption[]::new);
            if (i != last) {
                Arrays.sort(
                        this.options[i],
                        window.spreadMm == Double.POSITIVE_INFINITY
                                ? Comparator.comparingDouble(option -> -option.reach)
                                : Comparator.comparingDouble(option -> option.leastMm));
            }
        }
    }

    void run() {
        take(0, layout.capacity(), 0);
    }

    private void take(int step, long remaining, int moves) {
        int wheel = wheelAtStep[step];
        if (step == numbers.wheels - 1) {
            int found = Arrays.binarySearch(lastWheelsCounts, remaining);
            if (found >= 0 && inWindow(options[wheel][found], moves)) {
                taken[wheel] = options[wheel][found];
                end();
            }
            return;
        }
        for (var option : options[wheel]) {
            if (--window.stepsLeft < 0) {
                return;
            }
            if (layout.fits(option.counts, remaining) && inWindow(option, moves) && leaves(step, option)) {
                taken[wheel] = option;
                take(step + 1, remaining - option.counts, moves + option.leastMoves);
            }
        }
    }

    private boolean inWindow(WheelOption option, int moves) {
        return numbers.start[season] + option.reach >= window.thousandKm
                && option.leastMm <= window.spreadMm + spreadMarginMm
                && moves + option.leastMoves < window.moves;
    }

    private boolean leaves(int step, WheelOption option) {
        leftShare[step + 1] = leftShare[step] - option.share;
        boolean enough = leftShare[step + 1] >= -EndingSearch.SUM_TOLERANCE_MM;
        for (int g = 0; g < numbers.grooves && enough; g++) {
            leftMm[step + 1][g] = leftMm[step][g] - option.depthMm[g];
            enough = leftMm[step + 1][g] >= -EndingSearch.SUM_TOLERANCE_MM;
        }
        return enough;
    }

    private void end() {
        double reach = Double.POSITIVE_INFINITY;
        for (var option : taken) {
            reach = Math.min(reach, option.reach);
        }
        if (season == numbers.seasons - 1 || reach < numbers.season[season]) {
            var ending = new Ending(numbers, season, taken, reach);
            if (ending.spreadMm <= window.spreadMm) {
                visitor.accept(ending);
            }
        }
    }
}
