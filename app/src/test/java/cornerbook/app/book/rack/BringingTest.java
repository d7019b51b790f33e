package cornerbook.app.book.rack;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.store.OnTheWay;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import org.junit.jupiter.api.Test;

class BringingTest {
    private static boolean works(LocalDate day) {
        return day.getDayOfWeek().compareTo(DayOfWeek.FRIDAY) <= 0;
    }

    @Test
    void whoAsksAfterTheLastHourHasAskedOnTheNextWorkingDay() {
        var friday = LocalDate.of(2026, 11, 27);
        var bringing = new Bringing(new OnTheWay(1), LocalTime.of(14, 0));
        assertThat(bringing.comes(friday.atTime(14, 0, 59), BringingTest::works))
                .isEqualTo("2026-11-30");
        assertThat(bringing.comes(friday.atTime(14, 1), BringingTest::works)).isEqualTo("2026-12-01");
        assertThat(new Bringing(new OnTheWay(0), LocalTime.of(23, 59))
                        .comes(friday.atTime(23, 59, 59), BringingTest::works))
                .isEqualTo(friday);
        assertThat(new Bringing(new OnTheWay(0), null).comes(friday.atTime(23, 59), BringingTest::works))
                .isEqualTo(friday);
    }
}
