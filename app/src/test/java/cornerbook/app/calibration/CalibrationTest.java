package cornerbook.app.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.demo.DemoShop;
import cornerbook.words.Reader;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against simulated cars whose truth is known. */
class CalibrationTest {
    /** 99.9 % point of chi-square with 19 degrees of freedom (NIST/SEMATECH e-Handbook, table 1.3.6.7.4). */
    private static final double CHI_SQUARE_19 = 43.82;

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void ninetyPercentIntervalsHoldNineInTenAndTheHistogramIsFlat(int place) {
        var fleet = CalibrationPage.fleet(place);

        assertThat(fleet.calibration().coverage()).isBetween(0.88, 0.92);
        assertThat(Calibration.chiSquare(fleet.calibration().histogram(1))).isLessThan(CHI_SQUARE_19);
    }

    @Test
    void causesAreSeldomNamedWhereThereIsNone() {
        assertThat(FalseAlarms.share(2000, 7)).isLessThan(0.05);
    }

    @Test
    void thePageNamesCoverageAndPictures() {
        var today = LocalDate.of(2026, 11, 25);
        var files = CalibrationPage.files(DemoShop.histories(today), DemoShop.NAME, today, Reader.DEFAULT);

        assertThat(files).containsKeys("calibration.md", "calibration-book.svg", "calibration-fleet-1.svg");
        assertThat(files.get("calibration.md")).contains("in the 90\u00a0% interval", DemoShop.NAME);
    }
}
