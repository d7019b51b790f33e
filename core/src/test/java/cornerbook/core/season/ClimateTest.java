package cornerbook.core.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import cornerbook.core.quantity.QuantitySaid;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import java.time.Month;
import java.util.Collections;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
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
        assertThat(refusal(() -> new Climate("", "invented", -20, MONTHS)))
                .isEqualTo(new SeasonSaid.TextMissingOrLong(SeasonSaid.ClimateText.PLACE, 200));
        assertThat(refusal(() -> new Climate("an invented place", " ", -20, MONTHS)))
                .isEqualTo(new SeasonSaid.TextMissingOrLong(SeasonSaid.ClimateText.SOURCE, 200));
        assertThat(refusal(() -> new Climate("an invented place", "invented", -20, MONTHS.subList(0, 11))))
                .isEqualTo(new SeasonSaid.NotAllMonths(11));
        assertThat(refusal(() -> new Climate("an invented place", "invented", -4, MONTHS)))
                .isEqualTo(new QuantitySaid.OutOfRange(
                        SeasonSaid.ClimateNumber.COLDEST_MORNING,
                        new Amount(-4, "°C", 0),
                        new Between(-60, -4.5, "°C", 1)));
        assertThat(refusal(() -> new Climate.MonthNormal(7, 6)))
                .isEqualTo(new QuantitySaid.OutOfRange(
                        SeasonSaid.ClimateNumber.MEAN_DAILY_MAXIMUM,
                        new Amount(6, "°C", 0),
                        new Between(7, 55, "°C", 0)));
        assertThatThrownBy(() -> new Climate.MonthNormal(Double.NaN, 6)).isInstanceOf(IllegalArgumentException.class);
    }

    private static Said refusal(ThrowingCallable making) {
        return catchThrowableOfType(Refused.class, making).said();
    }
}
