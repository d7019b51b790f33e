package cornerbook.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import cornerbook.app.bench.Question;
import cornerbook.app.bench.Questions;
import cornerbook.app.book.bill.AgreedWork;
import cornerbook.app.book.bill.BillLedger.NewBill;
import cornerbook.app.book.bill.CreditReason;
import cornerbook.app.book.rack.Bringing;
import cornerbook.app.book.rack.By;
import cornerbook.app.desk.link.BenchLinks;
import cornerbook.app.desk.link.CustomerLinks;
import cornerbook.app.desk.link.DayLinks;
import cornerbook.app.desk.link.MoneyLinks;
import cornerbook.app.desk.link.ShopLinks;
import cornerbook.app.desk.link.StoreLinks;
import cornerbook.app.exchange.KindFile;
import cornerbook.core.order.Article;
import cornerbook.core.order.OrderPart;
import cornerbook.core.store.FloorPoint;
import cornerbook.core.store.Naming;
import cornerbook.core.store.OnTheWay;
import cornerbook.core.store.Rack;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every page that the desk has, light on a telephone and dark on a tablet. The bay sheet has tests of its own. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EveryPageTest {
    private static final String CAR = "/cars/demo-08";
    /** Of today: only its front wheels are read so far. */
    private static final String OPEN_VISIT = "/visits/demo-08-v7";

    private static final String BILLED = "demo-03-v7";
    private static final String FINISHED_VISIT = "/visits/" + BILLED;

    /** Paper of 210 mm (ISO 216, A4), less margins of half an inch, at 96 pixels an inch. */
    private static final int PAPER_PX = 698;

    /**
     * What is wrong with the controls of a page, once it is drawn: texts that are cut and stand whole nowhere else, controls that
     * a finger misses, and controls that lie over one another.
     */
    private static final String FAULTS = """
            () => new Promise(drawn => requestAnimationFrame(() => requestAnimationFrame(drawn))).then(() => {
              const pen = document.createElement('canvas').getContext('2d');
              const seen = each => each.checkVisibility() && each.clientWidth > 1 && !each.closest('.unseen');
              const told = each => each.name || each.innerText;
              const isCut = each => {
                const style = getComputedStyle(each);
                pen.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
                return each.matches('select')
                  ? pen.measureText(each.selectedOptions[0]?.text ?? '').width
                    > each.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight)
                  : each.scrollWidth > each.clientWidth + 1;
              };
              const isToldBelow = each => [...each.parentElement.querySelectorAll('.printed')].some(seen);
              const controls = [...document.querySelectorAll('main :is(button, .button, select, summary, textarea, input)')]
                .filter(seen).filter(each => !each.matches('[type=checkbox], [type=radio]'));
              const resting = controls.filter(each => !each.closest('.store, .jump'))
                .map(each => [each, each.getBoundingClientRect()]);
              return [
                ...controls.filter(each => each.offsetHeight < 40).map(each => `${told(each)} is low`),
                ...controls.filter(each => !each.matches('textarea, summary')).filter(each => isCut(each) && !isToldBelow(each))
                  .map(each => `${told(each)} is cut`),
                ...resting.flatMap(([one, a], at) => resting.slice(at + 1).filter(([other, b]) => !one.contains(other)
                  && Math.min(a.right, b.right) - Math.max(a.left, b.left) > 3
                  && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 3)
                  .map(([other]) => `${told(one)} lies over ${told(other)}`)),
              ];
            })
            """;

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    private ServedShop shop;

    @BeforeAll
    void openTheShop(@TempDir Path folder) {
        shop = new ServedShop(folder, ServedShop.cars());
        fillTheStore();
        billAndGiveBack();
        keepASheet();
    }

    /** A bill that was given back, and one in its place. */
    private void billAndGiveBack() {
        var book = shop.book();
        AgreedWork.agree(book, BILLED, "CA-QC", Map.of("Pads", "100.00", "Wipers", "38.50"));
        var now = ServedShop.CLOCK.instant();
        var matters = List.of("Pads", "Wipers");
        book.bills().make(new NewBill("b1", BILLED, matters, List.of(), ServedShop.TODAY, "Ida", now));
        book.bills().credit("c1", 1, CreditReason.OTHER, "Wipers were not fitted", ServedShop.TODAY, "Ida", now);
        book.bills().make(new NewBill("b2", BILLED, List.of("Pads"), List.of(), ServedShop.TODAY, "Ida", now));
    }

    private void keepASheet() {
        var kind = KindFile.of(ServedShop.car("demo-08").vehicle(), "Handbook (invented)");
        shop.book().kindSheets().put(Map.of(kind.name(), KindFile.write(kind)));
    }

    /** A rack with a set, one set that is out, and a count that found something. */
    private void fillTheStore() {
        var by = new By("Ida", ServedShop.CLOCK.instant());
        var book = shop.book();
        book.racks()
                .name(
                        "rack",
                        new Rack("Cellar", new Naming("K-#-##", 2, 14), FloorPoint.DOOR, Rack.Along.RIGHT, 1, 2),
                        by);
        book.stock().put("put", "03S1", "K-1-03", by, ServedShop.TODAY);
        book.racks()
                .name(
                        "annex",
                        new Rack("Annex", new Naming("R-##", 1, 14), FloorPoint.DOOR, Rack.Along.RIGHT, 1, 2),
                        by);
        book.stock().put("away", "07S1", "R-03", by, ServedShop.TODAY);
        book.bringing().say("room", "Annex", new Bringing(new OnTheWay(1), LocalTime.NOON), by);
        book.bringing()
                .ask(
                        "asked",
                        book.stock().find("07S1").orElseThrow().key(),
                        ServedShop.TODAY.plusDays(1),
                        by,
                        ServedShop.TODAY);
        book.stock().handOut("out", "04S1", by, ServedShop.TODAY);
        book.counts().begin("count", by);
        book.counts().scan("s1", "count", "K-1-04", "03S1", by);
        book.counts().scan("s2", "count", "K-1-05", "strange", by);
        book.counts().end("count", by);
    }

    @AfterAll
    void closeTheShop() {
        shop.close();
    }

    static Stream<String> addresses() {
        var visits = Stream.of(OPEN_VISIT, FINISHED_VISIT)
                .flatMap(visit -> Stream.of("", "/data", "/findings", "/plan", "/burnish", "/estimate", "/bill")
                        .map(visit::concat));
        var others = List.of(
                "/",
                "/cars/new",
                CAR,
                CAR + "/data",
                DayLinks.days(),
                DayLinks.weeks(),
                DayLinks.dayPlan(),
                "/shop/hours",
                DayLinks.newAppointment(),
                DayLinks.newAppointment("demo-08"),
                CAR + "/visits/new",
                "/wheels/08W1",
                "/bench",
                "/shop",
                "/shop/order",
                ShopLinks.year(),
                ShopLinks.year() + "/pads",
                ShopLinks.behind("visits"),
                ShopLinks.behind("sets"),
                ShopLinks.behind("tyres"),
                ShopLinks.behind("calls"),
                ShopLinks.behind("seized"),
                ShopLinks.behind("read-twice"),
                CustomerLinks.coming(),
                CustomerLinks.comingMail(),
                CustomerLinks.sentMail(),
                ShopLinks.mailServer(),
                ShopLinks.order(),
                ShopLinks.order() + "?missing=25&left=7,50",
                ShopLinks.article(new Article(OrderPart.TYRE, "SUMMER", "235/50R19")),
                StoreLinks.store(),
                StoreLinks.rack("rack"),
                StoreLinks.count("count", ""),
                StoreLinks.scanAt("K-1-03"),
                StoreLinks.scan(),
                StoreLinks.fetch(),
                StoreLinks.bring(),
                StoreLinks.count(),
                StoreLinks.left() + "?months=1",
                StoreLinks.storedSet("demo-03", "demo-03-S"),
                StoreLinks.scanOf("03S1"),
                StoreLinks.scanFor("demo-08-v7"),
                "/shop/knowledge",
                "/shop/reread",
                MoneyLinks.prices(),
                MoneyLinks.bills(),
                "/shop/cars",
                "/shop/customers",
                CustomerLinks.cards(),
                ShopLinks.out(),
                CustomerLinks.customer(ServedShop.car("demo-08").customer().id()),
                ShopLinks.stepOrder(),
                ShopLinks.kinds(),
                ShopLinks.kindForm(),
                ShopLinks.kindOf("demo-08"),
                "/shop/tools",
                ShopLinks.DEVICES,
                ShopLinks.PAIR,
                "/cars/nobody");
        var bench = Questions.ALL.stream().map(Question::name).map(BenchLinks::bench);
        return Stream.of(others.stream(), visits, bench).flatMap(each -> each);
    }

    @ParameterizedTest
    @MethodSource("addresses")
    void isAccessibleInBothLooks(String address) {
        var page = chromium.keptPage();
        show(page, ColorScheme.LIGHT, 390, 844);
        page.navigate(shop.address(address));
        page.evaluate("document.querySelectorAll('details').forEach(each => each.open = true)");
        assertFits(page, address + " at 390");
        assertHandy(page, address + " at 390");
        page.setViewportSize(820, 1180);
        assertFits(page, address + " at 820");
        assertHandy(page, address + " at 820");
        show(page, ColorScheme.DARK, 1180, 820);
        assertFits(page, address + " at 1180");
        assertHandy(page, address + " at 1180");
        Axe.assertNoViolation(page, address + ", dark at 1180");
        show(page, ColorScheme.LIGHT, 390, 844);
        Axe.assertNoViolation(page, address + ", light at 390");
        assertPrints(page, address);
    }

    /** The same page, as nothing of it asks for its width once and for all: it is laid out anew, and not loaded. */
    private static void show(Page page, ColorScheme look, int width, int height) {
        page.setViewportSize(width, height);
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.SCREEN).setColorScheme(look));
    }

    private static void assertFits(Page page, String what) {
        assertThat((Integer) page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                .as(what + " scrolls sideways")
                .isLessThanOrEqualTo(0);
    }

    private static void assertHandy(Page page, String what) {
        assertThat(page.evaluate(FAULTS))
                .as(what + " has controls that are cut, low or over one another")
                .isEqualTo(List.of());
    }

    /** Controls are no part of the paper; what stands beside them is, and all of it is on the sheet. */
    private static void assertPrints(Page page, String address) {
        page.setViewportSize(PAPER_PX, 900);
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        assertFits(page, address + " on paper");
        assertThat((Boolean) page.evaluate("[...document.querySelectorAll('.scroll')].every(each => each.scrollWidth <="
                        + " each.clientWidth)"))
                .as(address + " has its tables whole on paper")
                .isTrue();
        assertThat((String) page.evaluate("document.querySelector('main').innerText"))
                .as(address + " on paper")
                .isNotBlank();
        assertThat(page.locator("main :is(button, .button):visible").count())
                .as(address + " prints what is only tapped")
                .isZero();
        assertThat(page.locator("main :is(input[type=date], input[type=search], form.inline input):visible")
                        .all())
                .as(address + " prints what only asks for something")
                .allSatisfy(input -> assertThat(input.inputValue()).isNotBlank());
        assertThat((String) page.evaluate("getComputedStyle(document.documentElement).backgroundColor"))
                .as(address + " prints its paper")
                .isEqualTo("rgb(255, 255, 255)");
        assertThat(page.evaluate(
                        "[...document.querySelectorAll('main section')].filter(each => each.offsetHeight > 0 &&"
                                + " each.innerText.trim() === each.querySelector('h2')?.innerText.trim()).map(each =>"
                                + " each.innerText)"))
                .as(address + " prints headings of nothing")
                .isEqualTo(List.of());
        assertThat(page.evaluate("[...document.querySelectorAll('main .row')].flatMap(row => [...row.children])"
                        + ".filter(cell => cell.offsetHeight > 0 && cell.scrollWidth > cell.clientWidth + 1"
                        + " && cell.clientWidth > 0).map(cell => cell.innerText)"))
                .as(address + " cuts what stands in a row")
                .isEqualTo(List.of());
        assertThat(page.evaluate("[...document.querySelectorAll('main li.row.agreed')].filter(row =>"
                        + " row.children[2].offsetLeft <= row.children[1].offsetLeft).length"))
                .as(address + " leaves half of the paper empty beside its rows")
                .isEqualTo(0);
    }
}
