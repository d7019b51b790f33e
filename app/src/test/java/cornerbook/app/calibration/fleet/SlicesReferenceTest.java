package cornerbook.app.calibration.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Test;

/**
 * Source: the posterior of a normal mean with a normal prior, in closed form (Gelman et al., Bayesian Data Analysis, 3rd edition,
 * section 2.5): prior N(0, 1) and one reading y with s.d. s give mean y/(1+s²) and variance s²/(1+s²).
 */
class SlicesReferenceTest {
    private static final double READ = 1.5;
    private static final double SD = 0.5;
    private static final double MEAN = READ / (1 + SD * SD);
    private static final double VARIANCE = SD * SD / (1 + SD * SD);

    private final Slices slices = new Slices(new SplittableRandom(20));
    private final SummaryStatistics drawn = new SummaryStatistics();

    @Test
    void anEllipticalSliceDrawsTheKnownPosterior() {
        var at = new double[1];
        for (int i = 0; i < 40_000; i++) {
            slices.elliptical(at.clone(), to -> at[0] = to[0], () -> -Math.pow(READ - at[0], 2) / (2 * SD * SD));
            drawn.addValue(at[0]);
        }
        assertKnown();
    }

    @Test
    void aSteppingSliceDrawsTheKnownPosterior() {
        double at = 0;
        for (int i = 0; i < 40_000; i++) {
            at = slices.stepping(at, 0.3, x -> -x * x / 2 - Math.pow(READ - x, 2) / (2 * SD * SD));
            drawn.addValue(at);
        }
        assertKnown();
    }

    private void assertKnown() {
        assertThat(drawn.getMean()).isCloseTo(MEAN, within(0.02));
        assertThat(drawn.getVariance()).isCloseTo(VARIANCE, within(0.02));
    }
}
