package cornerbook.app.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is on file against what governments have published. */
class LawReferenceTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 30);

    /** Together, as the Government of Canada lists them by province (GST/HST calculator and rates, 2025); Québec by Revenu Québec. */
    @ParameterizedTest
    @CsvSource({
        "CA-AB,5",
        "CA-NB,15",
        "CA-NL,15",
        "CA-NS,14",
        "CA-NT,5",
        "CA-NU,5",
        "CA-ON,13",
        "CA-PE,15",
        "CA-QC,14.975",
        "CA-YT,5"
    })
    void aPlaceHasItsTaxes(String place, BigDecimal percent) {
        assertThat(TaxOfPlace.of(place, DAY).stream().map(TaxOfPlace::percent).reduce(BigDecimal.ZERO, BigDecimal::add))
                .isEqualByComparingTo(percent);
    }

    /** 15 % until 31 March 2025, 14 % from 1 April 2025 on. */
    @Test
    void novaScotiaHadAnotherRateBefore() {
        assertThat(TaxOfPlace.of("CA-NS", LocalDate.of(2025, 3, 31)).getFirst().percent())
                .isEqualByComparingTo("15");
        assertThat(TaxOfPlace.of("CA-NS", LocalDate.of(2025, 4, 1)).getFirst().percent())
                .isEqualByComparingTo("14");
        assertThat(TaxOfPlace.of("CA-QC", LocalDate.of(2012, 12, 31))).isEmpty();
        assertThat(TaxOfPlace.of("AT", DAY)).isEmpty();
    }

    /** Ontario's ministry, Repair Invoices: not more than 10 per cent above the estimate; 90 days or 5,000 km, whichever comes first. */
    @Test
    void ontarioLetsABillGoTenPerCentBeyondItsEstimate() {
        var law = RepairLaw.of("CA-ON");
        assertThat(law.mostOverPercent()).isEqualByComparingTo("10");
        assertThat(law.warranty()).satisfies(warranty -> {
            assertThat(warranty).isNotNull();
            assertThat(warranty.until(DAY)).isEqualTo(DAY.plusDays(90));
            assertThat(warranty.km()).isEqualTo(5000);
        });
    }

    /** Consumer Protection Act of Québec, sections 171, 172 and 176. */
    @Test
    void quebecLetsNothingGoBeyondWhatWasAccepted() {
        var law = RepairLaw.of("CA-QC");
        assertThat(law.mostOverPercent()).isEqualByComparingTo("0");
        assertThat(law.warranty()).satisfies(warranty -> {
            assertThat(warranty).isNotNull();
            assertThat(warranty.until(DAY)).isEqualTo(LocalDate.of(2027, 2, 28));
        });
        assertThat(RepairLaw.of("CA-AB").warranty()).isNull();
        assertThat(RepairLaw.of("").mostOverPercent()).isEqualByComparingTo("0");
    }

    /**
     * Québec, Regulation P-40.1, r. 3, section 73(a), as LégisQuébec publishes it: an estimate in writing for work of more than $100 with
     * parts and labour. Ontario, O. Reg. 17/05, section 48: in writing from the first cent. Both count what was agreed by word only as it
     * was noted.
     */
    @Test
    void aPlaceSaysFromWhichAmountOnAnEstimateIsInWritingAndHowAWordCounts() {
        assertThat(RepairLaw.of("CA-QC").writtenAbove()).isEqualByComparingTo("100");
        assertThat(RepairLaw.of("CA-ON").writtenAbove()).isEqualByComparingTo("0");
        assertThat(RepairLaw.of("CA-AB").writtenAbove()).isNull();
        assertThat(RepairLaw.of("CA-QC").spoken()).isNotNull();
        assertThat(RepairLaw.of("CA-ON").spoken()).isNotNull();
        assertThat(RepairLaw.of("AT").spoken()).isNull();
    }
}
