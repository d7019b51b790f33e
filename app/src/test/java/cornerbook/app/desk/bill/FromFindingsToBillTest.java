package cornerbook.app.desk.bill;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import cornerbook.app.book.price.PriceKey;
import cornerbook.app.book.price.PriceRow;
import cornerbook.app.book.price.PriceValue;
import cornerbook.app.book.price.TaxPlace;
import cornerbook.app.desk.Links;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.core.price.Job;
import java.nio.file.Path;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** The whole way on one tablet, with its clicks counted. Prices are invented. */
class FromFindingsToBillTest {
    private static final String VISIT = "demo-03-v7";

    /** Estimate, give it, customer answers here, go on, I agree, back, bill, make the bill; beside them an answer to each line, and a name drawn. */
    private static final int CLICKS_BESIDE_ANSWERS = 8;

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @Test
    void aBillTakesEightClicksBesideTheAnswersAndTheName(@TempDir Path folder) {
        try (var shop = new ServedShop(folder, List.of(ServedShop.car("demo-03")))) {
            var day = ServedShop.TODAY;
            var now = ServedShop.CLOCK.instant();
            shop.book().prices().keep("p", new TaxPlace("CA-QC", CurrencyUnit.CAD, day, List.of()), "", now);
            var prices = List.of(
                    new PriceRow(PriceKey.HOUR, PriceValue.of(Money.parse("CAD 120.00")), day, "", now),
                    new PriceRow(PriceKey.of(Job.BRAKE_SERVICE), new PriceValue(25, null, null), day, "", now));
            shop.book().prices().keep("r", prices);

            var page = chromium.newPage(1180, 820);
            page.addInitScript("addEventListener('click', event => { if (event.isTrusted && event.target.closest('a, button, input'))"
                    + " localStorage.clicks = Number(localStorage.clicks ?? 0) + 1; }, true)");
            page.navigate(shop.address(Links.findings(VISIT)));
            page.getByText("Estimate", new Page.GetByTextOptions().setExact(true)).click();
            page.getByText("Give this estimate").click();
            page.getByText("Customer answers here").click();
            var lines = page.locator("fieldset:has(input)");
            int answers = lines.count();
            for (int line = 0; line < answers; line++) {
                lines.nth(line).locator("input").first().click();
            }
            page.getByText("Go on").click();
            sign(page);
            page.getByText("I agree").click();
            page.getByText("Back to the shop").click();
            page.getByText("Bill", new Page.GetByTextOptions().setExact(true)).click();
            page.getByText("Make the bill").click();
            page.getByText("Bill 1 of").waitFor();

            assertThat(answers).isPositive();
            assertThat(Integer.parseInt((String) page.evaluate("localStorage.clicks")))
                    .isEqualTo(CLICKS_BESIDE_ANSWERS + answers);
            // 50.00, 2.50 and 4.9875 (by hand).
            assertThat(shop.book().bills().find(1).orElseThrow().total().total()).isEqualTo(Money.parse("CAD 57.49"));
        }
    }

    private static void sign(Page page) {
        page.locator(".sign svg").scrollIntoViewIfNeeded();
        var box = page.locator(".sign svg").boundingBox();
        page.mouse().move(box.x + 40, box.y + 40);
        page.mouse().down();
        page.mouse().move(box.x + 160, box.y + 80);
        page.mouse().up();
    }
}
