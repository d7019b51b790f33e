package cornerbook.core.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;

/** Against the rules of Hipparchus (hipparchus-core 4.0.3) with as many nodes. */
class GaussLegendreReferenceTest {
    @Test
    void isTheRuleOfTheLibrary() {
        var library = new GaussIntegratorFactory(16);
        for (double to : new double[] {0.4, 2, 5}) {
            assertThat(GaussLegendre.SEVEN.integral(-1, to, NormalDistribution::density))
                    .isCloseTo(library.legendre(7, -1, to).integrate(NormalDistribution::density), within(1e-14));
            assertThat(GaussLegendre.NINE.integral(-1, to, NormalDistribution::density))
                    .isCloseTo(library.legendre(9, -1, to).integrate(NormalDistribution::density), within(1e-14));
        }
    }

    @Test
    void anEmptyStretchIsNothing() {
        assertThat(GaussLegendre.SEVEN.integral(1, 1, x -> 5)).isZero();
        assertThat(GaussLegendre.NINE.integral(1, 0, x -> 5)).isZero();
    }
}
