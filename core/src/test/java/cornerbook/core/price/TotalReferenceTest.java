package cornerbook.core.price;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked examples that tax offices have published. */
class TotalReferenceTest {
    private static final Tax GST = new Tax(TaxCode.GST, new BigDecimal("5"));
    private static final Tax QST = new Tax(TaxCode.QST, new BigDecimal("9.975"));
    private static final Tax HST = new Tax(TaxCode.HST, new BigDecimal("13"));

    static Money cad(String amount) {
        return Money.of(CurrencyUnit.CAD, new BigDecimal(amount));
    }

    private static Total of(List<Tax> taxes, String... lines) {
        return Total.of(
                CurrencyUnit.CAD,
                Arrays.stream(lines).map(TotalReferenceTest::cad).toList(),
                taxes);
    }

    /** Revenu Québec, Calculating the Taxes (www.revenuquebec.ca/en/entreprise/taxes/tvq_tps/calcul-taxes.aspx): $100 + $5.00 + $9.98 = $114.98. */
    @Test
    void isTheExampleOfRevenuQuebec() {
        var total = of(List.of(GST, QST), "100.00");
        assertThat(total.taxes()).extracting(Total.Share::amount).containsExactly(cad("5.00"), cad("9.98"));
        assertThat(total.total()).isEqualTo(cad("114.98"));
    }

    /**
     * Government of Canada, Budget 2012, Rounding (www.budget.canada.ca/2012/themes/rounding-arrondissement-eng.html): a coffee at $1.83 and
     * a sandwich at $2.86 are $4.92 after 5 per cent, and $4.90 in cash. Taxed line by line they would be $4.92 by chance: 0.09 + 0.14.
     */
    @Test
    void isTheExampleOfTheBudget() {
        var total = of(List.of(GST), "1.83", "2.86");
        assertThat(total.total()).isEqualTo(cad("4.92"));
        assertThat(total.inCash()).isEqualTo(cad("4.90"));
    }

    /** The same source: 1 and 2 cents go down, 3 and 4 up, 6 and 7 down, 8 and 9 up, 0 and 5 stay. */
    @ParameterizedTest
    @CsvSource({
        "7.00,7.00",
        "7.01,7.00",
        "7.02,7.00",
        "7.03,7.05",
        "7.04,7.05",
        "7.05,7.05",
        "7.06,7.05",
        "7.07,7.05",
        "7.08,7.10",
        "7.09,7.10"
    })
    void cashGoesToTheNearestFiveCents(String total, String cash) {
        assertThat(of(List.of(), total).inCash()).isEqualTo(cad(cash));
    }

    /** Canada Revenue Agency, interpretation 125136 of 28 November 2011: 13 % of $31.95 computed at once, $4.1535. */
    @Test
    void isTheExampleOfOntario() {
        assertThat(of(List.of(HST), "31.95").taxes().getFirst().amount()).isEqualTo(cad("4.15"));
    }

    /** Excise Tax Act, section 165.2(2): a fraction of a cent below half is left out, half or more is a cent. */
    @Test
    void halfACentIsACent() {
        assertThat(of(List.of(GST), "0.10").taxes().getFirst().amount()).isEqualTo(cad("0.01"));
        assertThat(of(List.of(GST), "0.09").taxes().getFirst().amount()).isEqualTo(cad("0.00"));
    }
}
