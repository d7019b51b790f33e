package cornerbook.app.bay;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import cornerbook.app.door.Chromium;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** What was read off a wheel before the wheels are recorded stays where it was typed, in a real browser. */
class BayWheelsBrowserTest {
    private static final List<String> READ = List.of("tag.LF", "dateCode.LF", "sensor.LF");

    /** Keys without a pause, however busy the machine is. */
    private static final String TYPES_LIKE_A_GAUGE = """
            value => {
              const at = document.activeElement;
              for (const key of [...value, "Enter"]) {
                const passes = at.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true, cancelable: true }));
                if (passes && key.length === 1) {
                  at.setRangeText(key, at.selectionStart, at.selectionEnd, "end");
                  at.dispatchEvent(new InputEvent("input", { bubbles: true }));
                }
                at.dispatchEvent(new KeyboardEvent("keyup", { key, bubbles: true }));
              }
            }""";

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private BayShop shop;

    private Page page;

    @BeforeEach
    void openTheSheet(@TempDir Path folder) {
        var car = BayShop.untouched("demo-08");
        shop = new BayShop(folder, List.of(car));
        var tablet = chromium.newTablet(1180, 820);
        tablet.addInitScript("localStorage.setItem('person', 'Ada')");
        page = tablet.newPage();
        page.navigate(shop.address("/bay/visits/" + car.visits().getLast().id() + "#ON"));
        assertThat(page.locator("[id='tag.LF']")).isVisible();
    }

    @Test
    void whatWasReadOffAWheelOutlivesAnotherSetAndAnotherStepUntilTheWheelsAreRecorded() {
        for (var id : READ) {
            page.locator("[id='%s']".formatted(id)).fill(value(id));
        }
        page.locator(".tick[aria-pressed='false']")
                .getByText("Put on the")
                .or(page.locator(".tick[aria-pressed='false']").getByText("stays on"))
                .first()
                .click();
        stands();
        page.locator("#steps a[href='#OFF']").click();
        page.locator("#steps a[href='#ON']").click();
        stands();
        page.locator("[id='tag.LF']").fill("");
        page.locator("text=These wheels are on").click();
        assertThat(page.locator("main")).containsText("Recorded");
        for (var id : READ) {
            assertThat(page.locator("[id='%s']".formatted(id))).hasValue("");
        }
    }

    /** A value that a gauge typed there lies in the tray and does not come back. */
    @Test
    void whatAGaugeTypedThereDoesNotComeBack() {
        page.locator("[id='tag.LF']").click();
        page.evaluate(TYPES_LIKE_A_GAUGE, "5.3");
        assertThat(page.locator(".tray .stray button").first()).hasText("5.3");
        page.locator("#steps a[href='#OFF']").click();
        page.locator("#steps a[href='#ON']").click();
        assertThat(page.locator("[id='tag.LF']")).hasValue("");
    }

    private void stands() {
        for (var id : READ) {
            assertThat(page.locator("[id='%s']".formatted(id))).hasValue(value(id));
        }
    }

    private static String value(String id) {
        return switch (id) {
            case "dateCode.LF" -> "2324";
            case "sensor.LF" -> "4F00A1B2";
            default -> "08S1";
        };
    }
}
