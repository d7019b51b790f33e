package cornerbook.core.price;

import static cornerbook.core.price.TotalReferenceTest.cad;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class TyreWorthTest {
    /** By hand: 8 mm to 4 mm at 0.2 mm in 1000 km are 20 000 km, at 10 000 km a year two years; 4 × $220 over it are $4.40 for 100 km. */
    @Test
    void lifeYearsAndCostFollowFromTread() {
        var worth = TyreWorth.of(cad("880.00"), 8, 4, 0.2, 10_000);
        assertThat(worth.lifeKm()).isCloseTo(20_000, within(1e-6));
        assertThat(worth.years()).isCloseTo(2, within(1e-9));
        assertThat(worth.per100Km()).isEqualTo(cad("4.40"));
    }

    /** Half as dear for each distance what wears twice as long. */
    @Test
    void whatLastsTwiceAsLongCostsHalf() {
        var plain = TyreWorth.of(cad("640.00"), 8, 4, 0.25, 9_000);
        var longer = TyreWorth.of(cad("640.00"), 12, 4, 0.25, 9_000);
        assertThat(longer.lifeKm()).isCloseTo(2 * plain.lifeKm(), within(1e-6));
        assertThat(longer.per100Km().multipliedBy(2)).isEqualTo(plain.per100Km());
    }

    @Test
    void aTreadThatCannotWearIsRefused() {
        assertThatThrownBy(() -> TyreWorth.of(cad("1.00"), 4, 4, 0.2, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> TyreWorth.of(cad("1.00"), 8, 4, 0, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
