package cornerbook.app.demo;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.days.PlannedWork;
import cornerbook.core.days.WorkHours;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the invented shop has agreed, on whichever day its book is made. */
class DemoDaysPropertyTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 11, 23);
    private static final int WEEK = 7;
    private static final int HOISTS = 2;

    static Stream<LocalDate> todays() {
        return FIRST.datesUntil(FIRST.plusDays(WEEK));
    }

    @ParameterizedTest
    @MethodSource("todays")
    void noCarIsAgreedTwiceOnADayAndNoneOnTheClosedDay(LocalDate today) {
        assertThat(DemoShop.agreed(today))
                .extracting(agreed -> agreed.carId() + " " + agreed.day())
                .doesNotHaveDuplicates();
        assertThat(DemoShop.agreed(today)).extracting(AgreedDay::day).doesNotContain(DemoShop.closed(today));
        assertThat(DemoShop.people().get(DemoHours.ODILE))
                .containsKey(DemoShop.closed(today).getDayOfWeek());
        assertThat(DemoShop.agreed(today))
                .flatExtracting(agreed -> agreed.worker() == null ? List.<String>of() : List.of(agreed.worker()))
                .hasSameElementsAs(DemoShop.people().keySet());
    }

    @ParameterizedTest
    @MethodSource("todays")
    void theWeeksAheadShowAFullDayAndOneThatTakesTooLittle(LocalDate today) {
        var load = DemoShop.agreed(today).stream()
                .filter(agreed -> agreed.day().isAfter(today))
                .collect(Collectors.groupingBy(
                        AgreedDay::day,
                        Collectors.mapping(AgreedDay::work, Collectors.summingInt(PlannedWork::usualMinutes))));
        assertThat(load.entrySet().stream().filter(day -> day.getValue() > capacityMinutes(day.getKey())))
                .singleElement()
                .satisfies(day -> assertThat(day.getKey().getDayOfWeek()).isEqualTo(DayOfWeek.SATURDAY));
        assertThat(load)
                .anySatisfy((day, minutes) ->
                        assertThat(minutes).isBetween(capacityMinutes(day) * 2 / 3, capacityMinutes(day)));
    }

    private static int capacityMinutes(LocalDate day) {
        return WorkHours.capacityMinutes(
                DemoShop.people().values().stream()
                        .map(week -> week.getOrDefault(day.getDayOfWeek(), WorkHours.NONE))
                        .toList(),
                HOISTS);
    }
}
