package cornerbook.core.wheelplan.search;

/**
 * Whether a set before its last season but one can still reach a distance in the last: under any two assignments that the
 * rules on depth let be fitted one after the other. That tells without driving either season.
 */
final class LastTwoSeasons {
    private final SetNumbers numbers;
    private final int season;
    /** By wheel and place in the season: its least groove after it, and the places where it would then reach the distance, as bits. */
    private final double[][] leastAfterMm;

    private final int[][] thenAt;
    private final double[] least;

    LastTwoSeasons(SetNumbers numbers) {
        this.numbers = numbers;
        season = numbers.seasons - 2;
        leastAfterMm = new double[numbers.wheels][numbers.wheels];
        thenAt = new int[numbers.wheels][numbers.wheels];
        least = new double[numbers.wheels];
    }

    /** Of the two seasons, the first. */
    boolean isNext(int next) {
        return next == season;
    }

    /** True, too, where the distance is reached before the last season begins. */
    boolean mayReach(double thousandKm, double[][] depthMm) {
        double last = thousandKm - numbers.start[season + 1];
        if (last <= 0) {
            return true;
        }
        lookAhead(last, depthMm);
        double[] leastBefore = SetNumbers.least(depthMm);
        for (int assignment : numbers.allowed) {
            if (goesOn(assignment)
                    && numbers.mayFit(assignment, leastBefore)
                    && numbers.withinDifferences(assignment, least)
                    && mayEnd(assignment)) {
                return true;
            }
        }
        return false;
    }

    private void lookAhead(double last, double[][] depthMm) {
        for (int i = 0; i < numbers.wheels; i++) {
            for (int c = 0; c < numbers.wheels; c++) {
                double leastAfter = Double.POSITIVE_INFINITY;
                int then = (1 << numbers.wheels) - 1;
                for (int g = 0; g < numbers.grooves; g++) {
                    double worn = depthMm[i][g] - numbers.season[season] * numbers.rate[c][g];
                    leastAfter = Math.min(leastAfter, worn);
                    for (int place = 0; place < numbers.wheels; place++) {
                        boolean reaches = worn - last * numbers.rate[place][g] >= -SetNumbers.TOLERANCE_MM;
                        then &= reaches ? -1 : ~(1 << place);
                    }
                }
                leastAfterMm[i][c] = leastAfter;
                thenAt[i][c] = then;
            }
        }
    }

    /** Whether each wheel has somewhere to go after the season. */
    private boolean goesOn(int assignment) {
        for (int i = 0; i < numbers.wheels; i++) {
            int corner = Assignments.corner(assignment, i);
            if (thenAt[i][corner] == 0) {
                return false;
            }
            least[i] = leastAfterMm[i][corner];
        }
        return true;
    }

    private boolean mayEnd(int assignment) {
        for (int last : numbers.allowed) {
            boolean reaches = true;
            for (int i = 0; i < numbers.wheels && reaches; i++) {
                int then = thenAt[i][Assignments.corner(assignment, i)];
                reaches = (then >> Assignments.corner(last, i) & 1) == 1;
            }
            if (reaches && numbers.mayFit(last, least)) {
                return true;
            }
        }
        return false;
    }
}
