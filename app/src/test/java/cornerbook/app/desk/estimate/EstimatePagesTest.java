package cornerbook.app.desk.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import cornerbook.app.book.estimate.Agreement;
import cornerbook.app.book.estimate.WorkOfVisit;
import cornerbook.app.book.price.PriceKey;
import cornerbook.app.book.price.PriceRow;
import cornerbook.app.book.price.PriceValue;
import cornerbook.app.book.price.TaxPlace;
import cornerbook.app.book.work.Declined;
import cornerbook.app.desk.link.MoneyLinks;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.app.door.Axe;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.core.price.Job;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** From the findings of an invented car to what its customer agrees to. Prices are invented. */
class EstimatePagesTest {
    private static final String CAR = "demo-03";
    private static final String VISIT = "demo-03-v7";

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private ServedShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = new ServedShop(folder, List.of(ServedShop.car(CAR)));
    }

    private void price() {
        var day = ServedShop.TODAY;
        var now = ServedShop.CLOCK.instant();
        shop.book().prices().keep("p", new TaxPlace("CA-QC", CurrencyUnit.CAD, day, List.of()), "", now);
        shop.book()
                .prices()
                .keep(
                        "r",
                        List.of(
                                new PriceRow(PriceKey.HOUR, PriceValue.of(Money.parse("CAD 120.00")), day, "", now),
                                new PriceRow(
                                        PriceKey.of(Job.BRAKE_SERVICE),
                                        new PriceValue(25, Money.parse("CAD 4.00"), null),
                                        day,
                                        "",
                                        now),
                                new PriceRow(
                                        PriceKey.of(Job.RETORQUE),
                                        new PriceValue(0, Money.parse("CAD 0.00"), null),
                                        day,
                                        "",
                                        now),
                                new PriceRow(
                                        PriceKey.of(Job.ALIGNMENT),
                                        new PriceValue(0, Money.parse("CAD 90.00"), null),
                                        day,
                                        "",
                                        now)));
    }

    private WorkOfVisit work() {
        return shop.book().estimates().of(VISIT);
    }

    private Page giveEstimate() {
        price();
        var page = chromium.open(shop.address(MoneyLinks.estimate(VISIT)), 1180);
        assertThat(page.locator("main").innerText())
                .contains("25 min at $120.00 an hour: $50.00; parts $4.00")
                .contains("no price yet")
                .contains("no charge")
                .doesNotContain("parts $0.00");
        page.getByLabel("Other work or part 1").fill("Wiper blades");
        page.getByLabel("Amount of other work 1").fill("31.50");
        page.getByText("Give this estimate").click();
        page.locator("#kept").waitFor();
        return page;
    }

    private static Locator pick(Page page, String matter, String answer) {
        return page.locator("fieldset", new Page.LocatorOptions().setHasText(matter))
                .first()
                .getByText(Pattern.compile("^" + answer));
    }

    /** With the hand: an answer to each line with a price, one step to read it, a name drawn, one tap. */
    @Test
    void theCustomerAnswersLineByLineAndSigns() throws Exception {
        var page = giveEstimate();
        page.getByText("Customer answers here").click();
        int answers = page.locator("fieldset:has(input)").count();
        for (int at = 0; at < answers; at++) {
            page.locator("fieldset:has(input)").nth(at).locator("input").last().check();
        }
        pick(page, "Free, clean", "Yes").click();
        pick(page, "Wiper blades", "Yes").click();
        assertThat(page.locator("main").innerText()).contains("LF left front, RF right front, LR left rear");
        Axe.assertNoViolation(page, "the customer's lines");
        page.getByText("Go on").click();
        page.locator(".sign svg").waitFor();
        // 54.00 and 31.50 are 85.50; 5 % are 4.275 and 9.975 % are 8.52862 (by hand): 4.28 and 8.53.
        assertThat(page.locator(".agreed-text").innerText())
                .contains("Together before taxes: $85.50", "GST 5 %: $4.28", "QST 9.975 %: $8.53", "In all: $98.31")
                .contains("No, although it concerns safety: Have the alignment measured");

        page.getByText("I agree").click();
        page.locator(".error").waitFor();
        assertThat(page.locator(".error").innerText()).contains("signature is missing");
        assertThat(work().agreements()).isEmpty();

        draw(page);
        page.getByText("I agree").click();
        page.getByText("Thank you").waitFor();
        var agreed = work().agreements().getFirst();
        assertThat(page.locator("main").innerText()).contains(agreed.hash());
        assertThat(agreed.way()).isEqualTo(Agreement.Way.SIGNED);
        assertThat(agreed.signature()).startsWith("M").contains("L");
        assertThat(agreed.words()).contains("In all: $98.31");
        assertThat(work().agreed()).hasSize(2);

        page.getByText("Back to the shop").click();
        assertThat(page.locator("#kept").innerText()).contains("Agreed with taxes: $98.31", "at most $98.31");
        assertThat(shop.book().bay().read(VISIT).declined())
                .extracting(Declined::sentence)
                .anySatisfy(sentence -> assertThat(sentence).contains("alignment"));
        var sheet = text(shop.getBytes(VisitLinks.handover(VISIT)));
        assertThat(sheet)
                .as("on the hand-over sheet")
                .containsIgnoringCase("declined")
                .contains("alignment")
                .as("all that was agreed, in a few words each")
                .contains("Pads: free, clean and lubricate (LF); Wiper blades");
        var paper = text(shop.getBytes(MoneyLinks.estimatePdf(VISIT, 0)));
        assertThat(paper)
                .contains(
                        "$98.31",
                        "agreed",
                        "no price yet",
                        "Signed:",
                        agreed.hash().substring(0, 20));
    }

    private static void draw(Page page) {
        page.locator(".sign svg").scrollIntoViewIfNeeded();
        var box = page.locator(".sign svg").boundingBox();
        page.mouse().move(box.x + 40, box.y + 40);
        page.mouse().down();
        page.mouse().move(box.x + 120, box.y + 90);
        page.mouse().move(box.x + 200, box.y + 30);
        page.mouse().up();
    }

    private static String text(byte[] pdf) throws Exception {
        try (var document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("[\\s\u00a0\u202f]+", " ");
        }
    }

    /** On the customer's own telephone, in the customer's language, without pairing. */
    @Test
    void theCustomerAnswersOverAnAddress() throws Exception {
        giveEstimate();
        var answer = shop.post(MoneyLinks.estimate(VISIT) + "/link", Map.of());
        var found = Pattern.compile(MoneyLinks.AGREE + "[\\w-]{43}").matcher(answer.body());
        assertThat(found.find()).isTrue();
        var page = chromium.open(shop.address(found.group()), 390);
        assertThat((Integer) page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                .isLessThanOrEqualTo(0);
        assertThat(page.locator("nav").count())
                .as("nothing of the shop's own pages")
                .isZero();
        var desk = chromium.open(shop.address(MoneyLinks.estimate(VISIT)), 390);
        assertThat((Integer) desk.evaluate("document.documentElement.scrollWidth - innerWidth"))
                .as("a kept estimate on a telephone")
                .isLessThanOrEqualTo(0);
        page.getByText("Go on").click();
        assertThat(page.locator(".error").innerText()).contains("Yes or no is still missing");
        for (var no : page.locator("fieldset:has(input)").all()) {
            no.locator("input").last().check();
        }
        page.getByText("Go on").click();
        page.locator("#name").fill("Ottilie");
        draw(page);
        page.getByText("I agree").click();
        page.getByText("Thank you").waitFor();
        assertThat(work().agreements())
                .singleElement()
                .satisfies(each -> assertThat(each.signature())
                        .as("who wants to sign may, with a finger")
                        .startsWith("M"))
                .satisfies(each -> assertThat(each.way()).isEqualTo(Agreement.Way.LINK))
                .satisfies(each -> assertThat(each.name()).isEqualTo("Ottilie"));
        assertThat((Integer) page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                .as("with the hash of the text")
                .isLessThanOrEqualTo(0);
        assertThat(work().agreed()).isEmpty();
        assertThat(shop.get(MoneyLinks.AGREE + "nobody-knows").statusCode()).isEqualTo(404);
    }

    private static void declineAll(Page page) {
        for (var no : page.locator("fieldset:has(input)").all()) {
            no.locator("input").last().check();
        }
        page.getByText("Go on").click();
    }

    /** Another line at the desk, given while a customer reads the estimate before it. */
    private void giveAnother(String words) throws Exception {
        int given = work().estimates().size();
        assertThat(post(Map.of(
                                "valid",
                                ServedShop.TODAY.toString(),
                                "own.0",
                                words,
                                "own-amount.0",
                                "40",
                                "turn",
                                String.valueOf(given)))
                        .statusCode())
                .isEqualTo(303);
        assertThat(work().estimates()).hasSize(given + 1);
    }

    /** On a tablet of the shop the page asks for the last estimate: answers to the one before are not taken for answers to it. */
    @Test
    void nobodyAgreesOnATabletToWhatTheyDidNotRead() throws Exception {
        giveEstimate();
        var page = chromium.open(shop.address(MoneyLinks.agree(VISIT)), 390);
        declineAll(page);
        giveAnother("Wipers");
        page.locator("#name").fill("Ottilie");
        draw(page);
        page.getByText("I agree").click();
        page.getByText("The shop has changed this estimate since you read it").waitFor();
        assertThat(work().agreements()).isEmpty();
        assertThat(page.locator("main").innerText()).contains("Wipers");

        declineAll(page);
        page.locator("#name").fill("Ottilie");
        draw(page);
        page.getByText("I agree").click();
        page.getByText("Thank you").waitFor();
        assertThat(work().agreements())
                .singleElement()
                .satisfies(each -> assertThat(each.estimateId())
                        .isEqualTo(work().estimates().getLast().id()));
    }

    @Test
    void nobodyAgreesOverAnAddressToWhatHasChanged() throws Exception {
        giveEstimate();
        var answer = shop.post(MoneyLinks.estimate(VISIT) + "/link", Map.of());
        var found = Pattern.compile(MoneyLinks.AGREE + "[\\w-]{43}").matcher(answer.body());
        assertThat(found.find()).isTrue();
        var page = chromium.open(shop.address(found.group()), 390);
        declineAll(page);
        giveAnother("Wipers");
        page.locator("#name").fill("Ottilie");
        page.getByText("I agree").click();
        page.getByText("can no longer be answered").waitFor();
        assertThat(work().agreements()).isEmpty();
        page.navigate(shop.address(found.group()));
        page.getByText("can no longer be answered").waitFor();
        assertThat(page.locator("form").count()).isZero();
    }

    /** A text that is not the one that was shown, by its hash. */
    @Test
    void onlyTheTextThatWasShownIsAgreedTo() throws Exception {
        giveEstimate();
        var estimate = work().estimates().getLast();
        var fields =
                new HashMap<>(Map.of("estimate", estimate.id(), "way", "SPOKEN", "name", "Ottilie", "step", "keep"));
        for (int at = 0; at < estimate.lines().size(); at++) {
            fields.put("pick." + at, "no");
        }
        fields.put("id", UUID.randomUUID().toString());
        for (var seen : List.of("", Agreement.hash("something else"))) {
            fields.put("seen", seen);
            var refused = shop.post(MoneyLinks.agree(VISIT), fields);
            assertThat(refused.statusCode()).isEqualTo(422);
            assertThat(refused.body()).contains("has changed this estimate since you read it");
        }
        assertThat(work().agreements()).isEmpty();
    }

    @Test
    void ofTwoEstimatesWrittenAtOnceTheSecondIsLookedAtAgain() throws Exception {
        giveEstimate();
        var second = Map.of("valid", ServedShop.TODAY.toString(), "own.0", "Wipers", "own-amount.0", "40", "turn", "0");
        refused("Meanwhile estimate 1 was given", second);
        assertThat(work().estimates()).hasSize(1);
        giveAnother("Wipers");
    }

    @Test
    void whatWasSaidByTelephoneIsWrittenDown() {
        var page = giveEstimate();
        page.getByText("Answered by telephone").click();
        for (var no : page.locator("fieldset:has(input)").all()) {
            no.locator("input").last().check();
        }
        page.getByText("Go on").click();
        page.locator("#contact").fill("555-0199");
        page.locator("#person").fill("Ida");
        page.getByText("Keep what was said").click();
        page.getByText("Kept.").waitFor();
        assertThat(work().agreements()).singleElement().satisfies(each -> {
            assertThat(each.way()).isEqualTo(Agreement.Way.TELEPHONE);
            assertThat(each.contact()).isEqualTo("555-0199");
            assertThat(each.person()).isEqualTo("Ida");
        });
    }

    @Test
    void whatCannotBeIsOneSentenceAndKeepsNothing() throws Exception {
        refused("say on the page of prices", Map.of("valid", ServedShop.TODAY.toString()));
        price();
        refused("today or later", Map.of("valid", "2020-01-01"));
        refused("today or later", Map.of("valid", "soon"));
        var valid = ServedShop.TODAY.toString();
        refused("has no line", Map.of("valid", valid));
        refused("findings have changed", Map.of("valid", valid, "key.0", "NOTHING.OF.IT", "take.0", "1"));
        refused("is no amount in CAD", Map.of("valid", valid, "own.0", "Wipers", "own-amount.0", "a lot"));
        refused("longer than", Map.of("valid", valid, "own.0", "w".repeat(1201), "own-amount.0", "1"));
        assertThat(work().estimates()).isEmpty();
        assertThat(shop.get(MoneyLinks.agree(VISIT)).statusCode()).isEqualTo(404);
        assertThat(shop.get(MoneyLinks.estimatePdf(VISIT, 0)).statusCode()).isEqualTo(404);
        assertThat(shop.get(MoneyLinks.estimate("nothing")).statusCode()).isEqualTo(404);
    }

    private HttpResponse<String> post(Map<String, String> fields) throws Exception {
        var all = new HashMap<>(fields);
        all.put("id", UUID.randomUUID().toString());
        return shop.post(MoneyLinks.estimate(VISIT), all);
    }

    private void refused(String sentence, Map<String, String> fields) throws Exception {
        var answer = post(fields);
        assertThat(answer.statusCode()).as(sentence).isEqualTo(422);
        assertThat(answer.body()).contains(sentence).doesNotContain("Exception");
    }
}
