package cornerbook.app.desk.shop;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import cornerbook.app.book.shop.SheetStep;
import cornerbook.app.book.shop.StepOrder;
import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.desk.link.ShopLinks;
import cornerbook.app.door.Axe;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** The order of the work as the shop changes it, by finger and by keyboard. Cars are invented. */
class OrderTest {
    private static final String CAR = "demo-08";

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private ServedShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = new ServedShop(folder, List.of(ServedShop.car(CAR)));
    }

    @Test
    void aStepIsMovedByFingerAndOnByTheKeyboard() {
        var page = chromium.open(shop.address(ShopLinks.stepOrder()), 1180);
        button(page, "up.BATTERY").click();
        page.waitForURL("**#up.BATTERY");
        assertThat(page.evaluate("document.activeElement.id")).isEqualTo("up.BATTERY");
        stands(page, 7, "12 V battery");
        page.keyboard().press("Enter");
        stands(page, 6, "12 V battery");
        assertThat(shop.book().stepOrders().ofShop().steps())
                .containsSubsequence(SheetStep.ON, SheetStep.BATTERY, SheetStep.PRESSURE, SheetStep.TORQUE);
        page.getByText("The usual order again").click();
        stands(page, 8, "12 V battery");
        assertThat(shop.book().stepOrders().ofShop()).isEqualTo(StepOrder.USUAL);
    }

    @Test
    void whatSafetyAsksForStaysAndIsSaid() throws Exception {
        var page = chromium.open(shop.address(ShopLinks.stepOrder()), 1180);
        assertThat(button(page, "up.OFF").isDisabled()).isTrue();
        assertThat(page.locator(".order").innerText())
                .contains("The car is on the hoist before its wheels come off.")
                .contains("Stays last: a car is handed over when nothing is open, or somebody says why");
        var refused = shop.post(ShopLinks.stepOrder(), Map.of("up", "OFF"));
        assertThat(refused.statusCode()).isEqualTo(409);
        assertThat(refused.body()).contains("The car is on the hoist before its wheels come off.");
        assertThat(shop.post(ShopLinks.stepOrder(), Map.of("up", "RECEIVE")).statusCode())
                .isEqualTo(409);
        assertThat(shop.post(ShopLinks.stepOrder(), Map.of("down", "DRIVE")).statusCode())
                .isEqualTo(400);
        assertThat(shop.post(ShopLinks.stepOrder(), Map.of("up", "OFF", "car", "nobody"))
                        .statusCode())
                .isEqualTo(404);
        assertThat(shop.book().stepOrders().ofShop()).isEqualTo(StepOrder.USUAL);
    }

    @Test
    void aKindOfCarHasItsOwn() {
        var page = chromium.open(shop.address(CarLinks.car(CAR)), 1180);
        page.getByText("Order of the work on cars of this kind").click();
        button(page, "up.BRAKES").click();
        page.waitForURL("**#down.BRAKES");
        assertThat(page.locator("main").innerText()).contains("have this order of their own");
        assertThat(shop.book().stepOrders().ofShop()).isEqualTo(StepOrder.USUAL);
        assertThat(shop.book().stepOrders().of(ServedShop.car(CAR).vehicle()).steps())
                .containsSubsequence(SheetStep.BRAKES, SheetStep.OFF);
    }

    @Test
    void targetsAreLargeEnoughAndThePageIsAccessibleInBothLooks() {
        var page = chromium.open(shop.address(ShopLinks.stepOrder(CAR)), 390);
        for (int width : List.of(390, 820, 1180)) {
            page.setViewportSize(width, 844);
            for (var look : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
                page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(look));
                Axe.assertNoViolation(page, "order of the work, %s at %d".formatted(look, width));
                assertThat((Integer) page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                        .isLessThanOrEqualTo(0);
                for (var target : page.locator(".order button").all()) {
                    var box = target.boundingBox();
                    assertThat(Math.min(box.width, box.height)).isGreaterThanOrEqualTo(44);
                }
            }
        }
    }

    private static void stands(Page page, int place, String title) {
        page.locator(".order > li")
                .nth(place)
                .getByText(title, new Locator.GetByTextOptions().setExact(true))
                .first()
                .waitFor();
    }

    private static Locator button(Page page, String id) {
        return page.locator("[id='" + id + "']");
    }
}
