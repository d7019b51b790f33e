package cornerbook.core.coming;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class ContactRuleTest {
    private static final LocalDate VISIT = LocalDate.of(2024, 11, 25);

    private static ContactRule rule(@Nullable Integer months) {
        return new ContactRule(months, Said.verbatim("invented"));
    }

    @Test
    void whoAnsweredIsReachedAsAnsweredWhateverTheRule() {
        for (var months : Arrays.asList(null, 0, 24)) {
            assertThat(rule(months).permits(false, VISIT, VISIT)).isFalse();
            assertThat(rule(months).permits(true, VISIT, VISIT.plusYears(9))).isTrue();
        }
    }

    @Test
    void whoWasNeverAskedIsReachedAsLongAsTheRuleSays() {
        assertThat(rule(null).permits(null, VISIT, VISIT.plusYears(9))).isTrue();
        assertThat(rule(0).permits(null, VISIT, VISIT)).isFalse();
        assertThat(rule(24).permits(null, VISIT, LocalDate.of(2026, 11, 25))).isTrue();
        assertThat(rule(24).permits(null, VISIT, LocalDate.of(2026, 11, 26))).isFalse();
    }
}
