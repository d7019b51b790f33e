package cornerbook.core.price;

import static cornerbook.core.price.TotalReferenceTest.cad;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.joda.money.CurrencyMismatchException;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class TotalPropertyTest {
    private static final List<Tax> QUEBEC =
            List.of(new Tax(TaxCode.GST, new BigDecimal("5")), new Tax(TaxCode.QST, new BigDecimal("9.975")));

    /** What is given back is what was taken, to the cent. */
    @Test
    void aCreditIsTheBillWithAnotherSign() {
        var random = new Random(7);
        for (int trial = 0; trial < 2000; trial++) {
            var lines = IntStream.rangeClosed(0, random.nextInt(6))
                    .mapToObj(line -> Money.ofMinor(CurrencyUnit.CAD, random.nextInt(200_000)))
                    .toList();
            var bill = Total.of(CurrencyUnit.CAD, lines, QUEBEC);
            var credit = Total.of(
                    CurrencyUnit.CAD, lines.stream().map(Money::negated).toList(), QUEBEC);
            assertThat(credit.total()).isEqualTo(bill.total().negated());
            assertThat(bill.total())
                    .isEqualTo(bill.subtotal()
                            .plus(bill.taxes().get(0).amount())
                            .plus(bill.taxes().get(1).amount()));
            // Another way to round half a cent up: by whole thousandths of a cent.
            long cents = bill.subtotal().getAmountMinorLong();
            assertThat(bill.taxes().get(1).amount().getAmountMinorLong()).isEqualTo((cents * 9975 + 50_000) / 100_000);
        }
    }

    @Test
    void minutesCountAgainstTheHour() {
        assertThat(Labour.of(90, cad("120.00"))).isEqualTo(cad("180.00"));
        assertThat(Labour.of(35, cad("119.99"))).isEqualTo(cad("69.99"));
        assertThat(Labour.of(0, cad("120.00"))).isEqualTo(cad("0.00"));
        assertThatThrownBy(() -> Labour.of(-1, cad("120.00"))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Labour.of(6001, cad("120.00"))).isInstanceOf(IllegalArgumentException.class);
    }

    /** Ten per cent of $201.15 are $20.115: the half cent is not the shop's. */
    @Test
    void whatMayBeChargedIsNeverAPartOfACentMore() {
        assertThat(Beyond.most(cad("201.15"), BigDecimal.TEN)).isEqualTo(cad("221.26"));
        assertThat(Beyond.most(cad("201.15"), BigDecimal.ZERO)).isEqualTo(cad("201.15"));
    }

    @Test
    void currenciesAreNotMixed() {
        var lines = List.of(cad("1.00"), Money.of(CurrencyUnit.EUR, 1));
        assertThatThrownBy(() -> Total.of(CurrencyUnit.CAD, lines, QUEBEC))
                .isInstanceOf(CurrencyMismatchException.class);
    }

    @Test
    void aRateIsAShareOfThePrice() {
        assertThatThrownBy(() -> new Tax(TaxCode.GST, new BigDecimal("-1")))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Tax(TaxCode.GST, new BigDecimal("50.01")))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Tax(TaxCode.GST, new BigDecimal("9.97501")))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(new Tax(TaxCode.GST, new BigDecimal("9.97500")).percent()).isEqualByComparingTo("9.975");
    }
}
