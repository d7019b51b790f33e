package cornerbook.app.desk.order;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import cornerbook.app.book.order.OrderLedger;
import cornerbook.app.book.order.OrderLevel;
import cornerbook.app.book.order.OrderLine;
import cornerbook.app.book.order.OrderList;
import cornerbook.app.book.order.OrderRow;
import cornerbook.app.book.visit.CallAnswer;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.desk.link.ShopLinks;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.core.order.Article;
import cornerbook.core.order.OrderPart;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** What the desk writes down of an order. Cars and suppliers are invented. */
class OrderPagesTest {
    private static final Article TYRES = new Article(OrderPart.TYRE, "SUMMER", "235/50R19");

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private ServedShop shop;

    @BeforeEach
    void open(@TempDir Path folder) throws InterruptedException {
        shop = new ServedShop(folder, ServedShop.cars());
        shop.waitUntilJudged();
    }

    @Test
    void anOrderComesInIsPartlyCalledOffAndGoesToACar() {
        var page = chromium.open(shop.address(ShopLinks.article(TYRES)), 390);
        page.locator("#pieces").fill("6");
        page.locator("#supplier").fill("Invented supplier");
        page.getByText("Note the order").click();
        page.locator(".order-line").waitFor();
        assertThat(page.locator(".order-line").innerText()).contains("6 on").contains("6 to come");

        var few = page.locator(".order-line .few");
        few.fill("4");
        page.getByText("Came in", new Page.GetByTextOptions().setExact(true)).click();
        page.getByText("Give it 4").first().waitFor();
        page.getByText("Will not come").click();
        page.getByText("2 called off").waitFor();
        assertThat(line().open()).isZero();

        page.getByText("Give it 4").first().click();
        page.getByText("4 given").first().waitFor();
        assertThat(line().there()).isZero();
    }

    /** What has come in is booked where all that is to come stands together. */
    @Test
    void whatComesInIsBookedOnTheList() {
        shop.book().orders().order("a", TYRES, 6, "Invented supplier", "Ida", ServedShop.CLOCK.instant());
        var page = chromium.open(shop.address(ShopLinks.order()), 390);
        var line = page.locator("section[aria-labelledby=to-come] .order-line");
        assertThat(line.innerText()).contains("Invented supplier", "6 to come");
        line.locator(".few").fill("4");
        line.locator("button[value=CAME_IN]").click();
        page.getByText("2 to come").waitFor();
        assertThat(page.url()).contains(ShopLinks.order() + "?until=");
        assertThat(line().open()).isEqualTo(2);
        assertThat(line().there()).isEqualTo(4);
    }

    /** What the shop keeps, the list opens with; what is only looked at, it does not keep. */
    @Test
    void theShopKeepsItsChanceAndItsCosts() throws Exception {
        assertThat(shop.get(ShopLinks.order()).body())
                .contains("<option value=\"90\" selected>", "the list opens with it");
        var page = chromium.open(shop.address(ShopLinks.order() + "?missing=40&left=2,50"), 390);
        assertThat(shop.book().orders().level()).isEqualTo(OrderLevel.USUAL);
        page.getByText("Keep this for the shop").click();
        page.getByText("the list opens with it").waitFor();
        assertThat(shop.book().orders().level()).isEqualTo(new OrderLevel(null, "40", "2,50"));
        assertThat(shop.get(ShopLinks.order()).body()).contains("value=\"40\"", "value=\"2,50\"", "which costs least");
        assertThat(shop.get(ShopLinks.order() + "?level=95").body())
                .contains("<option value=\"95\" selected>", "Keep this for the shop");
        assertThat(post("/level", Map.of("level", "95")).statusCode()).isEqualTo(303);
        assertThat(shop.get(ShopLinks.order()).body()).contains("<option value=\"95\" selected>");
        for (var level : List.of("49", "100", "many")) {
            assertThat(post("/level", Map.of("level", level)).statusCode())
                    .as(level)
                    .isEqualTo(400);
        }
        assertThat(post("/level", Map.of("missing", "40", "left", "-1")).statusCode())
                .isEqualTo(400);
        assertThat(shop.book().orders().level()).isEqualTo(new OrderLevel(95, "", ""));
    }

    @Test
    void oneTapSaysWhatCameOfTheCall() {
        var car = row().cars().getFirst();
        var page = chromium.open(shop.address(ShopLinks.article(TYRES)), 390);
        page.getByText("Declined").first().click();
        page.locator("main .row .soft").first().waitFor();
        assertThat(row().cars())
                .filteredOn(each -> each.visitId().equals(car.visitId()))
                .singleElement()
                .satisfies(each -> assertThat(each.contact().declined()).isTrue())
                .satisfies(each -> assertThat(each.contact().last())
                        .extracting(CallAnswer::kind)
                        .isEqualTo(CallAnswer.Kind.DECLINED));
    }

    /** RFC 4180: a line of names, then one for each article, all of as many fields. */
    @Test
    void theListIsAFileForSpreadsheets() throws Exception {
        var answer = shop.get(ShopLinks.order() + ".csv");
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type"))
                .hasValueSatisfying(type -> assertThat(type).startsWith("text/csv"));
        var lines = answer.body().split("\r\n", -1);
        assertThat(lines[0]).startsWith("part,article,").endsWith(",to order");
        assertThat(lines)
                .anySatisfy(line -> assertThat(line).contains("235/50R19").endsWith(",0,0," + row().toOrder()));
    }

