package cornerbook.app.bay;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import cornerbook.app.door.Chromium;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** Takes the pictures of docs/bay.md anew. Run by hand, as that page says. */
@Tag("long")
class BayPicturesTest {
    private static final Path FOLDER = Path.of("../docs/pictures");
    private static final int LARGEST_BYTES = 150_000;

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private BayShop shop;

    private Page page;
    private String visit;

    @BeforeEach
    void openTheSheet(@TempDir Path folder) {
        var car = BayShop.untouched("demo-08");
        visit = "/bay/visits/" + car.visits().getLast().id();
        shop = new BayShop(folder, List.of(car));
        var tablet = chromium.newTablet(1180, 820);
        tablet.addInitScript("localStorage.person ??= 'Ada'");
        page = tablet.newPage();
    }

    @Test
    void takeThem() {
        open("OFF", 1180, 820);
        for (String depth : List.of("5.0", "4.9", "5.1", "5.0", "2.1")) {
            page.keyboard().type(depth);
            page.keyboard().press("Enter");
        }
        assertThat(page.locator("#link")).hasText("All in the book");
        take("bay-wheels-off");
        page.locator("#spoken").click();
        page.locator("#spoken-text")
                .fill("Right rear 5.0, five one, 52. Left rear inner pad six point five, free, disc nine");
        take("bay-spoken");
        page.keyboard().press("Escape");
        open("ON", 1180, 820);
        page.locator("text=These wheels are on").click();
        assertThat(page.locator("main")).containsText("Recorded, in the book.");
        open("TORQUE", 390, 844);
        page.locator("#who").click();
        page.locator("[id='units.us']").click();
        take("bay-settings");
        page.locator("#panel-close").click();
        page.locator(".LF .due").click();
        page.locator(".LF .due").click();
        assertThat(page.locator(".LF .nut[aria-pressed=true]")).hasCount(2);
        take("bay-torque");
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
        open("DEPART", 820, 760);
        take("bay-hand-over");
    }

    private void open(String step, int width, int height) {
        page.setViewportSize(width, height);
        page.navigate(shop.address(visit + "#" + step));
        page.reload();
        assertThat(page.locator("#main h2")).isVisible();
    }

    private void take(String name) {
        byte[] picture = page.screenshot(new Page.ScreenshotOptions().setPath(FOLDER.resolve(name + ".png")));
        assertThat(picture.length).as(name).isLessThan(LARGEST_BYTES);
    }
}
