package cornerbook.core.visit;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.corner.Corner;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RetorqueTest {
    private static final Reading TORQUE = Cars.reading(Measure.WHEEL_TORQUE, Corner.LF, "S-LF", null, 140);

    @Test
    void wheelsThatStandElsewhereAskForOne() {
        assertThat(after(Cars.at("W-"), List.of())).isPresent();
    }

    @Test
    void theSameWheelsOffAndOnAgainAskForOne() {
        assertThat(after(Cars.at("S-"), List.of(TORQUE))).isPresent();
        assertThat(after(Map.of(), List.of(TORQUE))).isPresent();
    }

    @Test
    void wheelsThatNobodyTouchedAskForNone() {
        assertThat(after(Cars.at("S-"), List.of())).isEmpty();
        assertThat(after(Map.of(), List.of())).isEmpty();
    }

    private static Optional<Retorque> after(Map<Corner, String> leftOn, List<Reading> readings) {
        var visit = new Visit("v", Cars.AUTUMN, 48_000, null, Cars.at("S-"), leftOn, readings, List.of(), null, null);
        return Retorque.after(Cars.history(visit), visit);
    }
}
