package cornerbook.core.wheelplan.search;

/**
 * The tightest bound on the distance that mixtures of assignments can reach, were a season divisible. With weights λ_ig ≥ 0 of
 * the depths, each thousand km costs at least
 *
 * <pre>  A = min over assignments of Σ_i λ_i·rate at i's corner = Σ_i u_i + Σ_c w_c,   u_i + w_c ≤ λ_i·rate_c,          (3)</pre>
 *
 * so that no set gets beyond Σ λ_ig slack_ig / A. The λ that make it least are the dual of a linear program (strong duality;
 * the u and w are those of the assignment problem). At a distance T a wheel that ran x_c at each corner class has a share of
 * Σ_g λ_ig slack_ig − T u_i − Σ_c x_c w_c, never below 0 while it is whole, and the shares sum to Σ λ slack − T A
 * whatever was run: equation (1) with the grooves weighed. Any λ give a true bound; rounding only loosens it.
 */
final class Weighing {
    private static final double ZERO = 1e-10;
    /** The program is solved in some twenty steps; should it ever turn in a circle, the weights so far are as true. */
    private static final int MOST_STEPS = 200;

    /** Weighed depth above the limit by wheel, thousand km. */
    final double[] slack;
    /** What a thousand km costs by wheel and by corner class. */
    final double[] ofWheel;

    final double[] ofClass;
    private final SetNumbers numbers;
    private double[][] weights = {};

    /** For a set that is not spent. */
    Weighing(SetNumbers numbers) {
        this.numbers = numbers;
        slack = new double[numbers.wheels];
        ofWheel = new double[numbers.wheels];
        ofClass = new double[numbers.wheels];
        if (numbers.allowed.length > 0) {
            weights = weights();
            weigh();
        }
    }

    /** No sequence gets farther, thousand km. */
    double boundThousandKm() {
        return sum(slack) / perThousandKm();
    }

    /** What the shares sum to at a distance. */
    double left(double thousandKm) {
        return sum(slack) - thousandKm * perThousandKm();
    }

    /** Depths weighed, all wheels' together, thousand km. */
    double weighed(double[][] depthMm) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            for (int g = 0; g < numbers.grooves; g++) {
                sum += weights[i][g] * depthMm[i][g];
            }
        }
        return sum;
    }

    private double perThousandKm() {
        double sum = sum(ofWheel);
        for (int c = 0; c < numbers.wheels; c++) {
            sum += ofClass[numbers.classOf[c]];
        }
        return sum;
    }

    private void weigh() {
        var cost = new double[numbers.wheels][numbers.wheels];
        for (int i = 0; i < numbers.wheels; i++) {
            for (int g = 0; g < numbers.grooves; g++) {
                slack[i] += weights[i][g] * numbers.slackMm[i][g];
                for (int c = 0; c < numbers.wheels; c++) {
                    cost[i][c] += weights[i][g] * numbers.rate[c][g];
                }
            }
        }
        int cheapest = cheapest(cost);
        var ofCorner = new double[numbers.wheels];
        for (int round = 0; round < numbers.wheels; round++) {
            for (int i = 0; i < numbers.wheels; i++) {
                int stands = Assignments.corner(cheapest, i);
                for (int c = 0; c < numbers.wheels; c++) {
                    if ((numbers.classesFor[i] >> numbers.classOf[c] & 1) == 1) {
                        ofCorner[c] = Math.min(ofCorner[c], ofCorner[stands] + cost[i][c] - cost[i][stands]);
                    }
                }
            }
        }
        for (int i = 0; i < numbers.wheels; i++) {
            int stands = Assignments.corner(cheapest, i);
            ofWheel[i] = cost[i][stands] - ofCorner[stands];
            ofClass[numbers.classOf[i]] = ofCorner[i];
        }
    }

    private int cheapest(double[][] cost) {
        int cheapest = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int assignment : numbers.allowed) {
            double sum = 0;
            for (int i = 0; i < numbers.wheels; i++) {
                sum += cost[i][Assignments.corner(assignment, i)];
            }
            if (sum < least) {
                least = sum;
                cheapest = assignment;
            }
        }
        return cheapest;
    }

    /**
     * The greatest Σ z_p such that Σ_p z_p rate/slack ≤ 1 for each wheel and groove, by the simplex method from z = 0; its dual
     * are the weights (Dantzig 1963, Linear Programming and Extensions).
     */
    private double[][] weights() {
        int columns = numbers.allowed.length;
        int rows = numbers.wheels * numbers.grooves;
        var table = new double[rows + 1][columns + rows + 1];
        for (int row = 0; row < rows; row++) {
            int wheel = row / numbers.grooves;
            int groove = row % numbers.grooves;
            for (int p = 0; p < columns; p++) {
                table[row][p] = numbers.rate[Assignments.corner(numbers.allowed[p], wheel)][groove]
                        / numbers.slackMm[wheel][groove];
            }
            table[row][columns + row] = 1;
            table[row][columns + rows] = 1;
        }
        for (int p = 0; p < columns; p++) {
            table[rows][p] = -1;
        }
        for (int step = 0; step < MOST_STEPS && improve(table, columns + rows); ) {
            step++;
        }
        var weights = new double[numbers.wheels][numbers.grooves];
        for (int row = 0; row < rows; row++) {
            int wheel = row / numbers.grooves;
            int groove = row % numbers.grooves;
            weights[wheel][groove] = Math.max(0, table[rows][columns + row]) / numbers.slackMm[wheel][groove];
        }
        return weights;
    }

    /** One step of the simplex method; whether there was one to take. */
    private static boolean improve(double[][] table, int last) {
        int rows = table.length - 1;
        int enters = 0;
        for (int column = 1; column < last; column++) {
            enters = table[rows][column] < table[rows][enters] ? column : enters;
        }
        if (table[rows][enters] > -ZERO) {
            return false;
        }
        int leaves = -1;
        for (int row = 0; row < rows; row++) {
            if (table[row][enters] > ZERO
                    && (leaves < 0
                            || table[row][last] / table[row][enters] < table[leaves][last] / table[leaves][enters])) {
                leaves = row;
            }
        }
        double pivot = table[leaves][enters];
        for (int column = 0; column <= last; column++) {
            table[leaves][column] /= pivot;
        }
        for (int row = 0; row <= rows; row++) {
            double factor = row == leaves ? 0 : table[row][enters];
            for (int column = 0; factor != 0 && column <= last; column++) {
                table[row][column] -= factor * table[leaves][column];
            }
        }
        return true;
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }
}
