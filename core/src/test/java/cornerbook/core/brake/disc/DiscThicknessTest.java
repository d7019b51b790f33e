package cornerbook.core.brake.disc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class DiscThicknessTest {
    private static final DiscLimits LIMITS = new DiscLimits(26.0, 26.6, 0.015);

    @Test
    void variationAndThinnestPoint() {
        var disc = new DiscThickness(List.of(27.312, 27.308, 27.301, 27.305, 27.310, 27.314, 27.318, 27.316));
        assertThat(disc.thinnestMm()).isEqualTo(27.301);
        assertThat(disc.variationMm()).isCloseTo(0.017, within(1e-12));
        assertThat(disc.allowancePerSideMm(LIMITS)).isCloseTo(0.3505, within(1e-12));
        assertThat(disc.use(LIMITS)).isEqualTo(DiscThickness.Use.REFINISH);
    }

    @Test
    void aDiscMayWearOnWhereItMayNotBeMachined() {
        assertThat(even(26.3, 0.005).use(LIMITS)).isEqualTo(DiscThickness.Use.KEEP);
        assertThat(even(26.3, 0.020).use(LIMITS)).isEqualTo(DiscThickness.Use.REPLACE);
        assertThat(even(25.9, 0.005).use(LIMITS)).isEqualTo(DiscThickness.Use.REPLACE);
    }

    @Test
    void whatCannotBeIsRefusedInASentence() {
        assertThatThrownBy(() -> new DiscThickness(List.of(27.0, 27.0, 27.0)))
                .hasMessage("points of thickness is 3, expected 4 to 36");
        assertThatThrownBy(() -> new DiscLimits(26, 25.5, 0.015))
                .hasMessage("minimum refinish thickness is 25.50 mm, expected 26 to 60 mm");
    }

    private static DiscThickness even(double thinnestMm, double variationMm) {
        return new DiscThickness(List.of(thinnestMm, thinnestMm + variationMm, thinnestMm, thinnestMm));
    }
}
