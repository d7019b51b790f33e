package cornerbook.core.brake.seizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.distribution.continuous.GammaDistribution;
import org.junit.jupiter.api.Test;

/** The chance of a car's pads together against quadrature over the gamma distribution of Hipparchus (4.0.3). */
class PadsOfACarReferenceTest {
    private static final double VARIANCE = 0.7;
    private static final double PRECISE = 1e-4;

    @Test
    void onePadSeizesAsItsChanceOverAllCarsSays() {
        var pads = new PadsOfACar();
        pads.free(0, 0.13);
        assertThat(pads.chance()).isCloseTo(0.13, within(1e-12));
    }

    @Test
    void padsTogetherEqualQuadratureOverTheCars() {
        var pads = new PadsOfACar();
        pads.past(0.10, true);
        pads.past(0.20, false);
        pads.free(0.05, 0.12);
        pads.free(0, 0.04);
        double seizedBefore = hazard(0.10);
        double now = hazard(0.20) + hazard(0.05);
        double then = hazard(0.20) + hazard(0.12) + hazard(0.04);
        var cars = new GammaDistribution(1 / VARIANCE, VARIANCE);
        double freeNow = 0;
        double freeThen = 0;
        int steps = 20_000;
        for (int step = 0; step < steps; step++) {
            double factor = cars.inverseCumulativeProbability((step + 0.5) / steps);
            // Seized at the end of its time.
            double seized = factor * Math.exp(-factor * seizedBefore);
            freeNow += seized * Math.exp(-factor * now);
            freeThen += seized * Math.exp(-factor * then);
        }
        assertThat(pads.chance()).isCloseTo(1 - freeThen / freeNow, within(PRECISE));
    }

    /**
     * Were all pads of such cars twice as likely to seize by nature, the chance of the next moment would be so by what the
     * car's own pads leave: their share of the mean of the gamma, which is also Bühlmann's credibility, by hand (0.7 · 0.4
     * over 1 + 0.7 · 0.4 for a sum of hazards of 0.4).
     */
    @Test
    void ownShareIsWhatTheCarsOwnPadsTake() {
        assertThat(new PadsOfACar().ownShare()).isCloseTo(0, within(1e-12));
        var pads = new PadsOfACar();
        pads.past(chanceOf(0.15), true);
        pads.free(chanceOf(0.25), chanceOf(0.25));
        assertThat(pads.ownShare()).isCloseTo(0.28 / 1.28, within(1e-12));

        double step = 1e-4;
        double pull = (Math.log(ofNextMoment(1 + step)) - Math.log(ofNextMoment(1 - step)))
                / (Math.log1p(step) - Math.log1p(-step));
        assertThat(pads.ownShare()).isCloseTo(1 - pull, within(1e-4));
    }

    /** Of the pads above when all hazards are so many times theirs. */
    private static double ofNextMoment(double times) {
        var pads = new PadsOfACar();
        pads.past(chanceOf(0.15 * times), true);
        pads.free(chanceOf(0.25 * times), chanceOf(0.25 * times + 1e-6 * times));
        return pads.chance();
    }

    /** The share of all cars' pads that have seized at this hazard of an average car. */
    private static double chanceOf(double hazard) {
        return 1 - Math.pow(1 + VARIANCE * hazard, -1 / VARIANCE);
    }

    @Test
    void aPadThatSeizedRaisesTheChanceOfTheOthersAndOneThatStayedFreeLowersIt() {
        assertThat(chanceAfter(0.1, true)).isGreaterThan(chanceAfter(0, false));
        assertThat(chanceAfter(0.1, false)).isLessThan(chanceAfter(0, false));
    }

    private static double chanceAfter(double chance, boolean seized) {
        var pads = new PadsOfACar();
        pads.past(chance, seized);
        pads.free(0, 0.1);
        return pads.chance();
    }

    /** The hazard of an average car at which this share of the pads of all cars have seized. */
    private static double hazard(double share) {
        return (Math.pow(1 - share, -VARIANCE) - 1) / VARIANCE;
    }
}
