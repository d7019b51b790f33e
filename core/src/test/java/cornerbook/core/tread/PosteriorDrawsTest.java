package cornerbook.core.tread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.Spot;
import cornerbook.core.numeric.Estimate;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.stat.descriptive.StreamingStatistics;
import org.junit.jupiter.api.Test;

/** Moments of the draws, taken by a general-purpose library, against the posterior's closed forms. */
class PosteriorDrawsTest {
    private static final int DRAWS = 20_000;
    /** About four standard errors of a mean and of a standard deviation at this many draws. */
    private static final double ERRORS_OF_MEAN = 4 / Math.sqrt(DRAWS);

    private static final double ERRORS_OF_SD = 4 / Math.sqrt(2.0 * DRAWS);

    @Test
    void meansAndSpreadsAreThePosteriors() {
        var run = CornerDistances.NONE.plus(0, Corner.LF, 12).plus(1, Corner.LR, 6);
        var beside = CornerDistances.NONE.plus(0, Corner.RF, 12).plus(1, Corner.RR, 6);
        var readings = List.of(
                new TreadReading(1, 0, Spot.CENTRE, run, 4.6), new TreadReading(1, 1, Spot.CENTRE, beside, 4.9));
        var posterior = new WearModel(WearParameters.defaults(DriveLayout.FRONT).with(WearParameter.SLOWING, 0))
                .fit(Collections.nCopies(4, NewDepth.stated(8)), readings);
        var draws = new PosteriorDraws(posterior);
        var random = new SplittableRandom(61);
        var depth = new StreamingStatistics();
        var rate = new StreamingStatistics();
        for (int n = 0; n < DRAWS; n++) {
            var draw = draws.next(random);
            depth.addValue(draw.depthMm(Spot.CENTRE, 0, run));
            rate.addValue(draw.rateMmPer1000Km(Spot.CENTRE, Corner.LF));
        }
        agrees(depth, posterior.depth(Spot.CENTRE, 0, run));
        agrees(rate, posterior.rate(Spot.CENTRE, Corner.LF));
    }

    private static void agrees(StreamingStatistics drawn, Estimate expected) {
        assertThat(drawn.getMean()).isCloseTo(expected.mean(), within(ERRORS_OF_MEAN * expected.sd()));
        assertThat(drawn.getStandardDeviation()).isCloseTo(expected.sd(), within(ERRORS_OF_SD * expected.sd()));
    }
}
