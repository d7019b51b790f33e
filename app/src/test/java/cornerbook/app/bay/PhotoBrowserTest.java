package cornerbook.app.bay;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import cornerbook.app.book.photo.Photo;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.app.door.Axe;
import cornerbook.app.door.Chromium;
import cornerbook.app.photo.Photos;
import cornerbook.core.finding.Subject;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A photo is taken at a corner, chosen for the sheet on the tablet, and taken off it at the desk. */
class PhotoBrowserTest {
    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private BayShop shop;

    private String visitId;
    private Path file;

    @BeforeEach
    void openTheShop(@TempDir Path folder) throws Exception {
        var car = BayShop.untouched("demo-08");
        visitId = car.visits().getLast().id();
        shop = new BayShop(folder.resolve("book"), List.of(car));
        file = Files.write(
                folder.resolve("photo.jpg"), Photos.patches(8, 1200, 900).content());
    }

    @Test
    void photoGoesOnTheSheetFromTheBayAndOffItAtTheDesk() {
        var tablet = chromium.newTablet(1180, 820);
        tablet.addInitScript("localStorage.setItem('person', 'Ada')");
        Page bay = tablet.newPage();
        bay.navigate(shop.address("/bay/visits/" + visitId + "#BRAKE_LF"));
        bay.locator("#steps a", new Page.LocatorOptions().setHasText("Brake LF"))
                .click();
        assertThat(bay.locator("#main h2")).containsText("Brake left front");
        bay.locator("input[type=file]").setInputFiles(file);
        bay.locator(".photos button").click();
        var choice = bay.locator("dialog .tick");
        assertThat(choice).hasAttribute("aria-pressed", "false");
        choice.click();
        bay.locator("dialog select").selectOption("CALIPER");
        assertThat(bay.locator("dialog img")).isVisible();
        Axe.assertNoViolation(bay, "photo on the tablet");
        bay.locator("dialog", new Page.LocatorOptions().setHasText("Close"))
                .getByText("Close")
                .click();
        assertThat(bay.locator("#link")).hasText("All in the book");
        assertThat(photo().onSheet()).isTrue();
        assertThat(photo().part()).isEqualTo(Subject.Part.CALIPER);

        for (int width : new int[] {390, 1180}) {
            Page desk = chromium.open(shop.address(VisitLinks.findings(visitId)), width);
            assertThat(desk.locator("#photos input[type=checkbox]")).isChecked();
            assertThat((Integer) desk.evaluate("document.documentElement.scrollWidth - innerWidth"))
                    .isLessThanOrEqualTo(0);
            Axe.assertNoViolation(desk, "findings at " + width);
        }
        Page desk = chromium.open(shop.address(VisitLinks.findings(visitId)), 1180);
        desk.locator("#photos input[type=checkbox]").uncheck();
        desk.locator("#photos")
                .getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions())
                .click();
        desk.waitForLoadState();
        assertThat(desk.locator("#photos input[type=checkbox]")).not().isChecked();
        assertThat(photo().onSheet()).isFalse();
        assertThat(photo().part()).isEqualTo(Subject.Part.CALIPER);
    }

    private Photo photo() {
        return shop.book.photos().list(visitId).getFirst();
    }
}
