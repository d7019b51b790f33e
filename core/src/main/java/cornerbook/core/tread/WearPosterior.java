package cornerbook.core.tread;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.numeric.Estimate;
import java.util.List;

/**
 * What is known about a set's depths and the car's wear rates after all readings; exact under the corner-rate model, but
 * where a rate had to be held above 0.
 */
public final class WearPosterior {
    private static final int CORNERS = Corner.values().length;

    private final int tyres;
    private final List<GaussianPosterior> grooves;

    WearPosterior(int tyres, List<GaussianPosterior> grooves) {
        this.tyres = tyres;
        this.grooves = List.copyOf(grooves);
    }

    /** Depth of a tyre when it was new to the book, mm. */
    public Estimate newDepth(Spot groove, int tyre) {
        var posterior = groove(groove);
        return new Estimate(posterior.mean(tyre), Math.sqrt(posterior.covariance(tyre, tyre)));
    }

    /** Wear rate of a corner, mm per 1000 km; its mean is above 0. */
    public Estimate rate(Spot groove, Corner corner) {
        var posterior = groove(groove);
        int unknown = tyres + corner.ordinal();
        return new Estimate(posterior.mean(unknown), Math.sqrt(posterior.covariance(unknown, unknown)));
    }

    /** Covariance of the rates of two corners, (mm per 1000 km)². */
    public double rateCovariance(Spot groove, Corner one, Corner other) {
        return groove(groove).covariance(tyres + one.ordinal(), tyres + other.ordinal());
    }

    /** Depth of a tyre that has run {@code run}, mm; below 0 where it is worn out and would have run on. */
    public Estimate depth(Spot groove, int tyre, CornerDistances run) {
        var weights = new double[tyres + CORNERS];
        weigh(tyre, run, weights);
        return new Estimate(mean(groove(groove), weights), Math.sqrt(covariance(groove(groove), weights, weights)));
    }

    /** The set as it will run from now: each tyre at its corner. */
    public SetOutlook outlook(List<Placement> placements) {
        return new SetOutlook(this, placements);
    }

    GaussianPosterior groove(Spot groove) {
        return grooves.get(groove.ordinal());
    }

    int tyres() {
        return tyres;
    }

    /** Weights of the unknowns in the depth of a tyre. */
    void weigh(int tyre, CornerDistances run, double[] weights) {
        weights[tyre] = 1;
        weights[tyres] = -run.leftFront();
        weights[tyres + 1] = -run.rightFront();
        weights[tyres + 2] = -run.leftRear();
        weights[tyres + 3] = -run.rightRear();
    }

    double mean(GaussianPosterior posterior, double[] weights) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * posterior.mean(i);
        }
        return sum;
    }

    double covariance(GaussianPosterior posterior, double[] weights, double[] others) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            if (weights[i] != 0) {
                double row = 0;
                for (int j = 0; j < others.length; j++) {
                    row += posterior.covariance(i, j) * others[j];
                }
                sum += weights[i] * row;
            }
        }
        return sum;
    }
}
