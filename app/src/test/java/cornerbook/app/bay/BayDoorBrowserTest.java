package cornerbook.app.bay;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import cornerbook.app.door.Chromium;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** What keeps the car is told by the tablet alone, in a real browser whose network is cut. */
class BayDoorBrowserTest {
    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private BayShop shop;

    private Page page;

    @BeforeEach
    void openTheSheetAndCutTheNetwork(@TempDir Path folder) {
        var car = BayShop.untouched("demo-08");
        shop = new BayShop(folder, List.of(car));
        BrowserContext tablet = chromium.newTablet(1180, 820);
        tablet.addInitScript("localStorage.setItem('person', 'Ada')");
        page = tablet.newPage();
        page.navigate(shop.address("/bay/visits/" + car.visits().getLast().id() + "#BRAKE.RR"));
        assertThat(page.locator("#link")).hasText("All in the book");
        tablet.setOffline(true);
    }

    /** No set was swapped, and a wheel was off all the same. */
    @Test
    void aRepairedWheelAsksWhichWheelsAreOnAndThenForTheTorqueOfEach() {
        answer("BRAKE.RR", "f.PUNCTURE_REPAIRED.RR.", "not done");
        goTo("DEPART");
        assertThat(open("recorded which wheels are on")).hasCount(0);
        answer("BRAKE.RR", "f.PUNCTURE_REPAIRED.RR.", "done");
        goTo("DEPART");
        assertThat(open("recorded which wheels are on")).hasCount(1);
        goTo("ON");
        page.locator("text=These wheels are on").click();
        goTo("DEPART");
        assertThat(open("recorded which wheels are on")).hasCount(0);
        assertThat(open("is not torqued")).hasCount(4);
    }

    @Test
    void freshFluidAsksForThePedal() {
        answer("PEDAL", "f.BRAKE_FLUID_REPLACED..", "done");
        goTo("DEPART");
        assertThat(open("pedal was not pumped")).hasCount(1);
        answer("PEDAL", "f.PEDAL_PUMPED..", "done");
        goTo("DEPART");
        assertThat(open("pedal was not pumped")).hasCount(0);
    }

    /** Four times the same is not read: after the first corner the same cautions are one line, which opens. */
    @Test
    void cautionsOfOneCornerAreNotSaidAtEachOther() {
        goTo("BRAKE.LF");
        assertThat(hose()).hasCount(1);
        goTo("BRAKE.RF");
        var again = page.locator("main details", new Page.LocatorOptions().setHasText("as at the corner before"));
        assertThat(again).hasCount(1);
        assertThat(again.locator(".caution").first()).isHidden();
        again.locator("summary").click();
        assertThat(hose()).hasCount(1);
        assertThat(hose()).isVisible();
    }

    private Locator hose() {
        return page.locator(".caution", new Page.LocatorOptions().setHasText("Never hang a caliper by its hose"));
    }

    private void answer(String step, String field, String word) {
        goTo(step);
        var choice = page.locator("[id='" + field + "']");
        choice.evaluate("choice => { const folded = choice.closest('details'); if (folded) folded.open = true; }");
        choice.locator("button[value='" + word + "']").click();
    }

    private Locator open(String words) {
        return page.locator(".open").filter(new Locator.FilterOptions().setHasText(words));
    }

    private void goTo(String step) {
        page.locator("#steps a[href='#" + step + "']").click();
        assertThat(page.locator("#steps [aria-current]")).hasAttribute("href", "#" + step);
    }
}
