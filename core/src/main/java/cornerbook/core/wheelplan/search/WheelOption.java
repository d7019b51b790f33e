package cornerbook.core.wheelplan.search;

/** One way for a wheel to run until the set's last season and in it. */
final class WheelOption {
    /** The mixture's counts with the last season's. */
    final long counts;

    final Mixture mixture;
    final int lastClass;
    /** Distance into the last season until the wheel's first groove reaches its limit, thousand km. */
    final double reach;
    /** Depth above the limit by groove at the distance aimed at, and the least of it, mm. */
    final double[] depthMm;

    final double leastMm;
    /** Of the four wheels' weighed depth there, thousand km. */
    final double share;
    /** What it counts for the front wheels being deeper than the rear ones when the last season is fitted, or less; mm. */
    final double frontOverRearMm;
    /** No order of its seasons has fewer moves of this wheel. */
    final int leastMoves;

    WheelOption(
            long counts,
            Mixture mixture,
            int lastClass,
            double reach,
            double[] depthMm,
            double share,
            double frontOverRearMm,
            int leastMoves) {
        this.counts = counts;
        this.mixture = mixture;
        this.lastClass = lastClass;
        this.reach = reach;
        this.depthMm = depthMm;
        this.share = share;
        this.frontOverRearMm = frontOverRearMm;
        this.leastMoves = leastMoves;
        double least = Double.POSITIVE_INFINITY;
        for (double depth : depthMm) {
            least = Math.min(least, depth);
        }
        leastMm = least;
    }
}
