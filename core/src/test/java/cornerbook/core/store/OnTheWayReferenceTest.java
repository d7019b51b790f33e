package cornerbook.core.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.core.say.Refused;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Working days as a general library counts them: numpy 2.4.6, {@code busday_offset}. */
class OnTheWayReferenceTest {
    private static final Set<LocalDate> CLOSED = Set.of(
            LocalDate.of(2026, 10, 12),
            LocalDate.of(2026, 12, 25),
            LocalDate.of(2026, 12, 28),
            LocalDate.of(2027, 1, 1));

    private static boolean works(LocalDate day) {
        return day.getDayOfWeek().compareTo(DayOfWeek.FRIDAY) <= 0 && !CLOSED.contains(day);
    }

    @Test
    void daysAreAsThatLibraryCountsThem() throws IOException {
        var file = Objects.requireNonNull(
                OnTheWayReferenceTest.class.getResourceAsStream("/reference/store/working-days.csv"));
        try (var reader = new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
            var rows = reader.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(",", -1))
                    .toList();
            assertThat(rows).hasSize(60).allSatisfy(row -> {
                var way = new OnTheWay(Integer.parseInt(row[1]));
                assertThat(way.comes(LocalDate.parse(row[0]), OnTheWayReferenceTest::works))
                        .isEqualTo(row[2]);
                assertThat(way.askBy(LocalDate.parse(row[3]), OnTheWayReferenceTest::works))
                        .isEqualTo(row[4]);
            });
        }
    }

    /** Asked for on the last day that it may be, a set is there in time; a day later it is not. */
    @Test
    void theLastDayToAskIsTheLast() {
        for (int days = 0; days <= 10; days++) {
            var way = new OnTheWay(days);
            for (int i = 0; i < 120; i++) {
                var needed = LocalDate.of(2026, 10, 20).plusDays(i);
                var asked = way.askBy(needed, OnTheWayReferenceTest::works);
                assertThat(way.comes(asked, OnTheWayReferenceTest::works)).isBeforeOrEqualTo(needed);
                assertThat(way.comes(asked.plusDays(1), OnTheWayReferenceTest::works))
                        .isAfter(needed);
            }
        }
    }

    @Test
    void noSetTakesSoManyDays() {
        for (int days : new int[] {-1, 31}) {
            assertThatThrownBy(() -> new OnTheWay(days)).isInstanceOf(Refused.class);
        }
        assertThat(new OnTheWay(1).comes(LocalDate.of(2026, 11, 27), day -> false))
                .isEqualTo("2026-11-28");
    }
}
