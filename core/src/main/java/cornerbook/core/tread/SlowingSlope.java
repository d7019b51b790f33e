package cornerbook.core.tread;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * Whether treads of a set slow down more or less than parameters have it ({@link TreadScale}), told by where its depths lie and
 * not by how they scatter. The errors of a reading are those of the gauge, the same on a new tread as on a worn one, so that
 * the slowing moves expected depths alone. With x the weights of a reading's groove, C the posterior's covariance, D the depth
 * that the posterior expects, ê what is left of the reading on the scale of effective depth and k, h as in {@link WearModel},
 *
 * <pre>
 *   ∂ log p/∂γ = −Σ E[e q(D)]/σ² = −Σ (ê q(D) − q'(D)/ψ'(D) (xᵀCx − k hᵀCx))/σ²                           (1)
 * </pre>
 *
 * (Fisher's identity; Louis 1982, J. R. Statist. Soc. B 44:226), straight in D about what is expected. The likelihood of the
 * effective depths has the same slope where its errors are as it believes, but it asks for that γ by which they scatter alike
 * at all depths: where cars do what it does not know, it finds it too small by up to 0.3. Of (1) a wrong scatter moves the
 * weight of readings, not where it is nothing (Liang and Zeger 1986, Biometrika 73:13).
 */
public final class SlowingSlope {
    private final WearModel model;
    private final double noise;
    private final double slowing;

    public SlowingSlope(WearParameters parameters) {
        model = new WearModel(parameters);
        noise = parameters.readingSdMm() * parameters.readingSdMm();
        slowing = parameters.of(WearParameter.SLOWING);
    }

    /** Equation (1) of a set; below 0 where its treads slow down less. */
    public double of(WearHistory history) {
        var design = new SetDesign(history.newDepths(), history.readings(), Drivers.ONE, model.parameters());
        var posterior = model.gaussian(design);
        var byVisit = new TreeMap<Integer, List<TreadReading>>();
        for (var reading : history.readings()) {
            byVisit.computeIfAbsent(reading.visit(), visit -> new ArrayList<>()).add(reading);
        }
        int at = 0;
        double slope = 0;
        for (var ofVisit : byVisit.values()) {
            slope += ofVisit(
                    design, posterior, ofVisit, model.shared(design.occasions().get(at++)));
        }
        return slope;
    }

    private double ofVisit(SetDesign design, GaussianPosterior posterior, List<TreadReading> readings, double shared) {
        int count = readings.size();
        var weights = new double[count][design.unknowns()];
        var together = new double[design.unknowns()];
        var left = new double[count];
        var depth = new double[count];
        double all = 0;
        for (int i = 0; i < count; i++) {
            var reading = readings.get(i);
            design.weigh(reading.groove(), reading.tyre(), reading.run(), weights[i]);
            var scale = scale(design, reading);
            double expected = scale.newDepthMm() + posterior.mean(weights[i]);
            depth[i] = scale.depth(expected);
            left[i] = scale.effective(reading.depthMm()) - expected;
            all += left[i];
            for (int unknown = 0; unknown < together.length; unknown++) {
                together[unknown] += weights[i][unknown];
            }
        }
        double sum = 0;
        for (int i = 0; i < count; i++) {
            var scale = scale(design, readings.get(i));
            double own =
                    posterior.covariance(weights[i], weights[i]) - shared * posterior.covariance(weights[i], together);
            sum += (left[i] - shared * all) * TreadScale.bend(depth[i], scale.newDepthMm())
                    - TreadScale.bendSlope(depth[i], scale.newDepthMm()) / scale.slope(depth[i]) * own;
        }
        return -sum / noise;
    }

    private TreadScale scale(SetDesign design, TreadReading reading) {
        return new TreadScale(design.newDepths().get(reading.tyre()).depthMm(), slowing);
    }
}
