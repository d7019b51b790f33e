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
    private static final int GROOVES = Spot.values().length;

    private final SetDesign design;
    private final WearParameters parameters;
    private final CarFactor car;
    private final GaussianPosterior linear;
    private final GaussianPosterior gaussian;

    /**
     * What is known of a set.
     *
     * @param linear while the car's factor is taken as Gaussian and no rate is held above 0
     * @param gaussian with both put right
     */
    WearPosterior(
            SetDesign design,
            WearParameters parameters,
            CarFactor car,
            GaussianPosterior linear,
            GaussianPosterior gaussian) {
        this.design = design;
        this.parameters = parameters;
        this.car = car;
        this.linear = linear;
        this.gaussian = gaussian;
    }

    /** Depth of a tyre when it was new to the book, mm. */
    public Estimate newDepth(Spot groove, int tyre) {
        return depth(groove, tyre, CornerDistances.NONE);
    }

    /** Wear rate of a groove at a corner while the tread is half worn, mm per 1000 km; its mean is above 0. */
    public Estimate rate(Spot groove, Corner corner) {
        int unknown = rateAt(groove, corner);
        return new Estimate(gaussian.mean(unknown), Math.sqrt(gaussian.covariance(unknown, unknown)));
    }

    /**
     * How much of a rate comes from this set's readings, 0 to 1; the rest from what such tyres usually wear. It is {@link
     * Estimate#shareOfData} of the Gaussian model: moving that rate of the prior by one unit, and all others as they go
     * along with it, moves the posterior's by one less this share. What comes after, that a car's factor is log-normal and
     * that treads wear, widens and narrows a rate without a reading, so it is left out.
     */
    public double ownShareOfRate(Spot groove, Corner corner) {
        int unknown = rateAt(groove, corner);
        return new Estimate(linear.mean(unknown), Math.sqrt(linear.covariance(unknown, unknown)))
                .shareOfData(RatePrior.of(parameters, corner));
    }

    /** Covariance of the rates of two corners, each the mean over its grooves, (mm per 1000 km)². */
    public double rateCovariance(Corner one, Corner other) {
        double sum = 0;
        for (var groove : Spot.values()) {
            for (var beside : Spot.values()) {
                sum += gaussian.covariance(rateAt(groove, one), rateAt(beside, other));
            }
        }
        return sum / (GROOVES * GROOVES);
    }

    /** Depth of a tyre that has run {@code run}, mm; below 0 where it is worn out and would have run on. */
    public Estimate depth(Spot groove, int tyre, CornerDistances run) {
        var weights = weights(groove, tyre, run);
        double variance = gaussian.covariance(weights, weights) + unseen(run, run);
        return scale(tyre).depth(new Estimate(stated(tyre) + gaussian.mean(weights), Math.sqrt(variance)));
    }

    /** The set as it will run from now: each tyre at its corner. */
    public SetOutlook outlook(List<Placement> placements) {
        return new SetOutlook(this, placements);
    }

    CarFactor car() {
        return car;
    }

    GaussianPosterior gaussian() {
        return gaussian;
    }

    SetDesign design() {
        return design;
    }

    WearParameters parameters() {
        return parameters;
    }

    TreadScale scale(int tyre) {
        return new TreadScale(stated(tyre), parameters.of(WearParameter.SLOWING));
    }

    double stated(int tyre) {
        return design.newDepths().get(tyre).depthMm();
    }

    int rateAt(Spot groove, Corner corner) {
        return design.firstRate() + RatePrior.place(groove, corner);
    }

    /** Weights of the unknowns in the effective depth of a tyre less its stated depth. */
    double[] weights(Spot groove, int tyre, CornerDistances run) {
        var weights = new double[design.unknowns()];
        design.weigh(groove, tyre, run, weights);
        return weights;
    }

    /** Covariance of what seasons that no reading tells of took from two tyres, mm². */
    double unseen(CornerDistances run, CornerDistances other) {
        double seasonSd = parameters.of(WearParameter.SEASON_SD);
        return seasonSd * seasonSd * design.unseenTogether(run, other);
    }
}
