package cornerbook.app.bay;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FormData;
import com.microsoft.playwright.options.RequestOptions;
import cornerbook.app.book.estimate.Estimate;
import cornerbook.app.book.estimate.EstimateLine;
import cornerbook.app.book.estimate.WorkAnswer;
import cornerbook.app.book.people.Secret;
import cornerbook.app.book.price.PriceKey;
import cornerbook.app.book.price.PriceRow;
import cornerbook.app.book.price.PriceValue;
import cornerbook.app.book.price.TaxPlace;
import cornerbook.app.desk.link.MoneyLinks;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.app.door.Axe;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.core.price.Job;
import cornerbook.core.price.Tax;
import cornerbook.core.price.TaxCode;
import cornerbook.words.Language;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Work that is not agreed stands in the way at its step, and goes from there by itself once the customer has agreed. */
class NotAgreedBrowserTest {
    private static final String VISIT = "demo-03-v7";
    private static final String ADVICE = "PAD.LF.SERVICE_BRAKE";

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @Test
    void theStepSaysStopUntilTheCustomerHasAgreed(@TempDir Path folder) {
        try (var shop = new BayShop(folder, List.of(ServedShop.car("demo-03")))) {
            var now = ServedShop.CLOCK.instant();
            shop.book
                    .estimates()
                    .keep(new Estimate(
                            "e",
                            VISIT,
                            0,
                            Language.ENGLISH,
                            ServedShop.TODAY,
                            ServedShop.TODAY,
                            "CA-QC",
                            CurrencyUnit.CAD,
                            List.of(new EstimateLine(
                                    ADVICE, "", ADVICE, "Free", "", "", false, Money.parse("CAD 54.00"))),
                            List.of(),
                            "",
                            now));
            Page page = chromium.newPage(1180, 820);
            page.addInitScript("localStorage.setItem('person', 'Ada')");
            page.navigate(shop.address("/bay/visits/" + VISIT + "#BRAKE.LF"));
            var stop = page.locator(".stops").getByText("Free, clean and lubricate");
            assertThat(stop).containsText("Stop: the customer has not agreed to this yet");
            Axe.assertNoViolation(page, "a step that is stopped");
            var ask = page.locator(".stops a").getByText("answered by telephone");
            assertThat(ask).hasAttribute("href", MoneyLinks.agree(VISIT) + "?way=TELEPHONE");

            var secret = Secret.make();
            shop.book.estimates().link("l", "e", Secret.hash(secret), "", now);
            var address = shop.address(MoneyLinks.AGREE + secret + VisitLinks.visit(VISIT));
            var shown = page.request()
                    .post(
                            address,
                            RequestOptions.create()
                                    .setForm(FormData.create()
                                            .set("step", "look")
                                            .set("estimate", "e")
                                            .set("pick.0", "0")))
                    .text();
            var seen = Pattern.compile("name=\"seen\" value=\"([0-9a-f]{64})\"").matcher(shown);
            assertThat(seen.find()).isTrue();
            var answer = page.request()
                    .post(
                            address,
                            RequestOptions.create()
                                    .setForm(FormData.create()
                                            .set("step", "keep")
                                            .set("id", UUID.randomUUID().toString())
                                            .set("estimate", "e")
                                            .set("seen", seen.group(1))
                                            .set("name", "Ottilie")
                                            .set("pick.0", "0")));
            assertThat(answer).isOK();
            assertThat(stop).hasCount(0);
        }
    }

    /** An estimate for something else: the pads are beyond it. */
    private static BayShop withEstimate(Path folder) {
        var shop = new BayShop(folder, List.of(ServedShop.car("demo-03")));
        var now = ServedShop.CLOCK.instant();
        shop.book
                .prices()
                .keep(
                        "place",
                        new TaxPlace(
                                "CA-QC",
                                CurrencyUnit.CAD,
                                ServedShop.TODAY,
                                List.of(
                                        new TaxPlace.OfShop("GST", null, "1 RT"),
                                        new TaxPlace.OfShop("QST", null, "2 TQ"))),
                        "",
                        now);
        shop.book
                .prices()
                .keep(
                        "pads",
                        List.of(new PriceRow(
                                PriceKey.of(Job.PADS),
                                PriceValue.of(Money.parse("CAD 100.00")),
                                ServedShop.TODAY,
                                "",
                                now)));
        shop.book
                .estimates()
                .keep(new Estimate(
                        "e",
                        VISIT,
                        0,
                        Language.ENGLISH,
                        ServedShop.TODAY,
                        ServedShop.TODAY,
                        "CA-QC",
                        CurrencyUnit.CAD,
                        List.of(new EstimateLine(
                                "OWN.Wipers", "", null, "Wipers", "", "", false, Money.parse("CAD 20.00"))),
                        List.of(
                                new Estimate.Named(new Tax(TaxCode.GST, new BigDecimal("5")), "1 RT"),
                                new Estimate.Named(new Tax(TaxCode.QST, new BigDecimal("9.975")), "2 TQ")),
                        "",
                        now));
        return shop;
    }

