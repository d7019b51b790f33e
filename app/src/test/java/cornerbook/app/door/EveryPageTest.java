package cornerbook.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import cornerbook.app.bench.Question;
import cornerbook.app.bench.Questions;
import cornerbook.app.book.rack.By;
import cornerbook.app.desk.Links;
import cornerbook.core.order.Article;
import cornerbook.core.order.OrderPart;
import cornerbook.core.store.FloorPoint;
import cornerbook.core.store.Naming;
import cornerbook.core.store.Rack;
import java.nio.file.Path;
import java.util.List;
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

    private static final String FINISHED_VISIT = "/visits/demo-03-v7";

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    private ServedShop shop;

    @BeforeAll
    void openTheShop(@TempDir Path folder) {
        shop = new ServedShop(folder, ServedShop.cars());
        fillTheStore();
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
                Links.days(),
                Links.weeks(),
                Links.dayPlan(),
                "/shop/hours",
                Links.newAppointment(),
                Links.newAppointment("demo-08"),
                CAR + "/visits/new",
                "/wheels/08W1",
                "/bench",
                "/shop",
                "/shop/order",
                Links.year(),
                Links.year() + "/pads",
                Links.coming(),
                Links.comingMail(),
                Links.sentMail(),
                Links.mailServer(),
                Links.order(),
                Links.order() + "?missing=25&left=7,50",
                Links.article(new Article(OrderPart.TYRE, "SUMMER", "235/50R19")),
                Links.store(),
                Links.rack("rack"),
                Links.count("count", ""),
                Links.scanAt("K-1-03"),
                Links.scan(),
                Links.fetch(),
                Links.count(),
                Links.left() + "?months=1",
                Links.storedSet("demo-03", "demo-03-S"),
                Links.scanOf("03S1"),
                Links.scanFor("demo-08-v7"),
                "/shop/knowledge",
                "/shop/reread",
                Links.prices(),
                Links.bills(),
                "/shop/cars",
                "/shop/customers",
                Links.cards(),
                Links.out(),
                Links.customer(ServedShop.car("demo-08").customer().id()),
                Links.stepOrder(),
                "/shop/tools",
                Links.DEVICES,
                Links.PAIR,
                "/cars/nobody");
        var bench = Questions.ALL.stream().map(Question::name).map(Links::bench);
        return Stream.of(others.stream(), visits, bench).flatMap(each -> each);
    }

    @ParameterizedTest
    @MethodSource("addresses")
    void isAccessibleInBothLooks(String address) {
        for (var look : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
            int width = look == ColorScheme.LIGHT ? 390 : 1180;
            Page page = chromium.open(shop.address(address), width);
            page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(look));
            page.evaluate("document.querySelectorAll('details').forEach(each => each.open = true)");
            assertThat((Integer) page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                    .as(address + " scrolls sideways at " + width)
                    .isLessThanOrEqualTo(0);
            Axe.assertNoViolation(page, "%s, %s at %d".formatted(address, look, width));
        }
    }
}
