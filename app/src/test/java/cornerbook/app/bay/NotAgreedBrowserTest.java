package cornerbook.app.bay;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FormData;
import com.microsoft.playwright.options.RequestOptions;
import cornerbook.app.book.estimate.Estimate;
import cornerbook.app.book.estimate.EstimateLine;
import cornerbook.app.book.people.Secret;
import cornerbook.app.desk.Links;
import cornerbook.app.door.Axe;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.words.Language;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

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
            assertThat(ask).hasAttribute("href", Links.agree(VISIT) + "?way=TELEPHONE");

            var secret = Secret.make();
            shop.book.estimates().link("l", "e", Secret.hash(secret), "", now);
            var address = shop.address(Links.AGREE + secret + Links.visit(VISIT));
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
            org.assertj.core.api.Assertions.assertThat(seen.find()).isTrue();
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
}
