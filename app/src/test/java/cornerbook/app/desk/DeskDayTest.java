package cornerbook.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import cornerbook.app.book.price.PriceKey;
import cornerbook.app.book.price.PriceRow;
import cornerbook.app.book.price.PriceValue;
import cornerbook.app.book.price.TaxPlace;
import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.desk.link.DayLinks;
import cornerbook.app.desk.link.StoreLinks;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.core.price.Job;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/**
 * A clerk's day on one screen, from the first page on, with the clicks of each part counted; what is typed and scanned comes beside them.
 * Prices, rack and supplier are invented.
 */
class DeskDayTest {
    private static final String CAR = "demo-03";
    private static final String VISIT = "demo-03-v7";

    /** Of the estimate without an answer to each line and the drawn name. */
    private static final Map<String, Integer> CLICKS =
            Map.of("search", 1, "appointment", 2, "order", 3, "shelf", 3, "estimate and bill", 10, "reminder", 3);

    private final Map<String, Integer> clicks = new LinkedHashMap<>();
    private int clicked;

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private ServedShop shop;

    private Page page;

    @BeforeEach
    void open(@TempDir Path folder) throws Exception {
        shop = new ServedShop(folder, ServedShop.cars());
        shop.waitUntilJudged();
        var day = ServedShop.TODAY;
        var now = ServedShop.CLOCK.instant();
        shop.book().prices().keep("p", new TaxPlace("CA-QC", CurrencyUnit.CAD, day, List.of()), "", now);
        var prices = List.of(
                new PriceRow(PriceKey.HOUR, PriceValue.of(Money.parse("CAD 120.00")), day, "", now),
                new PriceRow(PriceKey.of(Job.BRAKE_SERVICE), new PriceValue(25, null, null), day, "", now));
        shop.book().prices().keep("r", prices);
        assertThat(shop.post(
                                StoreLinks.store(),
                                Map.of(
                                        "id",
                                        UUID.randomUUID().toString(),
                                        "room",
                                        "Cellar",
                                        "pattern",
                                        "K-#-##",
                                        "shelves",
                                        "2",
                                        "places",
                                        "5",
                                        "capacity",
                                        "1",
                                        "width",
                                        "1"))
                        .statusCode())
                .isEqualTo(303);
        page = chromium.newPage(1180, 820);
        // Enter in a field clicks its button, too, but without a pointer: its detail is 0.
        page.exposeFunction("counted", nothing -> clicked++);
        page.addInitScript(
                "addEventListener('click', event => { if (event.detail > 0 && event.target.closest('a, button, input, summary'))"
                        + " counted(); }, true)");
        page.navigate(shop.address("/"));
    }

    @Test
    void eachPartOfTheDayTakesFewClicks() {
        find();
        part("search");
        var day = ServedShop.TODAY.plusDays(5);
        tap("Agree a day");
        page.getByLabel("Day", new Page.GetByLabelOptions().setExact(true)).fill(day.toString());
        tap("Book the day");
        page.waitForURL(url -> url.contains(DayLinks.days()));
        assertThat(shop.book().appointments().list(day, day))
                .extracting(agreed -> agreed.car().id())
                .contains(CAR);
        part("appointment");

        page.navigate(shop.address("/"));
        tap("What to order");
        page.locator("main .rows a").first().click();
        page.locator("#pieces").fill("4");
        page.locator("#supplier").fill("Invented supplier");
        tap("Note the order");
        page.locator(".order-line").waitFor();
        assertThat(shop.book().orders().listLines())
                .singleElement()
                .satisfies(line -> assertThat(line.open()).isEqualTo(4));
        part("order");

        tap("Today");
        tap("The store");
        tap("Sets in and out");
        scan("03S2");
        scan("K-2-05");
        assertThat(shop.book().stock().find("03S1").orElseThrow().place()).isEqualTo("K-2-05");
        part("shelf");

        find();
        int answers = estimateAndBill();
        // 50.00, 2.50 and 4.9875 (by hand).
        assertThat(shop.book().bills().find(1).orElseThrow().total().total()).isEqualTo(Money.parse("CAD 57.49"));
        part("estimate and bill");
        clicks.merge("estimate and bill", -answers, Integer::sum);

        tap("Today");
        tap("Coming back");
        page.locator(".coming").first().getByText("Message sent").click();
        page.locator(".coming .soft", new Page.LocatorOptions().setHasText("written to"))
                .first()
                .waitFor();
        part("reminder");

        assertThat(clicks).isEqualTo(CLICKS);
    }

    /** By its plate, from any page. */
    private void find() {
        page.locator(".find input").fill(ServedShop.car(CAR).vehicle().plate());
        page.locator(".find input").press("Enter");
        page.waitForURL(url -> url.contains("q="));
        page.locator("main a[href='%s']".formatted(CarLinks.car(CAR))).last().click();
        page.waitForURL(url -> url.contains(CarLinks.car(CAR)));
    }

    private int estimateAndBill() {
        page.locator("a[href='%s']".formatted(VisitLinks.findings(VISIT)))
                .first()
                .click();
        tap("Estimate");
        tap("Give this estimate");
        tap("Customer answers here");
        var lines = page.locator("fieldset:has(input)");
        int answers = lines.count();
        for (int line = 0; line < answers; line++) {
            lines.nth(line).locator("input").first().click();
        }
        tap("Go on");
        sign();
        tap("I agree");
        tap("Back to the shop");
        tap("Bill");
        tap("Make the bill");
        page.getByText("Bill 1 of").waitFor();
        assertThat(answers).isPositive();
        return answers;
    }

    private void tap(String words) {
        page.getByText(words, new Page.GetByTextOptions().setExact(true))
                .first()
                .click();
    }

    private void scan(String code) {
        page.locator("#code:focus").waitFor();
        page.keyboard().type(code);
        page.waitForResponse(
                answer -> answer.request().isNavigationRequest(),
                () -> page.keyboard().press("Enter"));
        page.waitForLoadState();
    }

    private void sign() {
        page.locator(".sign svg").scrollIntoViewIfNeeded();
        var box = page.locator(".sign svg").boundingBox();
        page.mouse().move(box.x + 40, box.y + 40);
        page.mouse().down();
        page.mouse().move(box.x + 160, box.y + 80);
        page.mouse().up();
    }

    private void part(String name) {
        clicks.put(name, clicked);
        clicked = 0;
    }
}
