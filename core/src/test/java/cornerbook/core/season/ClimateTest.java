package cornerbook.core.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Month;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Terms of WMO-No. 1203: mean daily minimum and maximum of twelve months. Values invented. */
class ClimateTest {
    private static final List<Climate.MonthNormal> MONTHS = Collections.nCopies(12, new Climate.MonthNormal(-4.5, 6));

    @Test
    void aMonthIsFoundByItsName() {
        var climate = new Climate("an invented place", "invented", -20, MONTHS);
        assertThat(climate.get(Month.DECEMBER)).isEqualTo(new Climate.MonthNormal(-4.5, 6));
        assertThat(climate.citation()).isEqualTo("an invented place (invented)");
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> new Climate("", "invented", -20, MONTHS))
                .hasMessageStartingWith("place of the climate is missing");
        assertThatThrownBy(() -> new Climate("an invented place", " ", -20, MONTHS))
                .hasMessageStartingWith("source of the climate is missing");
        assertThatThrownBy(() -> new Climate("an invented place", "invented", -20, MONTHS.subList(0, 11)))
                .hasMessage("climate has 11 months, expected all 12");
        assertThatThrownBy(() -> new Climate("an invented place", "invented", -4, MONTHS))
                .hasMessage("coldest morning is -4 °C, expected -60 to -4.500 °C");
        assertThatThrownBy(() -> new Climate.MonthNormal(7, 6))
                .hasMessage("mean daily maximum is 6 °C, expected 7 to 55 °C");
        assertThatThrownBy(() -> new Climate.MonthNormal(Double.NaN, 6)).hasMessageStartingWith("mean daily minimum");
    }
}
