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
import java.time.LocalTime;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Working days as a general library counts them: numpy 2.4.6, {@code busday_offset}. */
class BringingReferenceTest {
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
                BringingReferenceTest.class.getResourceAsStream("/reference/store/working-days.csv"));
        try (var reader = new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
            var rows = reader.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(",", -1))
                    .toList();
            assertThat(rows).hasSize(60).allSatisfy(row -> {
                var bringing = new Bringing(Integer.parseInt(row[1]), null);
                assertThat(bringing.comes(LocalDate.parse(row[0]).atTime(9, 0), BringingReferenceTest::works))
                        .isEqualTo(row[2]);
                assertThat(bringing.askBy(LocalDate.parse(row[3]), BringingReferenceTest::works))
                        .isEqualTo(row[4]);
            });
        }
    }

    /** Asked for on the last day that it may be, a set is there in time; a day later it is not. */
    @Test
    void theLastDayToAskIsTheLast() {
        for (int days = 0; days <= 10; days++) {
            var bringing = new Bringing(days, null);
            for (int i = 0; i < 120; i++) {
                var needed = LocalDate.of(2026, 10, 20).plusDays(i);
                var asked = bringing.askBy(needed, BringingReferenceTest::works);
                assertThat(bringing.comes(asked.atTime(12, 0), BringingReferenceTest::works))
                        .isBeforeOrEqualTo(needed);
                assertThat(bringing.comes(asked.plusDays(1).atTime(12, 0), BringingReferenceTest::works))
                        .isAfter(needed);
            }
        }
    }

    @Test
    void whoAsksAfterTheLastHourHasAskedOnTheNextWorkingDay() {
        var friday = LocalDate.of(2026, 11, 27);
        var bringing = new Bringing(1, LocalTime.of(14, 0));
        assertThat(bringing.comes(friday.atTime(14, 0, 59), BringingReferenceTest::works))
                .isEqualTo("2026-11-30");
        assertThat(bringing.comes(friday.atTime(14, 1), BringingReferenceTest::works))
                .isEqualTo("2026-12-01");
        assertThat(new Bringing(0, LocalTime.of(23, 59)).comes(friday.atTime(23, 59, 59), BringingReferenceTest::works))
                .isEqualTo(friday);
    }

    @Test
    void noSetTakesSoManyDays() {
        for (int days : new int[] {-1, 31}) {
            assertThatThrownBy(() -> new Bringing(days, null)).isInstanceOf(Refused.class);
        }
        assertThat(new Bringing(1, null).comes(LocalDate.of(2026, 11, 27).atStartOfDay(), day -> false))
                .isEqualTo("2026-11-28");
    }
}
