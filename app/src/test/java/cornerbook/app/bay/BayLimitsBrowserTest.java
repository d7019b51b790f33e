package cornerbook.app.bay;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import cornerbook.app.book.work.Declined;
import cornerbook.app.door.Axe;
import cornerbook.app.door.Chromium;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Vehicle;
import cornerbook.core.torque.Seat;
import cornerbook.core.torque.WheelFastener;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A value that is outside is told while the hand is on the wrench or the gauge, in a real browser whose network is cut. */
class BayLimitsBrowserTest {
    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private BayShop shop;

    private String visitId;
    private BrowserContext tablet;
    private Page page;

    @BeforeEach
    void openTheSheetAndCutTheNetwork(@TempDir Path folder) {
        var car = asking175(BayShop.untouched("demo-08"));
        visitId = car.visits().getLast().id();
        shop = new BayShop(folder, List.of(car));
        tablet = chromium.newTablet(1180, 820);
        tablet.addInitScript("localStorage.setItem('person', 'Ada')");
        page = tablet.newPage();
        page.navigate(shop.address("/bay/visits/" + visitId + "#ON"));
        page.locator("text=These wheels are on").click();
        assertThat(page.locator("#link")).hasText("All in the book");
        tablet.setOffline(true);
    }

    @Test
    void aTorqueOf140Of175IsToldAtOnceAndNoTickStandsUntilItIsTorquedAgain() {
        goTo("TORQUE");
        assertThat(page.locator(".large")).containsText("175 N·m");
        for (var torque : List.of("140", "175", "175", "175")) {
            type(torque);
        }
        var step = page.locator("#steps a[href='#TORQUE']");
        assertThat(said("LF")).hasText("Not tight enough. Set the wrench to 175 N·m and go round this wheel again.");
        assertThat(page.locator(".corner.LF .field")).hasClass(Pattern.compile("\\bunsafe\\b"));
        assertThat(said("RF")).hasCount(0);
        assertThat(step).not().hasClass("all");
        Axe.assertNoViolation(page, "a torque outside its limits");
        goTo("DEPART");
        assertThat(page.locator(".open")).hasCount(1);
        assertThat(page.locator(".open")).containsText("LF: Not tight enough.");
        assertThat(page.locator(".knows")).isVisible();
        goTo("TORQUE");
        retype("f.WHEEL_TORQUE.LF..on", "200");
        assertThat(said("LF")).containsText("Too tight.");
        assertThat(step).not().hasClass("all");
        retype("f.WHEEL_TORQUE.LF..on", "175");
        assertThat(said("LF")).hasCount(0);
        // Why it was changed is asked, and no step is done that waits for an answer.
        assertThat(step).hasClass("asks");
        page.locator(".corner.LF").getByText("Measured again.").click();
        assertThat(step).hasClass("all");
    }

    /** Digits and Enter alone: what is said moves neither the focus nor the next field. */
    @Test
    void aThinPadAndAWornGrooveAreToldAndTheGaugeGoesOn() {
        goTo("BRAKE.LF");
        type("0.5");
        assertThat(page.locator(":focus")).hasAttribute("id", "f.PAD_THICKNESS.LF.INNER");
        assertThat(page.locator(".note.unsafe")).containsText("the car must not be driven. Replace the pads");
        type("7.9");
        assertThat(page.locator(".note.unsafe")).hasCount(1);
        goTo("OFF");
        type("1.0");
        assertThat(page.locator(":focus")).hasAttribute("id", "f.TREAD_DEPTH.LF.CENTRE");
        assertThat(said("LF")).hasText("Under 1.6 mm this tyre must not be driven on.");
    }

    /** A digit too many: what was likely meant is one tap, and with its reason it goes to the book when the link is back. */
    @Test
    void anOdometerThatTheCarCanHardlyHaveIsAskedAboutAtOnce() {
        goTo("RECEIVE");
        long right = Math.round(shop.book.visits().find(visitId).orElseThrow().odometerKm()) + 120;
        retype("odometer", right + "0");
        var said = page.locator("[id='odometer.said']");
        assertThat(said.locator(".note.asks")).containsText("the odometer read");
        Axe.assertNoViolation(page, "an odometer that is asked about");
        said.getByText(right + "\u00a0km: a digit too many").click();
        assertThat(page.locator("#odometer")).hasValue(String.valueOf(right));
        said.getByText("Typed wrong.").click();
        assertThat(said).isEmpty();
        tablet.setOffline(false);
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(shop.book.visits().find(visitId).orElseThrow().odometerKm()).isEqualTo((double) right);
    }

    @Test
    void aPressureFarOffIsTold() {
        goTo("PRESSURE");
        retype("f.PRESSURE_SET.LF..on", "180");
        assertThat(page.locator(".corner.LF .note.outside")).containsText("Set it again until the gauge shows");
        tablet.setOffline(false);
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(page.locator(".corner.LF .note.outside")).hasCount(1);
        assertThat(shop.readings(visitId)).hasSize(1);
    }

    @Test
    void oneTapSaysThatTheCustomerDoesNotWantWhatWasAdvised() {
        goTo("BRAKE.LF");
        type("2.0");
        type("7.9");
        tablet.setOffline(false);
        assertThat(page.locator("#link")).hasText("All in the book");
        goTo("DEPART");
        var line =
                page.locator(".declines button").filter(new Locator.FilterOptions().setHasText("The brake pads at LF"));
        assertThat(line).hasAttribute("aria-pressed", "false");
        line.click();
        assertThat(line).hasAttribute("aria-pressed", "true");
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(line).containsText("Declined by");
        Axe.assertNoViolation(page, "work that the customer declines");
        assertThat(Declined.standing(shop.book.records().notes(visitId).declined()))
                .hasSize(1);
    }

    private static CarHistory asking175(CarHistory car) {
        var vehicle = car.vehicle();
        return new CarHistory(
                new Vehicle(
                        vehicle.id(),
                        vehicle.name(),
                        vehicle.plate(),
                        vehicle.vin(),
                        vehicle.drive(),
                        vehicle.electric(),
                        vehicle.jurisdiction(),
                        vehicle.front(),
                        vehicle.rear(),
                        new WheelFastener("M14×1.5", 5, Seat.CONE, 175, 80),
                        vehicle.battery(),
                        vehicle.brakeFluid(),
                        vehicle.details()),
                car.customer(),
                car.sets(),
                car.visits());
    }

    private Locator said(String corner) {
        return page.locator(".corner." + corner + " :is(.note.unsafe, .note.outside)");
    }

    private void goTo(String step) {
        page.locator("#steps a[href='#" + step + "']").click();
        assertThat(page.locator("#steps [aria-current]")).hasAttribute("href", "#" + step);
    }

    private void type(String value) {
        page.keyboard().type(value);
        page.keyboard().press("Enter");
    }

    private void retype(String field, String value) {
        page.locator("[id='" + field + "']").click();
        type(value);
    }
}
