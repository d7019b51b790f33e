package cornerbook.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import cornerbook.app.book.Book;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.visit.Assessor;
import cornerbook.core.visit.Measure;
import cornerbook.core.visit.Reading;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The pages as a person meets them, in a real browser, over the invented shop. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BrowserTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    /** A car of today: only its front wheels are read so far. */
    private static final String OPEN_CAR = "demo-08";

    private static final String OPEN_VISIT = OPEN_CAR + "-v7";
    private static final String OTHER_OPEN_VISIT = "demo-11-v7";
    private static final String FINISHED_VISIT = "demo-03-v7";

    private final List<Page> pages = new ArrayList<>();
    private Book book;
    private CornerbookServer server;
    private Chromium chromium;

    @BeforeAll
    void openTheShop(@TempDir Path folder) {
        chromium = Chromium.start();
        book = Book.open(folder);
        book.addAll(DemoShop.histories(TODAY));
        Clock clock = Clock.fixed(TODAY.atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC), ZoneOffset.UTC);
        server = CornerbookServer.start(book, new Assessor(LimitsFile.load()), 0, clock, "");
    }

    @AfterEach
    void closePages() {
        pages.forEach(Page::close);
        pages.clear();
    }

    @AfterAll
    void closeTheShop() {
        if (server != null) {
            server.stop();
        }
        if (book != null) {
            book.close();
        }
        if (chromium != null) {
            chromium.close();
        }
    }

    @Test
    void threeDepthsAreTypedWithEnterAndTheFindingSaysWhy() {
        Page page = open("/", 1180, 820);
        page.locator("a[href='/visits/" + OPEN_VISIT + "']").first().click();
        Locator depths = page.locator("input[name^='TREAD_DEPTH.LR.']");
        assertThat(depths.count()).isEqualTo(3);
        depths.first().focus();
        for (String depth : List.of("5.1", "5.2", "5.0")) {
            page.keyboard().type(depth);
            page.keyboard().press("Enter");
        }
        assertThat(depths.nth(2).inputValue())
                .as("Enter moves on within the corner")
                .isEqualTo("5.0");
        int before = readings(OPEN_VISIT).size();
        save(page);
        assertThat(readings(OPEN_VISIT)).hasSize(before + 3);
        assertThat(readings(OPEN_VISIT))
                .filteredOn(reading -> reading.measure() == Measure.TREAD_DEPTH)
                .extracting(Reading::asWritten)
                .contains("5.1 mm", "5.2 mm", "5.0 mm");

        page.locator("a[href='/visits/" + OPEN_VISIT + "/findings']").first().click();
        Locator why = page.locator("details")
                .filter(new Locator.FilterOptions().setHasText("lowest groove"))
                .first();
        why.locator("summary").click();
        assertThat(why.getAttribute("open")).isNotNull();
        assertThat(why.innerText()).contains("corner-rate model").contains("mm per 1000 km");
    }

    @Test
    void negativeDepthIsRefusedBesideItsFieldAndNothingIsStored() {
        List<Reading> before = readings(OTHER_OPEN_VISIT);
        Page page = open("/visits/" + OTHER_OPEN_VISIT, 1180, 820);
        Locator depths = page.locator("input[name^='TREAD_DEPTH.LR.']");
        depths.first().fill("-3");
        depths.nth(1).fill("5.2");
        save(page);
        assertThat(readings(OTHER_OPEN_VISIT)).isEqualTo(before);
        Locator refused = page.locator("input[name^='TREAD_DEPTH.LR.'][aria-invalid='true']");
        assertThat(refused.count()).isEqualTo(1);
        assertThat(refused.inputValue()).as("what was typed is kept").isEqualTo("-3");
        String sentence = page.locator("#" + escaped(refused.getAttribute("aria-describedby")))
                .innerText();
        assertThat(sentence).contains("-3 mm", "0 to 25 mm").endsWith(".");
    }

    @ParameterizedTest
    @ValueSource(ints = {390, 1180})
    void noPageScrollsSideways(int width) {
        for (String address : addresses()) {
            Page page = open(address, width, width == 390 ? 844 : 820);
            Object overflow = page.evaluate("document.documentElement.scrollWidth - window.innerWidth");
            assertThat((int) overflow).as(address + " at " + width).isLessThanOrEqualTo(0);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {390, 1180})
    void everyPageIsAccessible(int width) {
        for (String address : addresses()) {
            Page page = open(address, width, width == 390 ? 844 : 820);
            var violations = new AxeBuilder(page)
                    .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"))
                    .analyze()
                    .getViolations();
            assertThat(violations)
                    .as(address + " at " + width)
                    .extracting(rule -> rule.getId() + ": "
                            + rule.getNodes().stream()
                                    .map(node -> node.getHtml())
                                    .limit(3)
                                    .toList())
                    .isEmpty();
        }
    }

    @Test
    void everyPageIsReachedByKeyboard() {
        for (String address : addresses()) {
            Page page = open(address, 1180, 820);
            page.keyboard().press("Tab");
            assertThat(page.evaluate("document.activeElement.tagName"))
                    .as(address)
                    .isIn("A", "INPUT", "BUTTON", "SELECT", "SUMMARY");
        }
    }

    private static List<String> addresses() {
        return List.of(
                "/",
                "/cars/" + OPEN_CAR,
                "/cars/" + OPEN_CAR + "/visits/new",
                "/visits/" + OPEN_VISIT,
                "/visits/" + OPEN_VISIT + "/findings",
                "/visits/" + FINISHED_VISIT,
                "/visits/" + FINISHED_VISIT + "/findings",
                "/cars/nobody");
    }

    private Page open(String address, int width, int height) {
        Page page = chromium.newPage(width, height);
        pages.add(page);
        page.navigate("http://127.0.0.1:" + server.port() + address);
        return page;
    }

    private static void save(Page page) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(Pattern.compile("^(save|store)", Pattern.CASE_INSENSITIVE)))
                .first()
                .click();
        page.waitForLoadState();
    }

    private List<Reading> readings(String visitId) {
        return book.findHistoryOfVisit(visitId).orElseThrow().getVisit(visitId).readings();
    }

    private static String escaped(String id) {
        return id.replace(".", "\\.");
    }
}
