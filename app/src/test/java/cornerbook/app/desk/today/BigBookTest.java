package cornerbook.app.desk.today;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.WaitForSelectorState;
import cornerbook.app.book.car.VehicleSummary;
import cornerbook.app.book.visit.OpenRetorque;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** The first page of a book of more cars than it shows. All cars are invented. */
class BigBookTest {
    private static final int CARS = 60;
    private static final Pattern RETORQUE = Pattern.compile("action=\"/visits/([^/\"]+)/retorque/answer\"");
    private static final Pattern CAR = Pattern.compile("class=\"row\" href=\"/cars/([^\"]+)\"");
    private static final Pattern JUDGED = Pattern.compile("/judged-cars");

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private ServedShop shop;

    private Path file;

    @BeforeEach
    void manyCars(@TempDir Path folder) {
        file = folder.resolve("book.sqlite");
        shop = new ServedShop(
                folder, DemoShop.histories(ServedShop.TODAY, 0, CARS).toList());
    }

    @Test
    void itIsSmallAndSaysHowMuchThereIs() throws Exception {
        shop.waitUntilJudged();
        var page = shop.get("/").body();
        assertThat(page.getBytes(StandardCharsets.UTF_8)).hasSizeLessThan(100_000);
        assertThat(page)
                .contains("1 to 25 of " + CARS)
                .contains("1 to 10 of " + shop.book().retorques().listOpen().size())
                .doesNotContain("being judged");
    }

    /** Page by page each stands there once, in the order of the book. */
    @Test
    void nothingIsLeftOutBetweenPages() throws Exception {
        var open = shop.book().retorques().listOpen().stream()
                .map(OpenRetorque::visitId)
                .toList();
        assertThat(open).hasSizeGreaterThan(20);
        assertThat(walk(open.size(), 10, RETORQUE, "/?again=")).isEqualTo(open);
        assertThat(walk(CARS, 25, CAR, "/?q=&from="))
                .isEqualTo(shop.book().cars().list().stream()
                        .map(VehicleSummary::id)
                        .toList());
    }

    private List<String> walk(int all, int most, Pattern pattern, String address) throws Exception {
        var found = new ArrayList<String>();
        for (int from = 0; from < all; from += most) {
            pattern.matcher(shop.get(address + from).body()).results().forEach(hit -> found.add(hit.group(1)));
        }
        return found;
    }

    /** Whoever answers on the second page stays there. */
    @Test
    void anAnswerLeadsBackToItsPage() throws Exception {
        var visitId =
                shop.book().retorques().listToCall(10, 1).list().getFirst().visitId();
        var answered = shop.post(
                VisitLinks.retorqueAnswer(visitId),
                Map.of("id", UUID.randomUUID().toString(), "answer", "DECLINED", "again", "10"));
        assertThat(answered.headers().firstValue("Location")).contains("/?again=10#retorques");
        assertThat(shop.book().retorques().listToCall(0, 100).list())
                .extracting(OpenRetorque::visitId)
                .doesNotContain(visitId);
    }

    /** Never shown as if it were of today: the page says when it was judged, and has it judged anew. */
    @Test
    void whatIsOldIsShownWithItsAgeAndJudgedAnew() throws Exception {
        shop.waitUntilJudged();
        makeOld();
        assertThat(shop.get("/").body().split("as judged 20 Nov 2026, 09:30; being judged anew", -1))
                .hasSize(25 + 1);
        shop.waitUntilJudged();
        assertThat(shop.get("/").body()).doesNotContain("as judged", "being judged");
    }

    /** Whoever looks at old rows sees them judged without touching the page, and the page asks no more after that. */
    @Test
    void aPageShowsAnewWhatHasBeenJudged() throws Exception {
        shop.waitUntilJudged();
        makeOld();
        var asked = new AtomicInteger();
        var page = chromium.newPage(1180, 820);
        page.onRequest(request -> {
            if (request.url().contains("/judged-cars")) {
                asked.incrementAndGet();
            }
        });
        // Until they are counted nothing is shown anew, however slow the machine is; some may have been judged before
        // the page was made.
        var held = new ArrayList<Route>();
        page.route(JUDGED, held::add);
        page.navigate(shop.address("/"));
        assertThat(page.locator("li[data-old]").count()).isBetween(1, 25);
        page.unroute(JUDGED);
        held.forEach(Route::resume);
        page.locator("li[data-old]")
                .first()
                .waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.DETACHED));
        assertThat(page.locator("section[aria-labelledby=cars]").innerText())
                .doesNotContain("as judged", "being judged");
        assertThat(asked.get()).isBetween(1, 10);
        int before = asked.get();
        page.waitForTimeout(3000);
        assertThat(asked.get()).isEqualTo(before);
    }

    /** An answer holds the rows asked for that are judged, and no other. */
    @Test
    void theAnswerIsSmallAndOnlyOfWhatWasAskedFor() throws Exception {
        shop.waitUntilJudged();
        var ids = shop.book().cars().list().stream()
                .map(VehicleSummary::id)
                .limit(2)
                .toList();
        var body = shop.get("/judged-cars?car=" + ids.get(0) + "&car=" + ids.get(1) + "&car=nobody")
                .body();
        assertThat(CAR.matcher(body).results().map(hit -> hit.group(1))).containsExactlyElementsOf(ids);
        assertThat(body).hasSizeLessThan(5000);
        assertThat(CAR.matcher(shop.get("/judged-cars").body()).results()).isEmpty();
    }

    /** Behind the program's back, or the background would be faster than this test. */
    private void makeOld() throws SQLException {
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                var statement = connection.createStatement()) {
            statement.execute(
                    "update car_verdict set judged_by = 0, judged_at = '2026-11-20T09:30:00Z', verdict = 'UNSAFE', urgency = 'UNSAFE', life_left = 0, fault_id = null");
        }
    }
}
