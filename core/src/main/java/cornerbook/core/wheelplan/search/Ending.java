package cornerbook.core.wheelplan.search;

/**
 * Where four wheels may have run by the season in which the set reaches its limit: what each did before it and the corner
 * class that each then runs in. The order of the seasons is left open; distance and spread do not depend on it.
 */
final class Ending {
    /** Season in which the set reaches its limit, or the last one. */
    final int season;

    final double thousandKm;
    final double spreadMm;
    private final SetNumbers numbers;
    private final WheelOption[] options;
    private final double intoSeason;

    Ending(SetNumbers numbers, int season, WheelOption[] options, double intoSeason) {
        this.numbers = numbers;
        this.season = season;
        this.options = options.clone();
        this.intoSeason = intoSeason;
        thousandKm = numbers.start[season] + intoSeason;
        spreadMm = SetNumbers.spread(leastMm(intoSeason));
    }

    long counts(int wheel) {
        return options[wheel].mixture.counts;
    }

    /** No order of its seasons has fewer moves. */
    int leastMoves() {
        int moves = 0;
        for (var option : options) {
            moves += option.leastMoves;
        }
        return moves;
    }

    /** Whether the last season's assignment puts each wheel into its class. */
    boolean endsWith(int assignment) {
        for (int i = 0; i < options.length; i++) {
            if (numbers.classOf[Assignments.corner(assignment, i)] != options[i].lastClass) {
                return false;
            }
        }
        return true;
    }

    /** Whether the last season may run under this assignment: when fitted, and at its end or at the limit. */
    boolean keepsRules(int assignment) {
        return numbers.mayFit(assignment, leastMm(0))
                && numbers.withinDifferences(assignment, leastMm(Math.min(intoSeason, numbers.season[season])));
    }

    private double[] leastMm(double into) {
        var least = new double[options.length];
        for (int i = 0; i < least.length; i++) {
            least[i] = Double.POSITIVE_INFINITY;
            for (int g = 0; g < numbers.grooves; g++) {
                least[i] = Math.min(
                        least[i],
                        numbers.slackMm[i][g]
                                - options[i].mixture.wearMm[g]
                                - into * numbers.classRate[options[i].lastClass][g]);
            }
        }
        return least;
    }
}
