package cornerbook.core.brake.seizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class SaltClockTest {
    private static final LocalDate SPRING = LocalDate.of(2025, 4, 1);
    private static final LocalDate AUTUMN = LocalDate.of(2025, 11, 1);

    @Test
    void aYearCountsTwelveMonthsFromWhicheverDay() {
        assertThat(SaltClock.months(SPRING, SPRING.plusYears(4))).isCloseTo(48, within(0.01));
        assertThat(SaltClock.months(AUTUMN, AUTUMN.plusYears(4))).isCloseTo(48, within(0.01));
        assertThat(SaltClock.months(LocalDate.of(2025, 1, 17), LocalDate.of(2026, 1, 17)))
                .isCloseTo(12, within(0.1));
    }

    @Test
    void winterBringsNineTenths() {
        assertThat(SaltClock.months(AUTUMN, LocalDate.of(2026, 4, 1))).isCloseTo(10.8, within(0.05));
        assertThat(SaltClock.months(SPRING, AUTUMN)).isCloseTo(1.2, within(0.05));
    }

    @Test
    void aDayBeforeTheFirstIsRefused() {
        assertThat(SaltClock.months(SPRING, SPRING)).isZero();
        assertThatThrownBy(() -> SaltClock.months(AUTUMN, SPRING))
                .hasMessage("from 2025-11-01 until 2025-04-01, expected no day before the first");
    }
}
