package cornerbook.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.estimate.Agreement;
import cornerbook.app.book.estimate.Estimate;
import cornerbook.app.book.estimate.EstimateLine;
import cornerbook.words.Language;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** Work that the customer has not agreed to is stopped on the bay sheet, once there is an estimate. */
class NotAgreedTest extends TabletEntries {
    private static final String ADVICE = "PAD.LF.REPLACE_PAIR";
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final Instant NOW = Instant.parse("2026-11-25T11:00:00Z");

    private JsonNode advised() throws Exception {
        return state().path("advised")
                .valueStream()
                .filter(each -> each.path("key").stringValue().equals(ADVICE))
                .findFirst()
                .orElseThrow();
    }

    private String stop() throws Exception {
        return advised().path("stop").path("en").path("metric").stringValue("");
    }

    private void agree(String id, boolean agreed) {
        shop.book
                .estimates()
                .agree(
                        new Agreement(
                                id,
                                "e",
                                Agreement.Way.SPOKEN,
                                "Ottilie",
                                "",
                                Language.ENGLISH,
                                "Yes",
                                null,
                                Map.of(0, agreed),
                                "Ada",
                                NOW),
                        TODAY);
    }

    @Test
    void workIsStoppedAtItsCornerUntilItIsAgreed() throws Exception {
        assertThat(statuses(pad("INNER", "2.0"), pad("OUTER", "4.5"))).containsOnly("stored");
        assertThat(advised().has("stop")).as("before there is an estimate").isFalse();

        shop.book
                .estimates()
                .keep(new Estimate(
                        "e",
                        visitId,
                        0,
                        Language.ENGLISH,
                        TODAY,
                        TODAY,
                        "CA-ON",
                        CurrencyUnit.CAD,
                        List.of(new EstimateLine(ADVICE, "", ADVICE, "Pads", "", "", true, Money.parse("CAD 89.00"))),
                        List.of(),
                        "",
                        NOW));
        assertThat(stop())
                .startsWith("Stop: the customer has not agreed to this yet: ")
                .contains("brake pads at LF");
        assertThat(advised().path("corners").valueStream().map(JsonNode::stringValue))
                .containsExactly("LF");

        agree("no", false);
        assertThat(stop()).startsWith("Stop: the customer has declined this");
        agree("yes", true);
        assertThat(advised().has("stop")).isFalse();
    }
}
