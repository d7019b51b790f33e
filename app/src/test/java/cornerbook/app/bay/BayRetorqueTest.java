package cornerbook.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.car.Visit;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** A car comes in on the wheels that were fitted at the visit before, which nobody tightened again. */
class BayRetorqueTest extends TabletEntries {
    private static final double DUE_AFTER_KM = 80;

    @Test
    void aRetorqueThatNobodyRecordedNeedsTheTorqueOrAReason() throws Exception {
        leave();
        comesAgain("soon", DUE_AFTER_KM - 1);
        assertThat(cautions("soon")).doesNotContain("RETORQUE");
        comesAgain("late", DUE_AFTER_KM);
        assertThat(cautions("late")).contains("RETORQUE");
        var silent = answer("late", entry("departure", Map.of("reasons", Map.of())));
        assertThat(silent.path("sentence").stringValue())
                .contains("The wheels were due to be tightened again after they were fitted, and nobody recorded it.");
        var reason = Map.of("RETORQUE", "The owner's garage did it.");
        assertThat(answer("late", entry("departure", Map.of("reasons", reason)))
                        .path("status")
                        .stringValue())
                .isEqualTo("stored");
        comesAgain("next", 5 * DUE_AFTER_KM);
        assertThat(cautions("next")).as("answered at the visit between").doesNotContain("RETORQUE");
    }

    /** Once it is recorded which wheels it leaves on, their torque is asked for as after any fitting. */
    @Test
    void wheelsThatGoOnAskForTheirTorqueInstead() throws Exception {
        var wheels = leave();
        comesAgain("late", DUE_AFTER_KM);
        var on = entry("leaving", Map.of("wheels", wheels, "shown", Map.of()));
        assertThat(answer("late", on).path("status").stringValue()).isEqualTo("stored");
        assertThat(answer("late", entry("departure", Map.of("reasons", Map.of())))
                        .path("sentence")
                        .stringValue())
                .contains("LF is not torqued");
    }

    @Test
    void aRetorqueThatWasRecordedIsDone() throws Exception {
        leave();
        var fitted = shop.visit(visitId);
        shop.book.retorques().record(visitId, fitted.date(), fitted.odometerKm() + 60, 120, null);
        comesAgain("late", DUE_AFTER_KM);
        assertThat(cautions("late")).doesNotContain("RETORQUE");
    }

    private void comesAgain(String id, double afterKm) {
        var fitted = shop.visit(visitId);
        shop.book
                .visits()
                .add(
                        car.vehicle().id(),
                        new Visit(
                                id,
                                fitted.date().plusDays(1),
                                fitted.odometerKm() + afterKm,
                                fitted.leftOn(),
                                Map.of(),
                                List.of()));
    }

    private List<String> cautions(String id) throws Exception {
        return shop.get("/bay/visits/" + id + "/sheet.json")
                .path("en")
                .path("metric")
                .path("cautions")
                .valueStream()
                .map(caution -> caution.path("key").stringValue())
                .toList();
    }

    private JsonNode answer(String id, ObjectNode entry) throws Exception {
        return BayShop.JSON
                .readTree(shop.post(id, List.of(entry)).body())
                .path("answers")
                .path(0);
    }
}
