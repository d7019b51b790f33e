package cornerbook.core.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class EstimateTest {
    /**
     * The normal prior with normal data by hand: believed 10 ± 2, four readings ± 1 with mean 12. Precisions 1/4 and 4 make
     * 17/4, so the variance after is 4/17, B is 1/17, and the mean after (16 · 12 + 1 · 10) / 17 = 202/17 (Gelman et al.,
     * Bayesian Data Analysis, 3rd ed. 2013, section 2.5; from memory).
     */
    @Test
    void shareOfDataIsTheirWeightInTheMean() {
        var before = new Estimate(10, 2);
        var after = new Estimate(202.0 / 17, Math.sqrt(4.0 / 17));

        double share = after.shareOfData(before);

        assertThat(share).isCloseTo(16.0 / 17, within(1e-12));
        assertThat(share * 12 + (1 - share) * before.mean()).isCloseTo(after.mean(), within(1e-12));
    }

    @Test
    void nothingComesFromDataThatDoNotNarrow() {
        var before = new Estimate(10, 2);

        assertThat(before.shareOfData(before)).isZero();
        assertThat(new Estimate(14, 2.5).shareOfData(before)).isZero();
    }
}
