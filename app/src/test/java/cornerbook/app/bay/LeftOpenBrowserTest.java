package cornerbook.app.bay;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import cornerbook.app.book.work.WorkTick;
import cornerbook.app.door.Axe;
import cornerbook.app.door.Chromium;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What hands leave open, as they say so in the bay. */
class LeftOpenBrowserTest {
    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private BayShop shop;

    private String visitId;

    @BeforeEach
    void openTheShop(@TempDir Path folder) {
        var car = BayShop.untouched("demo-08");
        visitId = car.visits().getLast().id();
        shop = new BayShop(folder, List.of(car));
    }

    /** Two taps: the reason, and all that is missing here. It stays missing, and says why at the hand-over. */
    @Test
    void aWholeStepIsLeftOpenWithOneReason() {
        Page page = sheet("BATTERY", 1180, 820);
        page.getByText("Leave something open").click();
        page.getByText("A tool is missing").click();
        page.locator(".all-of-them").click();
        assertThat(page.locator(".left .open").first()).containsText("A tool is missing");
        assertThat(page.locator(".leave")).isHidden();
        assertThat(page.locator("#steps a[aria-current] small")).hasText(Pattern.compile("^0 of \\d"));
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(shop.book.records().notes(visitId).ticks())
                .isNotEmpty()
                .allMatch(tick ->
                        "TOOL_MISSING".equals(tick.reason()) && tick.person().equals("Ada"));
        page.locator("#steps a[href='#DEPART']").click();
        assertThat(page.locator("main")).containsText("Left open, Ada:");
        page.locator("#steps a[href='#BATTERY']").click();
        page.locator(".left button").first().click();
        assertThat(page.locator(".leave")).isVisible();
    }

    /** Without a reason nothing is left open; a person's own words are one. */
    @Test
    void oneThingIsLeftOpenInAPersonsOwnWords() {
        Page page = sheet("LIFT", 390, 844);
        page.getByText("Leave something open").click();
        var rocked = page.locator(".leave .row button", new Page.LocatorOptions().setHasText("rocked on the arms"));
        assertThat(rocked).isDisabled();
        page.getByText("Other words").click();
        assertThat(rocked).isDisabled();
        page.locator("[id='leave.words']").fill("Lift is being inspected");
        rocked.click();
        assertThat(page.locator(".left .open")).containsText("Lift is being inspected");
        var tick = page.locator("main button.tick", new Page.LocatorOptions().setHasText("Rocked on the arms"));
        assertThat(tick).hasAttribute("aria-pressed", "false");
        assertThat(page.locator("#link")).hasText("All in the book");
        tick.click();
        assertThat(page.locator(".left .open")).hasCount(0);
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(shop.book.records().notes(visitId).ticks())
                .extracting(WorkTick::done)
                .containsExactly(false, true);
    }

    @ParameterizedTest
    @CsvSource({"390, LIGHT, BATTERY", "820, DARK, BRAKE.LF", "1180, LIGHT, BRAKE.LF"})
    void itIsAccessibleWithTargetsForGloves(int width, ColorScheme look, String step) {
        Page page = sheet(step, width, 820);
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(look));
        page.getByText("Leave something open").click();
        page.getByText("No time").click();
        page.locator(".leave .row button").nth(1).click();
        assertThat(page.locator(".left .open")).hasCount(1);
        assertThat((Integer) page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                .isLessThanOrEqualTo(0);
        assertThat(page.evaluate("""
            () => [...document.querySelectorAll(".leaves button, .leaves summary")]
              .filter((each) => each.offsetHeight > 0 && (each.offsetHeight < 44 || each.offsetWidth < 44))
              .map((each) => each.outerHTML)
            """)).isEqualTo(List.of());
        Axe.assertNoViolation(page, step + " at " + width);
    }

    private Page sheet(String step, int width, int height) {
        var tablet = chromium.newTablet(width, height);
        tablet.addInitScript("localStorage.setItem('person', 'Ada')");
        Page page = tablet.newPage();
        page.navigate(shop.address("/bay/visits/" + visitId + "#" + step));
        assertThat(page.locator("#main h2")).isVisible();
        return page;
    }
}
