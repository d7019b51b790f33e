package cornerbook.app.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.core.visit.Limit;
import org.junit.jupiter.api.Test;

class LimitsFileTest {
    @Test
    void everyRowHasACitationAndEveryKindAHouseRule() {
        var limits = LimitsFile.load();
        assertThat(limits).allSatisfy(row -> assertThat(row.citation()).isNotBlank());
        for (var kind : Limit.Kind.values()) {
            assertThat(limits)
                    .anyMatch(row -> row.kind() == kind && row.jurisdiction().equals("*"));
        }
    }

    @Test
    void aBadRowIsNamedByLine() {
        assertThatThrownBy(() -> LimitsFile.parse("head\n*,TREAD_LEGAL,,deep,,,source\n"))
                .hasMessageContaining("line 2")
                .hasMessageContaining("expected a number");
        assertThatThrownBy(() -> LimitsFile.parse("head\n*,TREAD_LEGAL,,1.6,,,\n"))
                .hasMessageContaining("line 2, citation");
    }
}
