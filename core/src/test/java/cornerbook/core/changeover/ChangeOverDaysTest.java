package cornerbook.core.changeover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.core.changeover.ChangeOverSeason.Week;
import cornerbook.core.say.Refused;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Objects;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Months are those of an invented place; chances by the library Hipparchus. */
class ChangeOverDaysTest {
    private static final List<Double> COLD_PLACE =
            List.of(-10.0, -8.5, -2.5, 5.5, 13.0, 18.0, 21.0, 20.0, 15.5, 8.5, 2.0, -6.0);
    private static final List<Double> MILD_PLACE =
            List.of(4.0, 4.5, 6.5, 9.0, 12.5, 15.5, 17.5, 17.5, 15.0, 11.5, 7.5, 5.0);
    private static final WinterLaw DECEMBER_TO_MARCH = new WinterLaw(MonthDay.of(12, 1), MonthDay.of(3, 15));
    private static final LocalDate SUMMER = LocalDate.of(2027, 7, 1);
    private static final double SPREAD_C = 4.5;

    @Test
    void inAutumnTheDaysBeginWhereAColdDayIsAsLikelyAsOneInTenAndEndBeforeItIsLikelierThanNot() {
        var autumn = autumn(COLD_PLACE, null, null);
        assertThat(chance(COLD_PLACE, autumn.from().minusDays(1))).isLessThan(0.1);
        assertThat(chance(COLD_PLACE, autumn.from())).isBetween(0.1, 0.12);
        assertThat(chance(COLD_PLACE, autumn.until())).isBetween(0.47, 0.5);
        assertThat(chance(COLD_PLACE, autumn.until().plusDays(1))).isGreaterThanOrEqualTo(0.5);
        assertThat(chance(COLD_PLACE, autumn.best()))
                .as("cost is least where one cold day weighs three warm")
                .isBetween(0.24, 0.27);
        assertThat(autumn.byLaw()).isFalse();
    }

    @Test
    void inSpringTheyBeginWhereAWarmDayIsAsLikelyAsAColdOne() {
        var spring = Objects.requireNonNull(days(COLD_PLACE, null, null, SUMMER).spring());
        assertThat(spring.from().getYear()).isEqualTo(2028);
        assertThat(chance(COLD_PLACE, spring.from().minusDays(1))).isGreaterThan(0.5);
        assertThat(chance(COLD_PLACE, spring.from())).isBetween(0.47, 0.5);
        assertThat(chance(COLD_PLACE, spring.until().plusDays(1))).isLessThanOrEqualTo(0.1);
        assertThat(chance(COLD_PLACE, spring.best())).isBetween(0.23, 0.26);
    }

    @Test
    void theLawBindsWhereTheClimateWouldWait() {
        var autumn = autumn(MILD_PLACE, DECEMBER_TO_MARCH, null);
        assertThat(autumn.byLaw()).isFalse();
        var early = autumn(MILD_PLACE, new WinterLaw(MonthDay.of(11, 1), MonthDay.of(4, 30)), null);
        assertThat(early.byLaw()).isTrue();
        assertThat(early.until()).as("the day before the law binds").isEqualTo(LocalDate.of(2027, 10, 31));
        assertThat(early.best()).isBeforeOrEqualTo(early.until());
        var spring = Objects.requireNonNull(
                days(MILD_PLACE, new WinterLaw(MonthDay.of(11, 1), MonthDay.of(4, 30)), null, SUMMER)
                        .spring());
        assertThat(spring.from()).as("the day after it binds").isEqualTo(LocalDate.of(2028, 5, 1));
    }