    private static Locator pads(Page page) {
        var field = page.locator("[id='f.PADS_REPLACED.LF.']");
        field.evaluate("each => each.closest('details').open = true");
        return field;
    }

    private Page sheet(BrowserContext tablet, BayShop shop) {
        tablet.addInitScript("localStorage.setItem('person', 'Ada')");
        Page page = tablet.newPage();
        page.navigate(shop.address("/bay/visits/" + VISIT + "#BRAKE.LF"));
        assertThat(page.locator("#main h2")).isVisible();
        return page;
    }

    /** By touch: the entry is held with its amount, and one tap on what the customer said by telephone releases it. */
    @ParameterizedTest
    @ValueSource(ints = {1180, 390})
    void anEntryBeyondTheAgreementIsHeldUntilTheCustomerAgreedByTelephone(int width, @TempDir Path folder) {
        try (var shop = withEstimate(folder)) {
            var tablet = chromium.newTablet(width, 820);
            Page page = sheet(tablet, shop);
            var done = pads(page).locator("button[value='done']");
            done.tap();
            var below = page.locator("[id='f.PADS_REPLACED.LF..said']");
            // Revenu Québec's example: $100.00 and taxes are $114.98.
            assertThat(below).containsText("brake pads, front axle. It costs $114.98 with taxes.");
            assertThat(below).containsText("Agreed until now: $0.00; the bill may be at most $0.00");
            assertThat(page.locator("#needs")).isVisible();
            assertThat(below.locator("a[href^='tel:']")).isVisible();
            assertThat((Integer) page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                    .isLessThanOrEqualTo(0);
            page.evaluate(
                    "document.querySelectorAll('.bar, #steps, .next').forEach(bar => bar.style.position = 'static')");
            Axe.assertNoViolation(page, "work that is held at " + width);
            below.getByText("Agreed by telephone: $114.98 with taxes").tap();
            assertThat(below).containsText("agreed, by telephone");
            assertThat(page.locator("#needs")).isHidden();
            assertThat(page.locator("#link")).hasText("All in the book");
            var work = shop.book.estimates().of(VISIT);
            assertThat(work.held(shop.visit(VISIT))).isEmpty();
            assertThat(work.agreements())
                    .singleElement()
                    .satisfies(kept -> assertThat(kept.words()).contains("$114.98"));
        }
    }

    /** Without a link it is held and released all the same; a reload keeps both, and nothing is lost. */
    @Test
    void withoutALinkItIsHeldAndReleasedAndKept(@TempDir Path folder) {
        try (var shop = withEstimate(folder)) {
            var tablet = chromium.newTablet(1180, 820);
            Page page = sheet(tablet, shop);
            assertThat(page.locator("#link")).hasText("All in the book");
            page.evaluate("navigator.serviceWorker.ready.then(() => true)");
            tablet.setOffline(true);
            pads(page).locator("button[value='done']").tap();
            var below = page.locator("[id='f.PADS_REPLACED.LF..said']");
            assertThat(below).containsText("It costs $114.98 with taxes.");
            assertThat(below).containsText("The estimate can be shown once the link is back.");
            page.reload();
            assertThat(page.locator("#needs")).isVisible();
            pads(page);
            assertThat(below).containsText("It costs $114.98 with taxes.");
            below.getByText("for safety, before anybody could be asked").tap();
            assertThat(below).containsText("Without charge: for safety, before anybody could be asked (Ada)");
            page.reload();
            pads(page);
            assertThat(below).containsText("Without charge");
            assertThat(page.locator("#needs")).isHidden();
            tablet.setOffline(false);
            assertThat(page.locator("#link")).hasText("All in the book");
            var work = shop.book.estimates().of(VISIT);
            assertThat(work.free(shop.visit(VISIT)))
                    .extracting(WorkAnswer::reason)
                    .containsExactly("SAFETY");
        }
    }

    /** One tap puts the estimate with this work before the customer; another takes the entry back. */
    @Test
    void theEstimateIsShownHereAndTheEntryIsTakenBack(@TempDir Path folder) {
        try (var shop = withEstimate(folder)) {
            var tablet = chromium.newTablet(1180, 820);
            Page page = sheet(tablet, shop);
            pads(page).locator("button[value='done']").tap();
            var below = page.locator("[id='f.PADS_REPLACED.LF..said']");
            assertThat(page.locator("#link")).hasText("All in the book");
            below.getByText("Not done: take it back").tap();
            assertThat(below.locator(".note")).hasCount(0);
            assertThat(page.locator("#needs")).isHidden();
            assertThat(page.locator("#link")).hasText("All in the book");
            pads(page).locator("button[value='done']").tap();
            below.locator("button", new Locator.LocatorOptions().setHasText("Typed wrong"))
                    .tap();
            below.getByText("Show the estimate here").tap();
            assertThat(page.locator("main")).containsText("Brake pads, front axle");
            assertThat(page).hasURL(Pattern.compile(".*/visits/" + VISIT + "/agree"));
        }
    }
}
