package cornerbook.app.calibration.fleet;

import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;
import java.util.function.DoubleUnaryOperator;

/** Two ways of drawing the next sample of a Markov chain by a slice under its density, without a step to be tuned. */
record Slices(SplittableRandom random) {
    private static final double NARROWEST = 1e-9;

    /**
     * An elliptical slice (Murray, Adams and MacKay 2010, AISTATS 9:541) of numbers that are standard normal before the data.
     *
     * @param before where they are, left as it is
     * @param move puts them somewhere else
     * @param logLikelihood of the data where they were put
     */
    void elliptical(double[] before, Consumer<double[]> move, DoubleSupplier logLikelihood) {
        var across = new double[before.length];
        for (int i = 0; i < across.length; i++) {
            across[i] = random.nextGaussian();
        }
        double least = logLikelihood.getAsDouble() + Math.log(random.nextDouble());
        double angle = 2 * Math.PI * random.nextDouble();
        double low = angle - 2 * Math.PI;
        double high = angle;
        while (high - low > NARROWEST) {
            var proposed = new double[before.length];
            for (int i = 0; i < proposed.length; i++) {
                proposed[i] = before[i] * Math.cos(angle) + across[i] * Math.sin(angle);
            }
            move.accept(proposed);
            if (logLikelihood.getAsDouble() > least) {
                return;
            }
            if (angle < 0) {
                low = angle;
            } else {
                high = angle;
            }
            angle = low + (high - low) * random.nextDouble();
        }
        move.accept(before);
        // What is kept of the last place belongs to the one it goes back to.
        double unmoved = logLikelihood.getAsDouble();
        assert unmoved >= least;
    }

    /**
     * A slice that steps out and shrinks (Neal 2003, Annals of Statistics 31:705). The density was last asked where the sample is.
     *
     * @param step by which the slice is widened
     */
    double stepping(double start, double step, DoubleUnaryOperator logDensity) {
        double least = logDensity.applyAsDouble(start) + Math.log(random.nextDouble());
        double low = start - step * random.nextDouble();
        double high = low + step;
        while (logDensity.applyAsDouble(low) > least) {
            low -= step;
        }
        while (logDensity.applyAsDouble(high) > least) {
            high += step;
        }
        while (true) {
            double proposed = low + (high - low) * random.nextDouble();
            if (logDensity.applyAsDouble(proposed) > least || high - low < NARROWEST) {
                return proposed;
            }
            if (proposed < start) {
                low = proposed;
            } else {
                high = proposed;
            }
        }
    }
}
