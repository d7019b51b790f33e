package cornerbook.core.wheelplan.search;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * The endings in one season that reach a distance T. The wear of the corners together does not depend on who runs
 * where, so for each groove g the depths left above the limit at T sum to
 *
 * <pre>  W_g(T) = Σ_i slack_ig − T Σ_c rate_cg,                                                        (1)</pre>
 *
 * and as none may be below 0, none may be above W_g(T) either; so it is with the shares of a {@link Weighing}. That leaves few
 * mixtures per wheel; these are joined wheel by wheel under what each corner class can take. Method in docs/methods/wheelplan.md.
 */
final class EndingSearch {
    static final double SUM_TOLERANCE_MM = 4 * SetNumbers.TOLERANCE_MM;

    private final SetNumbers numbers;
    private final int season;
    private final CountLayout layout;
    private final List<Mixture> mixtures;
    private final Weighing weighing;

    EndingSearch(SetNumbers numbers, int season, Weighing weighing) {
        this.numbers = numbers;
        this.weighing = weighing;
        this.season = season;
        layout = new CountLayout(numbers, season);
        mixtures = Mixture.all(numbers, layout, weighing);
    }

    CountLayout layout() {
        return layout;
    }

    /** Farthest that the wheel could get in this season if it had its pick of corners; negative when it never gets here. */
    double boundThousandKm(int wheel) {
        double best = -1;
        for (var mixture : mixtures) {
            for (int c = 0; c < numbers.classes; c++) {
                if (mayRun(wheel, mixture.classesUsed | 1 << c)) {
                    best = Math.max(best, numbers.start[season] + reach(wheel, mixture, c));
                }
            }
        }
        return isLast() ? best : Math.min(best, numbers.start[season] + numbers.season[season]);
    }

    /** Visits every ending in this season that is inside the window, which the visitor may narrow. */
    void visit(Window window, Consumer<Ending> visitor) {
        double target = Math.max(0, window.thousandKm - numbers.start[season]);
        if (!isLast() && target > numbers.season[season]) {
            return;
        }
        var left = new double[numbers.grooves];
        double fastest = 0;
        for (int g = 0; g < left.length; g++) {
            for (int i = 0; i < numbers.wheels; i++) {
                left[g] += numbers.slackMm[i][g] - (numbers.start[season] + target) * numbers.rate[i][g];
                fastest = Math.max(fastest, numbers.rate[i][g]);
            }
            if (left[g] < -SUM_TOLERANCE_MM) {
                return;
            }
        }
        double share = weighing.left(numbers.start[season] + target);
        if (share < -SUM_TOLERANCE_MM) {
            return;
        }
        var options = new ArrayList<List<WheelOption>>();
        for (int i = 0; i < numbers.wheels; i++) {
            var ofWheel = options(i, target, left, share);
            if (ofWheel.isEmpty()) {
                return;
            }
            options.add(ofWheel);
        }
        new EndingJoin(
                        numbers,
                        layout,
                        options,
                        left,
                        share,
                        window,
                        2 * PlanSearch.SAME_THOUSAND_KM * fastest,
                        visitor)
                .run();
    }

    private boolean isLast() {
        return season == numbers.seasons - 1;
    }

    private boolean mayRun(int wheel, int classes) {
        return (classes & ~numbers.classesFor[wheel]) == 0;
    }

    /** Distance into the season until the wheel's first groove reaches its limit; negative when it did before. */
    private double reach(int wheel, Mixture mixture, int lastClass) {
        double reach = Double.POSITIVE_INFINITY;
        for (int g = 0; g < numbers.grooves; g++) {
            double depth = numbers.slackMm[wheel][g] - mixture.wearMm[g];
            reach = Math.min(reach, SetNumbers.reach(depth, numbers.classRate[lastClass][g]));
        }
        return reach;
    }

    private List<WheelOption> options(int wheel, double target, double[] left, double leftShare) {
        var options = new ArrayList<WheelOption>();
        for (var mixture : mixtures) {
            for (int c = 0; c < numbers.classes; c++) {
                int classes = mixture.classesUsed | 1 << c;
                double share = share(wheel, mixture, c, target);
                if (share <= leftShare + SUM_TOLERANCE_MM
                        && mayRun(wheel, classes)
                        && inReach(wheel, mixture, c, target, left)) {
                    var depth = new double[numbers.grooves];
                    for (int g = 0; g < depth.length; g++) {
                        depth[g] = numbers.slackMm[wheel][g] - mixture.wearMm[g] - target * numbers.classRate[c][g];
                    }
                    options.add(new WheelOption(
                            mixture.counts + layout.one(layout.groups(), c),
                            mixture,
                            c,
                            reach(wheel, mixture, c),
                            depth,
                            share,
                            numbers.frontOverRear(c, least(wheel, mixture)),
                            Integer.bitCount(classes | numbers.startClass[wheel]) - 1));
                }
            }
        }
        return options;
    }

    /** The wheel's least groove when its last season is fitted. */
    private double least(int wheel, Mixture mixture) {
        double least = Double.POSITIVE_INFINITY;
        for (int g = 0; g < numbers.grooves; g++) {
            least = Math.min(least, numbers.slackMm[wheel][g] - mixture.wearMm[g]);
        }
        return least;
    }

    /** The wheel's share at the distance aimed at. */
    private double share(int wheel, Mixture mixture, int lastClass, double target) {
        return weighing.slack[wheel]
                - (numbers.start[season] + target) * weighing.ofWheel[wheel]
                - mixture.weighed
                - target * weighing.ofClass[lastClass];
    }

    private boolean inReach(int wheel, Mixture mixture, int lastClass, double target, double[] left) {
        for (int g = 0; g < numbers.grooves; g++) {
            double depth = numbers.slackMm[wheel][g] - mixture.wearMm[g] - target * numbers.classRate[lastClass][g];
            if (depth < -SetNumbers.TOLERANCE_MM || depth > left[g] + SUM_TOLERANCE_MM) {
                return false;
            }
        }
        return true;
    }
}