    /** On paper each article is a line of one table, no word is cut, and the cars stand small below it. */
    @Test
    void onPaperItIsOneTable() {
        var page = chromium.open(shop.address(ShopLinks.order()), 1180);
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        var table = page.locator(".order-paper");
        assertThat(table.locator("tbody tr")
                        .filter(new Locator.FilterOptions().setHasText("Tyres, summer, 235/50R19"))
                        .innerText())
                .endsWith("\t" + row().toOrder());
        assertThat(page.locator(".order-row:visible").count()).isZero();
        assertThat(page.locator("main").innerText())
                .as("who sells the pieces reads whose order it is, and of which day")
                .startsWith(DemoShop.NAME)
                .contains("25 Nov 2026");
        assertThat(page.locator(".order-cars").innerText())
                .contains(row().likely().getFirst().plate());
        // A letter-sized page within margins of 15 mm.
        page.setViewportSize(703, 900);
        assertThat(page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                .isEqualTo(0);
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.SCREEN));
        assertThat(table.isVisible()).isFalse();
    }

    @Test
    void whatCannotBeIsOneSentenceAndKeepsWhatWasTyped() throws Exception {
        for (var pieces : List.of("", "-3", "four", "2.5", "99999999")) {
            refused(422, "How many is a whole number, as 4.", "", Map.of("pieces", pieces));
        }
        refused(409, "How many must be a whole number from 1 to 10", "", Map.of("pieces", "0"));
        refused(409, "How many must be a whole number from 1 to 10", "", Map.of("pieces", "10001"));
        refused(409, "The name of the supplier is longer than", "", Map.of("pieces", "4", "supplier", "x".repeat(201)));
        refused(409, "There is no such line", "/event", Map.of("pieces", "4", "line", "nothing", "event", "CAME_IN"));
        refused(
                409,
                "No piece of it lies in the shop",
                "/give",
                Map.of("pieces", "4", "visit", row().cars().getFirst().visitId()));
        refused(409, "This car needs nothing of the kind", "/give", Map.of("pieces", "4", "visit", "nothing"));
        assertThat(refused(409, "This car needs nothing", "/answer", Map.of("visit", "nothing", "answer", "CALLED")))
                .doesNotContain("Exception");
        assertThat(shop.book().orders().listLines()).isEmpty();

        assertThat(post("", Map.of("pieces", "4", "part", "SAIL")).statusCode()).isEqualTo(400);
        assertThat(post("", Map.of("pieces", "4", "kind", "MONSOON")).statusCode())
                .isEqualTo(400);
        refused(409, "No car needs such an article", "", Map.of("pieces", "4", "text", "1/1R1"));
        assertThat(post("", Map.of("pieces", "4", "id", "")).statusCode()).isEqualTo(400);
        assertThat(post("/answer", Map.of("visit", row().cars().getFirst().visitId(), "answer", "SANG"))
                        .statusCode())
                .isEqualTo(400);
        for (var query :
                List.of("?until=soon", "?level=0", "?level=100", "?level=some", "?missing=10", "?missing=-1&left=2")) {
            assertThat(shop.get(ShopLinks.order() + query).statusCode())
                    .as(query)
                    .isEqualTo(400);
        }
        assertThat(shop.book().orders().listLines()).isEmpty();
    }

    @Test
    void theSameFormTwiceCountsOnceAndMoreThanIsToComeIsRefused() throws Exception {
        var form = Map.of("id", UUID.randomUUID().toString(), "pieces", "4");
        assertThat(post("", form).statusCode()).isEqualTo(303);
        assertThat(post("", form).statusCode()).isEqualTo(303);
        assertThat(line().ordered()).isEqualTo(4);

        refused(
                409,
                "Only 4 pieces are still to come on this line.",
                "/event",
                Map.of("pieces", "5", "line", line().id(), "event", "CAME_IN"));
        assertThat(line().open()).isEqualTo(4);
        var came = Map.of("id", UUID.randomUUID().toString(), "pieces", "3", "line", line().id(), "event", "CAME_IN");
        assertThat(post("/event", came).statusCode()).isEqualTo(303);
        assertThat(post("/event", came).statusCode()).isEqualTo(303);
        assertThat(line().became().cameIn()).isEqualTo(3);
        assertThat(post("/event", Map.of("pieces", "1", "line", line().id(), "event", OrderLedger.Event.GIVEN.name()))
                        .statusCode())
                .as("only what comes in or is called off is said of a line")
                .isEqualTo(400);
        assertThat(line().open()).isEqualTo(1);
    }

    private String refused(int status, String sentence, String action, Map<String, String> fields) throws Exception {
        var answer = post(action, fields);
        assertThat(answer.statusCode()).as(fields.toString()).isEqualTo(status);
        assertThat(answer.body()).contains(sentence).contains("Nothing was stored");
        if (action.isEmpty()) {
            assertThat(answer.body())
                    .contains("value=\"" + fields.get("pieces") + "\" required")
                    .contains("value=\"" + fields.getOrDefault("supplier", "") + "\"></div>");
        }
        return answer.body();
    }

    private HttpResponse<String> post(String action, Map<String, String> fields) throws Exception {
        var all = new HashMap<>(Map.of(
                "id",
                UUID.randomUUID().toString(),
                "part",
                TYRES.part().name(),
                "kind",
                "SUMMER",
                "text",
                TYRES.text(),
                "until",
                "",
                "level",
                "90"));
        all.putAll(fields);
        return shop.post(ShopLinks.order() + action, all);
    }

    private OrderRow row() {
        return OrderList.of(
                        shop.book().orders(),
                        ServedShop.TODAY,
                        OrderList.usualUntil(
                                ServedShop.TODAY, shop.book().climate().find()),
                        0.9)
                .find(TYRES)
                .orElseThrow();
    }

    private OrderLine line() {
        return row().lines().getFirst();
    }
}
