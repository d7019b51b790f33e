package cornerbook.bench.wear;

import cornerbook.bench.wear.FleetSideBySide.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.tread.CornerDistances;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/** Posterior and horizon as one would write them with a matrix library: normal equations, Cholesky, Brent's root. */
final class MatrixLibrary {
    private static final int UNKNOWNS = 8;
    private static final double[] NODES = {-2.857, -1.3556, 0, 1.3556, 2.857};
    private static final double[] WEIGHTS = {0.011257, 0.222076, 0.533333, 0.222076, 0.011257};
    private static final NormalDistribution NORMAL = new NormalDistribution();
    /** The season to come. */
    private static final int AHEAD = 99;

    private static final double GAUGE_MM = 0.15;
    private static final double NEW_MM = 0.30;
    private static final double RATE = 0.20;

    private final RealMatrix prior = new Array2DRowRealMatrix(UNKNOWNS, UNKNOWNS);
    private final RealVector priorMean = new ArrayRealVector(UNKNOWNS);

    MatrixLibrary() {
        var rates = new Array2DRowRealMatrix(4, 4);
        for (int c = 0; c < 4; c++) {
            prior.setEntry(c, c, 1 / (NEW_MM * NEW_MM));
            priorMean.setEntry(c, 8);
            priorMean.setEntry(4 + c, RATE);
            for (int k = 0; k < 4; k++) {
                rates.setEntry(c, k, RATE * RATE * (0.09 + (c == k ? 0.0225 : 0)));
            }
        }
        prior.setSubMatrix(MatrixUtils.inverse(rates).getData(), 4, 4);
    }

    private record Posterior(RealVector mean, RealMatrix covariance) {}

    double run(List<WheelSet> sets, int vehicles) {
        return FleetSideBySide.perSecond(
                vehicles, vehicle -> horizon(sets.get(2 * vehicle)) + horizon(sets.get(2 * vehicle + 1)));
    }

    private static RealVector design(int tyre, CornerDistances run) {
        var row = new ArrayRealVector(UNKNOWNS);
        row.setEntry(tyre, 1);
        for (var corner : Corner.values()) {
            row.setEntry(4 + corner.ordinal(), -run.at(corner));
        }
        return row;
    }

    private Posterior posterior(WheelSet set, Spot groove) {
        var readings = set.readings().stream()
                .filter(reading -> reading.groove() == groove)
                .toList();
        var x = new Array2DRowRealMatrix(readings.size(), UNKNOWNS);
        var y = new ArrayRealVector(readings.size());
        for (int i = 0; i < readings.size(); i++) {
            x.setRowVector(i, design(readings.get(i).tyre(), readings.get(i).run()));
            y.setEntry(i, readings.get(i).depthMm());
        }
        double weight = 1 / (GAUGE_MM * GAUGE_MM);
        var precision = prior.add(x.transpose().multiply(x).scalarMultiply(weight));
        var right = prior.operate(priorMean).add(x.preMultiply(y).mapMultiply(weight));
        var solver = new CholeskyDecomposition(precision, 1e-9, 1e-12).getSolver();
        return new Posterior(solver.solve(right), solver.getInverse());
    }

    private double horizon(WheelSet set) {
        var posteriors = new ArrayList<Posterior>();
        for (var groove : Spot.values()) {
            posteriors.add(posterior(set, groove));
        }
        if (holds(set, posteriors, 0) < FleetSideBySide.CONFIDENCE) {
            return 0;
        }
        if (holds(set, posteriors, FleetSideBySide.MOST_DAYS) > FleetSideBySide.CONFIDENCE) {
            return FleetSideBySide.MOST_DAYS;
        }
        return new BrentSolver(0.25)
                .solve(
                        100,
                        days -> holds(set, posteriors, days) - FleetSideBySide.CONFIDENCE,
                        0,
                        FleetSideBySide.MOST_DAYS);
    }

    private static double holds(WheelSet set, List<Posterior> posteriors, double days) {
        double probability = 0;
        for (int node = 0; node < NODES.length; node++) {
            double kmPerDay = FleetSideBySide.DISTANCE.meanKm() + NODES[node] * FleetSideBySide.DISTANCE.sdKm();
            double thousandKm = Math.max(0, kmPerDay) * days / 1000;
            double all = WEIGHTS[node];
            for (var placement : set.placements()) {
                var weights = design(placement.tyre(), placement.run().plus(AHEAD, placement.corner(), thousandKm));
                for (var posterior : posteriors) {
                    double margin = weights.dotProduct(posterior.mean()) - FleetSideBySide.LIMIT_MM;
                    double variance = weights.dotProduct(posterior.covariance().operate(weights));
                    all *= NORMAL.cumulativeProbability(margin / Math.sqrt(variance));
                }
            }
            probability += all;
        }
        return probability;
    }
}
