package cornerbook.core.changeover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hipparchus.analysis.integration.RombergIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** That the curve has the means of the months, integrated by the library Hipparchus. */
class DailyNormalsReferenceTest {
    private static final double SAME_C = 1e-6;
    private static final double PRINTED_C = 5e-4;

    @Test
    void theMeanOverEachMonthIsItsNormal() {
        var random = new SplittableRandom(3);
        for (int place = 0; place < 20; place++) {
            var months = random.doubles(12, -25, 28).boxed().toList();
            var normals = new DailyNormals(months);
            for (int month = 0; month < 12; month++) {
                double mean = new RombergIntegrator().integrate(100_000, normals::meanC, month, month + 1.0);
                assertThat(mean).as("month %s of %s", month + 1, months).isCloseTo(months.get(month), within(SAME_C));
            }
        }
    }

    /**
     * Temperatures of the air at Madison and in Australia, with the means that the days of each month have: Bartlein and Shafer
     * 2019, Geoscientific Model Development 12, 3889–3913, figure 15 a and b (the numbers of its data, printed to 0.001 °C).
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "-6.770 -4.330 1.520 8.350 14.740 20.290 23.220 22.170 16.940 10.350 3.080 -4.290 | 8.843013",
                "25.320 24.930 22.630 19.730 16.170 13.000 12.380 14.040 17.360 19.780 22.520 24.040 | 19.291782"
            })
    void theDaysOfAMonthHaveItsMean(String printed, double meanOfYearC) {
        var months = Arrays.stream(printed.split(" ")).map(Double::valueOf).toList();
        var normals = new DailyNormals(months);
        for (int month = 1; month <= 12; month++) {
            assertThat(mean(
                            normals,
                            LocalDate.of(2027, month, 1),
                            LocalDate.of(2027, month, 1).plusMonths(1)))
                    .isCloseTo(months.get(month - 1), within(PRINTED_C));
        }
        assertThat(mean(normals, LocalDate.of(2027, 1, 1), LocalDate.of(2028, 1, 1)))
                .isCloseTo(meanOfYearC, within(PRINTED_C));
    }

    private static double mean(DailyNormals normals, LocalDate from, LocalDate to) {
        return from.datesUntil(to).mapToDouble(normals::meanC).average().orElseThrow();
    }

    /** A year that is one wave: its months are flattened by sin(π/12)/(π/12), the days are not. */
    @Test
    void aWaveIsFoundAgain() {
        double flattened = Math.sin(Math.PI / 12) / (Math.PI / 12);
        var months = IntStream.range(0, 12)
                .mapToObj(month -> 6 - 15 * flattened * Math.cos(2 * Math.PI * (month + 0.5 - 0.7) / 12))
                .toList();
        var normals = new DailyNormals(List.copyOf(months));
        for (double at = 0; at < 12; at += 0.1) {
            assertThat(normals.meanC(at)).isCloseTo(6 - 15 * Math.cos(2 * Math.PI * (at - 0.7) / 12), within(1e-9));
        }
    }
}
