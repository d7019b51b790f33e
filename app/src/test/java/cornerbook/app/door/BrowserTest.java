package cornerbook.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ReducedMotion;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The pages as a person meets them, in a real browser, over the invented shop. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BrowserTest {
    /** A car of today: only its front wheels are read so far. */
    private static final String OPEN_CAR = "demo-08";

    private static final String OPEN_VISIT = OPEN_CAR + "-v7";
    private static final String OTHER_OPEN_VISIT = "demo-11-v7";
    private static final String FINISHED_VISIT = "demo-03-v7";

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private ServedShop shop;

    @BeforeAll
    void openTheShop(@TempDir Path folder) {
        shop = new ServedShop(folder, ServedShop.cars());
    }

    @Test
    void threeDepthsAreTypedWithEnterAndTheFindingSaysWhy() {
        Page page = open("/", 1180);
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
        int before = shop.readings(OPEN_VISIT).size();
        save(page);
        assertThat(shop.readings(OPEN_VISIT)).hasSize(before + 3);
        assertThat(shop.readings(OPEN_VISIT))
                .filteredOn(reading -> reading.measure() == Measure.TREAD_DEPTH)
                .extracting(Reading::asWritten)
                .contains("5.1 mm", "5.2 mm", "5.0 mm");

        page.locator("a[href='/visits/" + OPEN_VISIT + "/findings']").first().click();
        Locator area = page.locator("details.area").filter(new Locator.FilterOptions().setHasText("Wheel sets"));
        area.locator("summary").first().click();
        Locator why = area.locator("details.why")
                .filter(new Locator.FilterOptions().setHasText("lowest groove"))
                .first();
        why.locator("summary").click();
        assertThat(why.getAttribute("open")).isNotNull();
        assertThat(why.innerText())
                .contains("what tyres at this place usually wear")
                .contains("mm\u00a0per\u00a01\u202f000\u00a0km");
    }

    @Test
    void negativeDepthIsRefusedBesideItsFieldAndNothingIsStored() {
        List<Reading> before = shop.readings(OTHER_OPEN_VISIT);
        Page page = open("/visits/" + OTHER_OPEN_VISIT, 1180);
        Locator depths = page.locator("input[name^='TREAD_DEPTH.LR.']");
        depths.first().fill("-3");
        depths.nth(1).fill("5.2");
        save(page);
        assertThat(shop.readings(OTHER_OPEN_VISIT)).isEqualTo(before);
        Locator refused = page.locator("input[name^='TREAD_DEPTH.LR.'][aria-invalid='true']");
        assertThat(refused.count()).isEqualTo(1);
        assertThat(refused.inputValue()).as("what was typed is kept").isEqualTo("-3");
        String sentence = page.locator("#" + escaped(refused.getAttribute("aria-describedby")))
                .innerText();
        assertThat(sentence).contains("−3\u00a0mm", "0 to 25\u00a0mm").endsWith(".");
        Axe.assertNoViolation(page, "refused");
    }

    @ParameterizedTest
    @ValueSource(ints = {390, 1180})
    void incredibleDepthIsAskedAboutAtItsFieldAndStoredWithOneTick(int width) {
        List<Reading> before = shop.readings(OTHER_OPEN_VISIT);
        Page page = open("/visits/" + OTHER_OPEN_VISIT, width);
        Locator depth = page.locator("input[name^='TREAD_DEPTH.RR.']").nth(width == 390 ? 0 : 1);
        depth.fill("2.4");
        save(page);
        assertThat(shop.readings(OTHER_OPEN_VISIT)).isEqualTo(before);
        assertThat(page.evaluate("document.activeElement.name")).isEqualTo(depth.getAttribute("name"));
        assertThat(depth.getAttribute("aria-invalid")).as("no error").isNull();
        assertThat(page.locator("#" + escaped(depth.getAttribute("aria-describedby")))
                        .innerText())
                .contains("read it again");
        Axe.assertNoViolation(page, "asked");
        var tick = page.getByText("these readings stand");
        assertThat(tick.boundingBox().height).isGreaterThanOrEqualTo(44);
        tick.click();
        save(page);
        assertThat(shop.readings(OTHER_OPEN_VISIT)).hasSize(before.size() + 1);
    }

    @ParameterizedTest
    @ValueSource(ints = {390, 1180})
    void noPageScrollsSideways(int width) {
        Page page = chromium.newPage(width, 844);
        for (String address : addresses()) {
            page.navigate(shop.address(address));
            Object overflow = page.evaluate("document.documentElement.scrollWidth - window.innerWidth");
            assertThat((int) overflow).as(address + " at " + width).isLessThanOrEqualTo(0);
        }
    }

    @Test
    void partsOfTheVisitAndTheButtonThatStoresStayInReachOfAThumb() {
        Page page = open("/visits/" + FINISHED_VISIT, 390);
        page.emulateMedia(new Page.EmulateMediaOptions().setReducedMotion(ReducedMotion.REDUCE));
        Locator links = page.locator(".jump a");
        assertThat(links.allInnerTexts()).containsExactly("LF", "RF", "LR", "RR", "Vehicle", "Wheels", "Re-torque");
        double right = 0;
        for (int i = 0; i < links.count(); i++) {
            links.nth(i).click();
            var link = links.nth(i).boundingBox();
            assertThat(link.height).isGreaterThanOrEqualTo(44);
            assertThat(link.width).isGreaterThanOrEqualTo(44);
            assertThat(link.x).as("beside the one before").isGreaterThanOrEqualTo(right - 0.5);
            right = link.x + link.width;
            assertThat(right).as("on the screen without scrolling").isLessThanOrEqualTo(390);
            assertThat(link.y).as("stays on the screen").isBetween(0.0, 844.0 - 44);
            Object top = page.evaluate(
                    "document.querySelector(location.hash).getBoundingClientRect().top - document.querySelector('.jump').getBoundingClientRect().bottom");
            assertThat(((Number) top).doubleValue()).as("not under the links").isBetween(-2.0, 844.0);
            if (i < 6) {
                var button = page.getByText("Store readings").boundingBox();
                assertThat(button.height).isGreaterThanOrEqualTo(44);
                assertThat(button.y + button.height).isBetween(44.0, 844.0);
            }
        }
    }

    @Test
    void nothingMovesByItselfOnThePageOfTheVisit() {
        Page page = open("/visits/" + OPEN_VISIT, 390);
        page.mouse().wheel(0, 3000);
        page.evaluate("document.fonts.ready");
        Object shift = page.evaluate(
                "new Promise(resolve => new PerformanceObserver(list => resolve(list.getEntries().reduce((sum, entry) => sum + entry.value, 0))).observe({type: 'layout-shift', buffered: true}) ?? setTimeout(() => resolve(0), 500))");
        // Web Vitals: a cumulative layout shift of 0.1 or less is good.
        assertThat(((Number) shift).doubleValue()).isLessThan(0.1);
    }

    @ParameterizedTest
    @ValueSource(ints = {390, 1180})
    void focusIsSeenAndNeverUnderABar(int width) {
        for (String address : List.of("/visits/" + OPEN_VISIT, "/visits/" + FINISHED_VISIT + "/findings")) {
            Page page = open(address, width);
            page.emulateMedia(new Page.EmulateMediaOptions().setReducedMotion(ReducedMotion.REDUCE));
            for (int i = 0; i < 60; i++) {
                page.keyboard().press("Tab");
                assertThat(page.evaluate("""
                                () => {
                                  const focused = document.activeElement;
                                  if (focused === document.body) { return "left the page"; }
                                  const box = focused.getBoundingClientRect();
                                  const top = document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2);
                                  const seen = top !== null && (focused.contains(top) || top.contains(focused) || focused.parentElement.contains(top));
                                  const ringed = getComputedStyle(focused).outlineStyle !== "none";
                                  return seen && ringed ? "seen" : focused.outerHTML;
                                }
                                """)).as(address + " at " + width).isIn("seen", "left the page");
            }
        }
    }

    @Test
    void everyPageIsReachedByKeyboard() {
        Page page = chromium.newPage(1180, 820);
        for (String address : addresses()) {
            page.navigate(shop.address(address));
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
                "/visits/" + OPEN_VISIT + "/plan",
                "/visits/" + OPEN_VISIT + "/burnish",
                "/visits/" + FINISHED_VISIT + "/burnish",
                "/visits/" + FINISHED_VISIT,
                "/visits/" + FINISHED_VISIT + "/plan",
                "/visits/" + FINISHED_VISIT + "/findings",
                "/cars/nobody");
    }

    private Page open(String address, int width) {
        return chromium.open(shop.address(address), width);
    }

    private static void save(Page page) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(Pattern.compile("^(save|store)", Pattern.CASE_INSENSITIVE)))
                .first()
                .click();
        page.waitForLoadState();
    }

    private static String escaped(String id) {
        return id.replace(".", "\\.");
    }
}
