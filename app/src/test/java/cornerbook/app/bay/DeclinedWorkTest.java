package cornerbook.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.work.Declined;
import cornerbook.app.desk.link.VisitLinks;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** What was advised and the customer did not want, said at hand-over in the bay or at the desk. */
class DeclinedWorkTest extends TabletEntries {
    private JsonNode advised(String key) throws Exception {
        return state().path("advised")
                .valueStream()
                .filter(each -> each.path("key").stringValue().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private void readThinPads() throws Exception {
        assertThat(statuses(pad("INNER", "2.0"), pad("OUTER", "4.5"))).containsOnly("stored");
    }

    @Test
    void oneTapSaysThatTheCustomerDoesNotWantItAndAnotherTakesItBack() throws Exception {
        readThinPads();
        var advised = advised("PAD.LF.REPLACE_PAIR");
        assertThat(advised.path("sentence").path("en").path("metric").stringValue())
                .startsWith("Replace on both sides of the axle. The brake pads at LF");
        assertThat(advised.has("declinedBy")).isFalse();

        var tap = entry("declined", Map.of("advice", "PAD.LF.REPLACE_PAIR", "declined", true));
        assertThat(statuses(tap, tap)).containsExactly("stored", "already");
        var customer = car.customer().name();
        assertThat(advised("PAD.LF.REPLACE_PAIR").path("declinedBy").stringValue())
                .isEqualTo(customer);
        assertThat(Declined.standing(shop.book.records().notes(visitId).declined()))
                .singleElement()
                .satisfies(each -> {
                    assertThat(each.saidBy()).isEqualTo(customer);
                    assertThat(each.person()).isEqualTo("Ada");
                    assertThat(each.madeAt()).isEqualTo("2026-11-25T10:00:00Z");
                    assertThat(each.sentence()).contains("LF");
                });

        assertThat(statuses(entry("declined", Map.of("advice", "PAD.LF.REPLACE_PAIR", "declined", false))))
                .containsExactly("stored");
        assertThat(advised("PAD.LF.REPLACE_PAIR").has("declinedBy")).isFalse();
        assertThat(shop.book.records().notes(visitId).declined()).hasSize(2);
    }

    @Test
    void somebodyElseOfTheCustomersSideMaySayIt() throws Exception {
        readThinPads();
        assertThat(statuses(entry(
                        "declined",
                        Map.of("advice", "PAD.LF.REPLACE_PAIR", "declined", true, "saidBy", "Her brother Noé"))))
                .containsExactly("stored");
        assertThat(advised("PAD.LF.REPLACE_PAIR").path("declinedBy").stringValue())
                .isEqualTo("Her brother Noé");
    }

    @Test
    void whatNobodyAdvisedCannotBeDeclined() throws Exception {
        var answer = send(entry("declined", Map.of("advice", "PAD.LF.NOTHING", "declined", true)))
                .getFirst();
        assertThat(answer.path("status").stringValue()).isEqualTo("refused");
        assertThat(answer.path("pointer").stringValue()).isEqualTo("/entries/0/advice");
        assertThat(answer.path("sentence").stringValue()).startsWith("Nothing of the kind was advised");
        assertThat(shop.book.records().notes(visitId).declined()).isEmpty();
    }

    @Test
    void theDeskHasALineForEachAndKeepsWhoSaidSo() throws Exception {
        readThinPads();
        var page = shop.served().get(VisitLinks.findings(visitId)).body();
        assertThat(page).contains("What the customer does not want", "value=\"PAD.LF.REPLACE_PAIR\"");
        var fields = Map.of("advice", "PAD.LF.REPLACE_PAIR", "declined", "1", "saidBy", "Mme Ardent");
        assertThat(shop.served().post(VisitLinks.declined(visitId), fields).statusCode())
                .isEqualTo(303);
        assertThat(shop.served().get(VisitLinks.findings(visitId)).body()).contains("Declined by Mme Ardent.");
        assertThat(shop.served()
                        .post(VisitLinks.declined(visitId), Map.of("advice", "PAD.LF.REPLACE_PAIR"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(shop.served().get(VisitLinks.findings(visitId)).body()).doesNotContain("Declined by");
        assertThat(shop.served()
                        .post(VisitLinks.declined(visitId), Map.of("advice", "NO", "declined", "1"))
                        .statusCode())
                .isEqualTo(422);
        var tooLong = Map.of("advice", "PAD.LF.REPLACE_PAIR", "declined", "1", "saidBy", "x".repeat(201));
        assertThat(shop.served().post(VisitLinks.declined(visitId), tooLong).statusCode())
                .isEqualTo(422);
    }
}