    /** The days used cost no more than any other run of as many working days that keeps the law: each is tried. */
    @Test
    void aShopWorksOnTheDaysOfLeastCost() {
        var work = new ShopWork(295, 12);
        var autumn = autumn(COLD_PLACE, DECEMBER_TO_MARCH, work);
        assertThat(autumn.weeks().stream().mapToInt(Week::cars).sum()).isEqualTo(295);
        assertThat(autumn.weeks()).allSatisfy(week -> assertThat(week.cars()).isBetween(1, 60));
        var working = LocalDate.of(2027, 8, 1)
                .datesUntil(LocalDate.of(2027, 12, 1))
                .filter(day -> day.getDayOfWeek().compareTo(DayOfWeek.FRIDAY) <= 0)
                .toList();
        int begins = working.indexOf(autumn.weeks().getFirst().first());
        double used = cost(working.subList(begins, begins + 25));
        for (int i = 0; i + 25 <= working.size(); i++) {
            assertThat(used).isLessThanOrEqualTo(cost(working.subList(i, i + 25)) + 1e-9);
        }
    }

    @Test
    void noDayThatIsOverIsPlanned() {
        var work = new ShopWork(295, 12);
        var today = LocalDate.of(2027, 10, 20);
        var autumn = Objects.requireNonNull(
                days(COLD_PLACE, DECEMBER_TO_MARCH, work, today).autumn());
        assertThat(autumn.weeks().getFirst().first()).isEqualTo(today);
        assertThat(autumn.weeks().getLast().first()).isBefore(LocalDate.of(2027, 12, 1));
    }

    @Test
    void whatIsOverIsOfTheYearAfter() {
        var december = days(COLD_PLACE, DECEMBER_TO_MARCH, null, LocalDate.of(2027, 12, 5));
        assertThat(Objects.requireNonNull(december.autumn()).from().getYear()).isEqualTo(2028);
        assertThat(Objects.requireNonNull(december.spring()).from().getYear()).isEqualTo(2028);
        assertThat(december.course().getFirst().day()).isEqualTo(LocalDate.of(2028, 1, 1));
        var november = days(COLD_PLACE, DECEMBER_TO_MARCH, null, LocalDate.of(2027, 11, 20));
        assertThat(Objects.requireNonNull(november.autumn()).from().getYear())
                .as("ten days are left before the law binds")
                .isEqualTo(2027);
    }

    @Test
    void aPlaceThatIsAlwaysWarmHasNoDays() {
        var days = days(
                List.of(20.0, 20.0, 21.0, 22.0, 24.0, 26.0, 27.0, 27.0, 26.0, 24.0, 22.0, 21.0), null, null, SUMMER);
        assertThat(days.autumn()).isNull();
        assertThat(days.spring()).isNull();
        assertThat(days.steps()).isEmpty();
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> new DailyNormals(List.of(1.0, 2.0))).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> new ShopWork(0, 5)).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> ChangeOverDays.of(new DailyNormals(COLD_PLACE), 0.1, null, null, SUMMER))
                .isInstanceOf(Refused.class);
    }

    private static ChangeOverSeason autumn(List<Double> months, @Nullable WinterLaw law, @Nullable ShopWork work) {
        return Objects.requireNonNull(days(months, law, work, SUMMER).autumn());
    }

    private static ChangeOverDays days(
            List<Double> months, @Nullable WinterLaw law, @Nullable ShopWork work, LocalDate today) {
        return ChangeOverDays.of(new DailyNormals(months), SPREAD_C, law, work, today);
    }

    private static double chance(List<Double> months, LocalDate day) {
        return new NormalDistribution(new DailyNormals(months).meanC(day), SPREAD_C).cumulativeProbability(7);
    }

    /** Days of the wrong tyres from August to the year's end, summed from the definition, over cars that are changed on these days. */
    private static double cost(List<LocalDate> days) {
        return days.stream()
                .mapToDouble(changed -> LocalDate.of(2027, 8, 1)
                        .datesUntil(LocalDate.of(2028, 1, 1))
                        .mapToDouble(day ->
                                day.isBefore(changed) ? 3 * chance(COLD_PLACE, day) : 1 - chance(COLD_PLACE, day))
                        .sum())
                .sum();
    }
}
