package cornerbook.app.desk.bill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import cornerbook.app.book.bill.AgreedWork;
import cornerbook.app.book.bill.Bill;
import cornerbook.app.book.bill.BillLine;
import cornerbook.app.book.estimate.WorkAnswer;
import cornerbook.app.desk.link.MoneyLinks;
import cornerbook.app.door.Axe;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.corner.Corner;
import cornerbook.core.release.ChargedWork;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.joda.money.Money;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** Bills at the desk. Prices are invented. */
class BillPagesTest {
    private static final String VISIT = "demo-08-v7";

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private ServedShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = new ServedShop(folder, List.of(ServedShop.car("demo-08")));
    }

    private void agree() {
        AgreedWork.agree(shop.book(), VISIT, "CA-QC", Map.of("Pads", "100.00"));
    }

    private List<Bill> bills() {
        return shop.book().bills().of(VISIT);
    }

    @Test
    void whatWasAgreedIsBilledPaidAndGivenBack() throws Exception {
        agree();
        var page = chromium.open(shop.address(MoneyLinks.bill(VISIT)), 390);
        page.getByText("Make the bill").click();
        page.getByText("Bill 1 of").waitFor();
        assertThat(page.locator("main").innerText())
                .contains("Open: $114.98. In cash all of it is $115.00.", "All that was agreed is on a bill");
        page.getByLabel("Paid").fill("115.00");
        page.getByText("Note the payment").click();
        page.getByText("Nothing is open").waitFor();
        Axe.assertNoViolation(page, "a paid bill");

        var paper = text(shop.getBytes(MoneyLinks.billPdf(1)));
        assertThat(paper)
                .contains("Bill 1", "$100.00", "GST 5 % (invented)", "$9.98", "$114.98", "in cash: $115.00")
                .contains("guaranteed until 25 Feb 2027", "section 176")
                .doesNotContainIgnoringCase("from memory");

        page.getByText("Give it back").click();
        page.getByLabel("Why").selectOption("WRONG_CAR");
        page.getByLabel("More about it").fill("Came twice by mistake");
        page.getByText("Make the credit note").click();
        page.getByText("Credit note 2 of").waitFor();
        assertThat(text(shop.getBytes(MoneyLinks.billPdf(2))))
                .contains("Gives back bill 1: the wrong car or customer", "−$114.98")
                .doesNotContain("Came twice");
        assertThat(page.locator("main").innerText()).contains("Came twice by mistake");
        assertThat(shop.get(MoneyLinks.bills()).body())
                .contains("Credit note 2", "Bill 1", "given back by credit note 2");
    }

    /** A bill that was given back before it was paid is asked for no more; what was paid of it goes back, and only that. */
    @Test
    void aBillAndItsCreditNoteCancelOut() throws Exception {
        agree();
        for (var paid : List.of("0", "14.98")) {
            assertThat(post("", Map.of("key.0", "Pads", "take.0", "1")).statusCode())
                    .isEqualTo(303);
            var number = bills().getLast().number();
            if (!paid.equals("0")) {
                assertThat(post("/paid", Map.of("number", String.valueOf(number), "way", "CARD", "amount", paid))
                                .statusCode())
                        .isEqualTo(303);
            }
            assertThat(post("/credit", Map.of("number", String.valueOf(number), "reason", "WRONG_CAR"))
                            .statusCode())
                    .isEqualTo(303);
        }
        var page = shop.get(MoneyLinks.bill(VISIT)).body();
        assertThat(page.split("cancel out: nothing is to be paid", -1))
                .as("the first bill and its note")
                .hasSize(3);
        assertThat(page)
                .contains("To give back: $14.98.", "What is to be given back stands on the credit note.")
                .doesNotContain("Open:");
        assertThat(page.split("Note the payment", -1)).as("what goes back").hasSize(2);
        assertThat(shop.get(MoneyLinks.bills()).body())
                .contains("to give back: $14.98")
                .doesNotContain("open: ");
        assertThat(text(shop.getBytes(MoneyLinks.billPdf(2))))
                .contains("cancel out")
                .doesNotContain("Open:");
        assertThat(post("/paid", Map.of("number", "4", "way", "CARD", "amount", "14.98"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(shop.get(MoneyLinks.bill(VISIT)).body()).doesNotContain("Note the payment");
    }

    /** A part is paid by card and the rest in cash: what is paid in cash is that rest, and no cent of it stays open. */
    @Test
    void theRestOfABillIsPaidInCash() throws Exception {
        agree();
        assertThat(post("", Map.of("key.0", "Pads", "take.0", "1")).statusCode())
                .isEqualTo(303);
        assertThat(post("/paid", Map.of("number", "1", "way", "CARD", "amount", "50.01"))
                        .statusCode())
                .isEqualTo(303);
        // 114.98 less 50.01 are 64.97, and to the nearest five cents 64.95.
        assertThat(shop.get(MoneyLinks.bill(VISIT)).body()).contains("Open: $64.97. In cash all of it is $64.95.");
        assertThat(post("/paid", Map.of("number", "1", "way", "CASH", "amount", "64.95"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(bills().getFirst().open().isZero()).isTrue();
    }

    /** As the field shows the amount in French it is taken. */
    @Test
    void aBillIsPaidWithTheCommaThatTheFieldShows() throws Exception {
        agree();
        assertThat(post("", Map.of("key.0", "Pads", "take.0", "1")).statusCode())
                .isEqualTo(303);
        assertThat(shop.send(shop.request(MoneyLinks.bill(VISIT)).header("Accept-Language", "fr"))
                        .body())
                .contains("value=\"114,98\"");
        assertThat(post("/paid", Map.of("number", "1", "way", "CARD", "amount", "114,98"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(bills().getFirst().open().isZero()).isTrue();
    }

    private static String text(byte[] pdf) throws Exception {
        try (var document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("[\\s\u00a0\u202f]+", " ");
        }
    }

    @Test
    void whatCannotBeIsOneSentenceAndChangesNothing() throws Exception {
        refused("Nothing was agreed", "", Map.of());
        agree();
        refused("The bill has no line", "", Map.of());
        refused("at most $114.98", "", Map.of("key.0", "Pads", "take.0", "1", "more.0", "Bolt", "more-amount.0", "5"));
        refused("is no amount in CAD", "", Map.of("more.0", "Bolt", "more-amount.0", "much"));
        assertThat(bills()).isEmpty();
        assertThat(post("", Map.of("key.0", "Pads", "take.0", "1")).statusCode())
                .isEqualTo(303);
        refused("not more than what is open", "/paid", Map.of("number", "1", "way", "CARD", "amount", "115"));
        refused("A payment is made", "/paid", Map.of("number", "1", "way", "SHELLS", "amount", "1"));
        refused("written as", "/paid", Map.of("number", "1", "way", "CARD", "amount", "1", "on", "now"));
        refused("Say why the bill is given back", "/credit", Map.of("number", "1"));
        assertThat(bills())
                .singleElement()
                .satisfies(bill -> assertThat(bill.payments()).isEmpty());
        assertThat(post("/paid", Map.of("number", "7", "way", "CARD", "amount", "1"))
                        .statusCode())
                .isEqualTo(404);
        for (var number : List.of("9", "x", "99999999999")) {
            assertThat(shop.get(MoneyLinks.bills() + "/" + number + ".pdf").statusCode())
                    .isEqualTo(404);
        }
    }

    private HttpResponse<String> post(String where, Map<String, String> fields) throws Exception {
        var all = new HashMap<>(fields);
        all.put("id", UUID.randomUUID().toString());
        return shop.post(MoneyLinks.bill(VISIT) + where, all);
    }

    private void refused(String sentence, String where, Map<String, String> fields) throws Exception {
        var answer = post(where, fields);
        assertThat(answer.statusCode()).as(sentence).isEqualTo(422);
        assertThat(answer.body()).contains(sentence).doesNotContain("Exception");
    }

    private void fitted(String id, Measure measure, Corner corner) {
        shop.book().readings().add(VISIT, List.of(new Reading(id, measure, corner, null, null, 1, "done", null, null)));
    }

    /** What nobody agreed to is on no bill; what was done without charge stands there at nothing, with its reason, once. */
    @Test
    void workWithoutChargeStandsOnTheBillAtNothingAndWhatIsHeldDoesNot() throws Exception {
        agree();
        fitted("pads", Measure.PADS_REPLACED, Corner.LF);
        fitted("hose", Measure.BRAKE_HOSE_REPLACED, Corner.RF);
        shop.book()
                .estimates()
                .answer(new WorkAnswer(
                        "free",
                        VISIT,
                        ChargedWork.find("BRAKE_HOSE.RF").orElseThrow(),
                        WorkAnswer.Kind.WITHOUT_CHARGE,
                        null,
                        "SAFETY",
                        "Ada",
                        AgreedWork.NOW));
        var page = chromium.open(shop.address(MoneyLinks.bill(VISIT)), 1180);
        assertThat(page.locator("main").innerText())
                .contains("Done, and not agreed: brake pads, front axle.", "Brake hose, right front", "$0.00");
        Axe.assertNoViolation(page, "a bill with work without charge");
        page.getByText("Make the bill").click();
        page.getByText("Bill 1 of").waitFor();
        assertThat(bills().getFirst().total().total()).isEqualTo(Money.parse("CAD 114.98"));
        assertThat(bills().getFirst().lines())
                .extracting(BillLine::words, BillLine::detail, BillLine::amount)
                .contains(tuple(
                        "Brake hose, right front",
                        "Done without charge: had to be done for safety before anybody could be asked",
                        Money.parse("CAD 0.00")));
        var paper = text(shop.getBytes(MoneyLinks.billPdf(1)));
        assertThat(paper).contains("Brake hose, right front", "$0.00", "agreed", "Done without charge");
        assertThat(page.locator("#make ~ *, section[aria-labelledby=make]")
                        .first()
                        .innerText())
                .as("it is on a bill")
                .doesNotContain("Brake hose");
    }

    /** The bill of a place takes no line that was not agreed, whichever page sends it. */
    @Test
    void aLineThatIsNotAgreedIsRefusedWhoeverSendsIt() throws Exception {
        agree();
        refused(
                "not agreed",
                "",
                Map.of("id", UUID.randomUUID().toString(), "key.0", "WORK.PADS.FRONT", "take.0", "1"));
    }
}
