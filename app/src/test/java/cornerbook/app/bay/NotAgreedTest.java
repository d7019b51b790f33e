package cornerbook.app.bay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import cornerbook.app.book.customer.ContactAnswer;
import cornerbook.app.book.estimate.Agreement;
import cornerbook.app.book.estimate.Estimate;
import cornerbook.app.book.estimate.EstimateLine;
import cornerbook.app.book.estimate.WorkOfVisit;
import cornerbook.core.coming.Channel;
import cornerbook.core.coming.Purpose;
import cornerbook.core.price.Tax;
import cornerbook.core.price.TaxCode;
import cornerbook.words.Language;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

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

    /** What was freed is looked at when the car comes next: nobody asks the customer for it today. */
    @Test
    void whatIsToBeDoneAtTheNextVisitIsNotAskedAtThisOne() throws Exception {
        var stuck = entry(
                "reading", Map.of("measure", "PAD_MOVEMENT", "corner", "LF", "spot", "INNER", "written", "seized"));
        assertThat(statuses(stuck)).containsOnly("stored");
        assertThat(keys()).contains("PAD.LF.SERVICE_BRAKE");
        var free = entry("reading", Map.of("measure", "PAD_MOVEMENT_AFTER_SERVICE", "corner", "LF", "written", "free"));
        assertThat(statuses(free)).containsOnly("stored");
        assertThat(keys()).doesNotContain("PAD.LF.SERVICE_BRAKE");
    }

    private List<String> keys() throws Exception {
        return state().path("advised")
                .valueStream()
                .map(each -> each.path("key").stringValue())
                .toList();
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

    private static final String PADS = "PADS.FRONT";

    private void estimate(String id, String key, @Nullable String advice, String amount) {
        shop.book
                .estimates()
                .keep(new Estimate(
                        id,
                        visitId,
                        0,
                        Language.ENGLISH,
                        TODAY,
                        TODAY,
                        "CA-ON",
                        CurrencyUnit.CAD,
                        List.of(new EstimateLine(
                                key, "", advice, "Front pads", "", "", true, Money.parse("CAD " + amount))),
                        List.of(new Estimate.Named(new Tax(TaxCode.HST, new BigDecimal("13")), "1 RT")),
                        "",
                        NOW));
    }

    private JsonNode work() throws Exception {
        return state().path("asking")
                .path("works")
                .valueStream()
                .filter(each -> each.path("key").stringValue().equals(PADS))
                .findFirst()
                .orElseThrow();
    }

    /** Without an estimate nothing is held: the trade's first visit is not stopped by a list of prices. */
    @Test
    void nothingIsHeldBeforeThereIsAnEstimate() throws Exception {
        assertThat(statuses(done("PADS_REPLACED", "LF"))).containsExactly("stored");
        assertThat(state().has("asking")).isFalse();
        assertThat(shop.book.estimates().of(visitId).held(shop.visit(visitId))).isEmpty();
    }

    /** A page that knows nothing of the rule sends it, and it is held all the same: the door says so. */
    @Test
    void theDoorSaysWhatIsStillNotAgreed() throws Exception {
        estimate("e", ADVICE, ADVICE, "89.00");
        assertThat(statuses(done("PADS_REPLACED", "LF"))).containsExactly("stored");
        var closing = List.of(done("CALIPER_CLOSED", "LF"), done("PEDAL_PUMPED", null));
        assertThat(statuses(closing)).containsOnly("stored");
        leave();
        var reasons = new LinkedHashMap<String, String>();
        for (int i = 0; i < 20 && !String.join("", open(reasons)).contains("NOT_AGREED"); i++) {
            reasons.put(last(open(reasons)), "invented");
        }
        assertThat(open(reasons)).containsExactly("/entries/0/reasons/NOT_AGREED." + PADS);
        assertThat(work().path("holds").booleanValue()).isTrue();
        assertThat(work().path("stop").path("en").path("metric").stringValue())
                .isEqualTo("Stop: the customer has not agreed to this yet: brake pads, front axle");
        // 13 % of $89.00 are $11.57: 100.57.
        assertThat(work().path("amount").path("en").path("metric").stringValue())
                .contains("100.57");
        assertThat(work().path("amount").path("fr").path("metric").stringValue())
                .contains("100,57");
    }

    private List<String> open(Map<String, String> reasons) throws Exception {
        return send(entry("departure", Map.of("reasons", reasons, "acknowledgedBy", "Ottilie"))).stream()
                .map(answer -> answer.path("pointer").stringValue(""))
                .toList();
    }

    private static String last(List<String> pointers) {
        return pointers.getFirst().replaceFirst("^/entries/0/reasons/", "");
    }

    private static ObjectNode agreed(String price) {
        return entry("agreed", Map.of("work", PADS, "name", "Ottilie", "contact", "555 0100", "price", price));
    }

    @Test
    void anAgreementByTelephoneReleasesItOnceHoweverOftenItIsSent() throws Exception {
        estimate("e", "OTHER", null, "20.00");
        assertThat(statuses(done("PADS_REPLACED", "LF"))).containsExactly("stored");
        assertThat(shop.book.estimates().of(visitId).held(shop.visit(visitId))).hasSize(1);
        var entry = agreed("CAD 180.00");
        assertThat(statuses(entry)).containsExactly("stored");
        assertThat(statuses(entry)).containsExactly("already");
        var work = shop.book.estimates().of(visitId);
        assertThat(work.held(shop.visit(visitId))).isEmpty();
        assertThat(work.agreements()).singleElement().satisfies(kept -> {
            assertThat(kept.way()).isEqualTo(Agreement.Way.TELEPHONE);
            assertThat(kept.name()).isEqualTo("Ottilie");
            assertThat(kept.contact()).isEqualTo("555 0100");
            assertThat(kept.person()).isEqualTo("Ada");
            assertThat(kept.madeAt()).isEqualTo(Instant.parse("2026-11-25T10:00:00Z"));
            // 13 % of $180.00 are $23.40.
            assertThat(kept.words()).contains("Brake pads, front axle").contains("203.40");
        });
        assertThat(work.estimates()).hasSize(2);
        assertThat(work().path("settled").path("en").path("metric").stringValue())
                .isEqualTo("Ottilie agreed, by telephone");
    }

    /** The line that was offered is what the customer agrees to: no second one is made. */
    @Test
    void aLineOfTheLastEstimateIsAgreedToWhereItStands() throws Exception {
        estimate("e", ADVICE, ADVICE, "89.00");
        assertThat(statuses(done("PADS_REPLACED", "RF"), agreed("CAD 89.00"))).containsOnly("stored");
        var work = shop.book.estimates().of(visitId);
        assertThat(work.estimates()).hasSize(1);
        assertThat(work.held(shop.visit(visitId))).isEmpty();
    }

    @Test
    void itIsWithoutChargeWithItsReasonOrTakenBack() throws Exception {
        estimate("e", "OTHER", null, "20.00");
        assertThat(statuses(done("PADS_REPLACED", "LF"))).containsExactly("stored");
        var free = entry("work", Map.of("work", PADS, "answer", "WITHOUT_CHARGE", "reason", "SAFETY"));
        assertThat(statuses(free)).containsExactly("stored");
        assertThat(work().path("free").booleanValue()).isTrue();
        assertThat(work().path("settled").path("en").path("metric").stringValue())
                .isEqualTo("Without charge: had to be done for safety before anybody could be asked (Ada)");
        assertThat(statuses(entry("work", Map.of("work", PADS, "answer", "ASKED_AGAIN"))))
                .containsExactly("stored");
        assertThat(shop.book.estimates().of(visitId).held(shop.visit(visitId))).hasSize(1);
        var fitted = shop.readings(visitId).getLast().id();
        var back = entry(
                "reading",
                Map.of(
                        "measure", "PADS_REPLACED",
                        "corner", "LF",
                        "written", "not done",
                        "shown", fitted,
                        "reason", "TAKEN_BACK"));
        assertThat(statuses(back)).containsExactly("stored");
        assertThat(shop.book.estimates().of(visitId).held(shop.visit(visitId))).isEmpty();
        assertThat(shop.readings(visitId).getLast().reason()).contains("had not agreed");
    }

    /** Bad input is told in one sentence and changes nothing. */
    @Test
    void whatCannotBeIsRefused() throws Exception {
        estimate("e", "OTHER", null, "20.00");
        var before = shop.book.estimates().of(visitId);
        assertThat(statuses(
                        agreed("a lot"),
                        agreed("CAD -1.00"),
                        agreed("CAD 1.005"),
                        agreed("USD 1.00"),
                        with(agreed("CAD 1.00"), "work", "PADS.LF"),
                        with(agreed("CAD 1.00"), "name", ""),
                        entry("agreed", Map.of("work", PADS, "name", "Ottilie", "price", "CAD 1.00")),
                        entry("work", Map.of("work", PADS, "answer", "WITHOUT_CHARGE")),
                        entry("work", Map.of("work", PADS, "answer", "AS_LINE", "line", "OTHER")),
                        entry("work", Map.of("work", PADS, "answer", "FREE"))))
                .containsOnly("refused");
        assertThat(shop.book.estimates().of(visitId).estimates()).isEqualTo(before.estimates());
        assertThat(shop.book.estimates().of(visitId).agreements()).isEqualTo(before.agreements());
        assertThat(shop.book.estimates().of(visitId).answers()).isEmpty();
    }

    /** Who does not want to be called is not offered to be called. */
    @Test
    void theNumberGoesAlongOnlyWhereTheCustomerMayBeCalled() throws Exception {
        estimate("e", "OTHER", null, "20.00");
        assertThat(state().path("asking").path("mayCall").booleanValue()).isTrue();
        assertThat(state().path("asking").path("telephone").stringValue(""))
                .isEqualTo(car.customer().phone());
        shop.book
                .contacts()
                .add(
                        "no",
                        car.customer().id(),
                        List.of(new ContactAnswer(
                                Purpose.SAFETY, Channel.TELEPHONE, false, "Please do not call", "Ada", NOW)));
        assertThat(state().path("asking").path("mayCall").booleanValue()).isFalse();
        assertThat(state().path("asking").has("telephone")).isFalse();
    }

    /** What waits for an answer goes along: only the last estimate can be answered. */
    @Test
    void whatWaitsForAnAnswerCanStillBeAnswered() throws Exception {
        estimate("e", "OTHER", null, "20.00");
        assertThat(statuses(done("PADS_REPLACED", "LF"), agreed("CAD 180.00"))).containsOnly("stored");
        var work = shop.book.estimates().of(visitId);
        assertThat(work.last().orElseThrow().lines())
                .extracting(EstimateLine::key)
                .containsExactly("OTHER", "WORK." + PADS);
        assertThat(work.standing())
                .extracting(each -> each.line().key(), WorkOfVisit.Standing::isOpen)
                .containsExactly(tuple("OTHER", true), tuple("WORK." + PADS, false));
    }

    /** A line by hand is named by a person; what the car came for is no such line. */
    @Test
    void anAgreedLineOfTheDeskCanBeNamed() throws Exception {
        estimate("e", "OWN.Front pads", null, "80.00");
        agree("yes", true);
        assertThat(statuses(done("PADS_REPLACED", "LF"))).containsExactly("stored");
        assertThat(state().path("asking")
                        .path("lines")
                        .valueStream()
                        .map(line -> line.path("key").stringValue()))
                .containsExactly("OWN.Front pads");
        var named = entry("work", Map.of("work", PADS, "answer", "AS_LINE", "line", "OWN.Front pads"));
        assertThat(statuses(named)).containsExactly("stored");
        assertThat(work().path("settled").path("en").path("metric").stringValue())
                .isEqualTo("Ottilie agreed, by word");
        assertThat(shop.book.estimates().of(visitId).held(shop.visit(visitId))).isEmpty();
    }
}
