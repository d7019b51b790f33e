package cornerbook.app.bay;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import cornerbook.app.door.Chromium;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The bay sheet and the visit at the desk with everything twice as large: a browser's zoom halves the window (WCAG 2.2, success
 * criterion 1.4.4 asks for 200 %), its own setting doubles the text. That bars keep to a third of the screen: from memory, common
 * practice, no source.
 */
class ZoomBrowserTest {
    /** What is cut off, or stands wider than the window. */
    private static final String CUT_OFF = """
            () => [document.documentElement, ...document.querySelectorAll("main button, .next button, main label, main legend")]
              .filter((each) => each.checkVisibility() && each.clientWidth > 0 && each.scrollWidth > each.clientWidth + 1 && getComputedStyle(each).overflowX !== "auto")
              .map((each) => each.outerHTML.slice(0, 200))
            """;

    /** How much of the window bars take that stay while the page goes by. */
    private static final String BARS = """
            () => [...document.querySelectorAll("body *")]
              .filter((each) => ["sticky", "fixed"].includes(getComputedStyle(each).position) && each.offsetHeight > 0)
              .filter((each) => { const box = each.getBoundingClientRect(); return box.bottom > 0 && box.top < innerHeight && each.closest("dialog, .panel") === null; })
              .reduce((sum, each) => sum + each.offsetHeight, 0) / innerHeight
            """;

    @RegisterExtension
    private final Chromium zoomed = new Chromium();

    @RegisterExtension
    private final Chromium largeText = new Chromium("--blink-settings=defaultFontSize=32");

    @AutoClose
    private BayShop shop;

    private String visitId;

    @BeforeEach
    void openTheShop(@TempDir Path folder) {
        var car = BayShop.untouched("demo-08");
        visitId = car.visits().getLast().id();
        shop = new BayShop(folder, List.of(car));
    }

    /** 1180 by 820 at 200 %, a telephone on its side, and large text on both. */
    @ParameterizedTest
    @CsvSource({"false, 590, 410", "false, 844, 390", "true, 1180, 820", "true, 390, 844"})
    void nothingIsCutOffAndBarsLeaveTwoThirds(boolean text, int width, int height) {
        var tablet = (text ? largeText : zoomed).newTablet(width, height);
        tablet.addInitScript("localStorage.setItem('person', 'Ada')");
        Page page = tablet.newPage();
        page.navigate(shop.address("/bay/visits/" + visitId + "#RECEIVE"));
        for (boolean more = true; more; ) {
            assertThat(page.locator("#main h2")).isVisible();
            look(page, String.valueOf(page.evaluate("location.hash")));
            more = page.locator("#next .main").count() > 0;
            if (more) {
                var step = page.url();
                page.locator("#next .main").click();
                page.waitForURL(url -> !url.equals(step));
            }
        }
        page.navigate(shop.address("/visits/" + visitId));
        look(page, "the desk");
    }

    private static void look(Page page, String what) {
        page.evaluate("scrollTo({ top: document.documentElement.scrollHeight / 2, behavior: 'instant' })");
        assertThat(page.evaluate(CUT_OFF)).as(what).isEqualTo(List.of());
        assertThat(((Number) page.evaluate(BARS)).doubleValue())
                .as("share of the window at %s", what)
                .isLessThanOrEqualTo(1.0 / 3);
    }
}
