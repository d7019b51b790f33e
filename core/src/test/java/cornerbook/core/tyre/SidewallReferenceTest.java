package cornerbook.core.tyre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.WeekFields;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The tables of UN R30 and 49 CFR 574.5; sources and tolerances stand in the files. */
class SidewallReferenceTest {
    private static final String FOLDER = "/reference/tyre/";

    @ParameterizedTest
    @CsvFileSource(resources = FOLDER + "load-index.csv", numLinesToSkip = 1)
    void capacityOfALoadIndex(int number, double expectedKg, double toleranceKg, String source) {
        assertThat(new LoadIndex(number).capacityKg()).as(source).isCloseTo(expectedKg, within(toleranceKg));
    }

    /**
     * The series has 80 steps of 2.9 % to the decade, as the preferred numbers R 80 have, and 45 kg at index 0; the rounded
     * values of the table stay within 2 % of it, so a row that was left out or doubled would show.
     */
    @ParameterizedTest
    @CsvFileSource(resources = FOLDER + "load-index.csv", numLinesToSkip = 1)
    void capacityFollowsThePreferredNumbers(int number) {
        double seriesKg = 45 * Math.pow(10, number / 80.0);
        assertThat(new LoadIndex(number).capacityKg() / seriesKg).isCloseTo(1, within(0.02));
    }

    @ParameterizedTest
    @CsvFileSource(resources = FOLDER + "speed-symbol.csv", numLinesToSkip = 1)
    void speedOfASymbol(String symbol, double expectedKmh, double toleranceKmh, String source) {
        assertThat(SpeedSymbol.parse(symbol).highestKmh()).as(source).isCloseTo(expectedKmh, within(toleranceKmh));
    }

    @ParameterizedTest
    @CsvFileSource(resources = FOLDER + "load-share.csv", numLinesToSkip = 1)
    void loadShareNearTheHighestSpeed(
            String symbol, double speedKmh, double expected, double tolerance, String source) {
        assertThat(SpeedSymbol.parse(symbol).loadShare(speedKmh)).as(source).isCloseTo(expected, within(tolerance));
    }

    @ParameterizedTest
    @CsvFileSource(resources = FOLDER + "overall-diameter.csv", numLinesToSkip = 1)
    void overallDiameterOfASize(String size, double expectedMm, double toleranceMm, String source) {
        assertThat(TyreSize.parse(size).overallDiameterMm()).as(source).isCloseTo(expectedMm, within(toleranceMm));
    }

    @ParameterizedTest
    @CsvFileSource(resources = FOLDER + "date-code.csv", numLinesToSkip = 1)
    void firstDayOfADateCode(String digits, LocalDate expected, long toleranceDays, String source) {
        long days = ChronoUnit.DAYS.between(expected, DateCode.parse(digits).dated());
        assertThat(Math.abs(days)).as(source).isLessThanOrEqualTo(toleranceDays);
    }

    /** Against java.time's weeks, told that they start on Sunday and that the first one is full. */
    @ParameterizedTest
    @ValueSource(ints = {1, 9, 26, 52})
    void everyYearAgreesWithTheCalendarLibrary(int week) {
        var weeks = WeekFields.of(DayOfWeek.SUNDAY, 7);
        for (int year = 2000; year <= 2099; year++) {
            var day = new DateCode(week, year).dated();
            assertThat(day.getDayOfWeek()).isEqualTo(DayOfWeek.SUNDAY);
            assertThat(day.get(weeks.weekBasedYear())).isEqualTo(year);
            assertThat(day.get(weeks.weekOfWeekBasedYear())).isEqualTo(week);
        }
    }

    /** Against java.time's years, which differ from those of 365.25 days by less than a day over whole leap periods. */
    @ParameterizedTest
    @ValueSource(ints = {4, 6, 10})
    void anAgeIsReachedWhenTheCalendarSaysSo(int years) {
        for (int year = 2000; year <= 2099 - years; year++) {
            var code = new DateCode(20, year);
            var reached = code.reaches(years);
            assertThat(reached)
                    .isBetween(
                            code.dated().plusYears(years),
                            code.dated().plusYears(years).plusDays(1));
            assertThat(code.ageYears(reached)).isGreaterThanOrEqualTo(years);
            assertThat(code.ageYears(reached.minusDays(1))).isLessThan(years);
        }
    }
}
