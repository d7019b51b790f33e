package cornerbook.core.wheelplan.search;

/** Which assignments the latest of some seasons may have had, given all that the wheels ran in them. */
final class LatestSeason {
    private final SetNumbers numbers;
    private final int group;
    private final double[] leastMm;
    /** Before the season, had the wheel run it in the class; NaN where it did not. */
    private final double[][] leastBeforeMm;

    private final double[] before;

    LatestSeason(SetNumbers numbers, CountLayout layout, int layer, Ran ran) {
        this.numbers = numbers;
        group = layout.groupOf(layer - 1);
        leastMm = new double[numbers.wheels];
        before = new double[numbers.wheels];
        leastBeforeMm = new double[numbers.wheels][numbers.classes];
        var depthMm = new double[numbers.grooves];
        for (int i = 0; i < numbers.wheels; i++) {
            long counts = ran.counts(i);
            layout.depthsMm(i, counts, layer, depthMm);
            leastMm[i] = least(depthMm, 0, depthMm);
            for (int c = 0; c < numbers.classes; c++) {
                leastBeforeMm[i][c] = layout.count(counts, layer, group, c) == 0
                        ? Double.NaN
                        : least(depthMm, layout.distance(group), numbers.classRate[c]);
            }
        }
    }

    private static double least(double[] depthMm, double distance, double[] rate) {
        double least = Double.POSITIVE_INFINITY;
        for (int g = 0; g < depthMm.length; g++) {
            least = Math.min(least, depthMm[g] + distance * rate[g]);
        }
        return least;
    }

    /** The group of seasons that it belongs to. */
    int group() {
        return group;
    }

    /** Whether it was run so by what the wheels ran, and within the rules when fitted and at its end. */
    boolean keepsRules(int assignment) {
        for (int i = 0; i < numbers.wheels; i++) {
            before[i] = leastBeforeMm[i][numbers.classOf[Assignments.corner(assignment, i)]];
            if (Double.isNaN(before[i])) {
                return false;
            }
        }
        return numbers.withinDifferences(assignment, leastMm) && numbers.mayFit(assignment, before);
    }
}
