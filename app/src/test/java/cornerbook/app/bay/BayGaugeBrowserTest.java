package cornerbook.app.bay;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Keyboard;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import cornerbook.app.door.Chromium;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A gauge or caliper that types, by real keys of a real browser and without a pause: it loses nothing and is never trapped. */
class BayGaugeBrowserTest {
    /** Fields in which a value is typed, and the words that are chosen, as they stand on the step that is shown. */
    private static final String OPEN_FIELDS =
            "() => [...document.querySelectorAll('main .field:not(.words) input[id^=\"f.\"]')].filter((each) => each.checkVisibility() && each.value === '').map((each) => each.id)";

    private static final String CHOSEN =
            "() => [...document.querySelectorAll('main .choice [aria-pressed=true]')].map((each) => each.textContent)";

    /** A place that is no field, or a field without a value: to type at one that has a value is to change it. */
    private static final String LAY_HANDS_ON = """
            chance => {
              const places = [...document.querySelectorAll("main h2, main .choice button, #next a, main .field:not(.words) input[id^='f.']")]
                .filter((each) => each.checkVisibility() && !(each.matches("input") && each.value));
              places[Math.floor(chance * places.length)].focus();
            }""";

    private static final List<String> STEPS = List.of("BRAKE.LF", "BRAKE.RR", "OFF", "RECEIVE", "BATTERY");

    private static final String ON_TABLET =
            "async () => (await (await import(document.documentElement.dataset.assets + '/bay-store.mjs')).all('outbox')).map((each) => each.written)";

    private static final String FOCUSED = "() => document.activeElement.id";

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private BayShop shop;

    private String visitId;
    private Page page;

    @BeforeEach
    void openTheShop(@TempDir Path folder) {
        var car = BayShop.untouched("demo-08");
        visitId = car.visits().getLast().id();
        shop = new BayShop(folder, List.of(car));
        var tablet = chromium.newTablet(1180, 820);
        tablet.addInitScript("localStorage.setItem('person', 'Ada')");
        page = tablet.newPage();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Enter", "Tab"})
    void aBrakeCornerTakesEveryValueAndNoWordIsChosen(String key) {
        open("BRAKE.LF");
        type("7.9", key);
        type("7.8", key);
        type("24.91", key);
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(shop.readings(visitId))
                .extracting(reading -> reading.measure() + " " + reading.asWritten())
                .containsExactly("PAD_THICKNESS 7.9 mm", "PAD_THICKNESS 7.8 mm", "DISC_THICKNESS 24.91 mm");
        assertThat(page.evaluate(CHOSEN)).isEqualTo(List.of());
    }

    /** Digits and Enter alone, step after step, until the next step waits. */
    @Test
    void everyValueOfEveryStepIsTypedInItsOrder() {
        open("ON");
        page.locator("text=These wheels are on").click();
        assertThat(page.locator("main")).containsText("Recorded, in the book.");
        var steps = new ArrayList<String>();
        page.locator("#steps a").all().forEach(step -> steps.add(String.valueOf(step.getAttribute("href"))));
        for (var step : steps) {
            page.evaluate("hash => location.hash = hash", step);
            assertThat(page.locator("#steps [aria-current]")).hasAttribute("href", step);
            page.evaluate("() => document.querySelectorAll('main details').forEach((each) => (each.open = true))");
            page.evaluate(
                    "() => [...document.querySelectorAll('main .field:not(.words) input[id^=\"f.\"]')].find((each) => each.checkVisibility())?.focus()");
            for (int i = ((List<?>) page.evaluate(OPEN_FIELDS)).size(); i > 0; i--) {
                var at = String.valueOf(page.evaluate(FOCUSED));
                assertThat(at).as(step).startsWith("f.");
                type(plausible(at), "Enter");
                assertThat(page.evaluate(FOCUSED)).as(at + " goes on").isNotEqualTo(at);
            }
            assertThat(page.evaluate(OPEN_FIELDS)).as(step).isEqualTo(List.of());
            assertThat(page.evaluate(CHOSEN)).as(step).isEqualTo(List.of());
        }
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(shop.readings(visitId)).hasSizeGreaterThan(60);
        assertThat(shop.readings(visitId)).extracting(Reading::corrects).containsOnlyNulls();
    }

    @Test
    void whatCannotBeAReadingIsSaidAndTheNextValueTakesItsPlace() {
        open("BRAKE.LF");
        var field = page.locator("[id='f.DISC_THICKNESS_VARIATION.LF.']");
        field.click();
        type("24.92", "Enter");
        assertThat(page.locator("main")).containsText("24.92 mm cannot be, expected 0 to 2 mm.");
        assertThat(field).isFocused();
        type("0.009", "Enter");
        assertThat(field).hasValue("0.009");
        assertThat(field).not().isFocused();
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(shop.readings(visitId)).extracting(Reading::asWritten).containsExactly("0.009 mm");
    }

    /** WCAG 2.2, success criterion 2.1.2. */
    @Test
    void noFieldKeepsTheTabKey() {
        open("BRAKE.LF");
        var field = page.locator("[id='f.DISC_THICKNESS_VARIATION.LF.']");
        field.click();
        type("24.92", "Tab");
        assertThat(page.locator("main")).containsText("24.92 mm cannot be");
        assertThat(field).isFocused();
        page.keyboard().press("Tab");
        assertThat(field).not().isFocused();
        page.keyboard().press("Shift+Tab");
        assertThat(field).isFocused();
        page.keyboard().press("Shift+Tab");
        assertThat(field).not().isFocused();
    }

    @Test
    void aValueThatIsTypedAtAWordGoesToTheNextField() {
        open("BRAKE.LF");
        page.locator("main .choice button").first().focus();
        type("7.7", "Enter");
        assertThat(page.evaluate(CHOSEN)).isEqualTo(List.of());
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(shop.readings(visitId)).extracting(Reading::asWritten).containsExactly("7.7 mm");
    }

    @Test
    void aValueWithoutAPlacePressesNothingAndLiesInTheTrayUntilItsFieldIsTapped() {
        page.clock().install();
        open("BRAKE.LF");
        page.locator("#next .main").focus();
        // No time from key to key, however busy the machine is.
        page.clock().pauseAt(System.currentTimeMillis() + 1000);
        type("24.92", "Enter");
        type("0.009", "Enter");
        page.clock().resume();
        var tray = page.locator(".tray");
        assertThat(tray).containsText("Where does this belong?");
        assertThat(page.locator("#steps [aria-current]")).hasAttribute("href", "#BRAKE.LF");
        page.reload();
        page.locator("#who").click();
        page.locator("[id='language.fr']").click();
        page.locator("#panel-close").click();
        assertThat(tray).containsText("Où cela va-t-il?");
        page.locator("#who").click();
        page.locator("[id='language.en']").click();
        page.locator("#panel-close").click();
        tray.locator("text=24.92").click();
        page.locator("[id='f.DISC_THICKNESS.LF.']").click();
        assertThat(tray).not().containsText("24.92");
        tray.locator("text=Not a reading").click();
        assertThat(tray).isHidden();
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(shop.readings(visitId)).extracting(Reading::asWritten).containsExactly("24.92 mm");
        page.locator("#next .main").focus();
        page.keyboard().press("Enter");
        assertThat(page.locator("#steps [aria-current]")).hasAttribute("href", "#BRAKE.RF");
    }

    /** Fast as a gauge types, what cannot be at its field is kept aside; what fingers type stays at its field alone. */
    @Test
    void whatAGaugeTypedAtTheWrongFieldIsNotLost() {
        page.clock().install();
        open("BRAKE.LF");
        var field = page.locator("[id='f.DISC_THICKNESS_VARIATION.LF.']");
        field.click();
        page.keyboard().type("26.1", new Keyboard.TypeOptions().setDelay(120));
        page.keyboard().press("Enter");
        assertThat(page.locator("main")).containsText("26.1 mm cannot be");
        assertThat(page.locator(".tray")).isHidden();
        // No time from key to key, however busy the machine is.
        page.clock().pauseAt(System.currentTimeMillis() + 1000);
        type("24.92", "Enter");
        type("0.009", "Enter");
        page.clock().resume();
        assertThat(page.locator(".tray")).containsText("24.92");
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(shop.readings(visitId)).extracting(Reading::asWritten).containsExactly("0.009 mm");
    }

    @Test
    void whatAGaugeTypesInADialogOrAmongWordsPressesNothingAndIsKeptAside() {
        page.clock().install();
        open("BRAKE.LF");
        page.locator("#who").click();
        assertThat(page.locator("#panel-close")).isVisible();
        page.clock().pauseAt(System.currentTimeMillis() + 1000);
        type("24.92", "Enter");
        assertThat(page.locator("#panel-close")).isVisible();
        page.keyboard().press("Escape");
        page.locator("[id='remark.BRAKE_LF']").focus();
        type("7.9", "Enter");
        assertThat(page.locator("[id='remark.BRAKE_LF']")).hasValue("");
        page.clock().resume();
        assertThat(page.locator(".tray")).containsText("24.92");
        assertThat(page.locator(".tray")).containsText("7.9");
    }

    @Test
    void afterTheLastNumberOfACornerTheNextOneGoesToTheNextCorner() {
        open("BRAKE.LF");
        for (var value : List.of("7.9", "7.8", "24.91", "0.02", "0.009")) {
            type(value, "Enter");
        }
        assertThat(page.locator("#steps [aria-current]")).hasAttribute("href", "#BRAKE.LF");
        type("7.7", "Enter");
        assertThat(page.locator("#steps [aria-current]")).hasAttribute("href", "#BRAKE.RF");
        assertThat(page.locator("[id='f.PAD_THICKNESS.RF.OUTER']")).hasValue("7.7");
        assertThat(page.locator("#link")).hasText("All in the book");
    }

    /** Who fills what was left out does not type over what comes after it. */
    @Test
    void aValuePassesFieldsThatHaveOne() {
        open("OFF");
        page.locator("[id='f.TREAD_DEPTH.LF.CENTRE']").click();
        type("5.0", "Enter");
        page.locator("[id='f.TREAD_DEPTH.LF.OUTER']").click();
        type("5.1", "Enter");
        assertThat(page.locator("[id='f.TREAD_DEPTH.LF.CENTRE']")).not().isFocused();
        type("4.9", "Enter");
        assertThat(page.locator("[id='f.TREAD_DEPTH.LF.CENTRE']")).hasValue("5.0");
    }

    /**
     * Hands are anywhere when the gauge is read: at a field, at a word, at a button, at nothing. Each value is told apart by its own
     * digits, and is in the book or on the tablet.
     */
    @Test
    void noValueIsLostWhereverTheHandsAre() {
        var hands = new Random(7);
        int orders = Integer.getInteger("gauge.orders", 60);
        var typed = new ArrayList<String>();
        // Under load a test types no faster than a hand: what cannot be then stands at its field alone.
        var told = new HashSet<String>();
        for (int i = 0; i < orders; i++) {
            if (i % 12 == 0) {
                page.navigate(shop.address("/bay/visits/" + visitId + "#" + STEPS.get(hands.nextInt(STEPS.size()))));
                assertThat(page.locator("#main h2")).isVisible();
            }
            page.evaluate(LAY_HANDS_ON, hands.nextDouble());
            var value = "%d.%03d".formatted(3 + hands.nextInt(5), i);
            typed.add(value);
            type(value, hands.nextBoolean() ? "Enter" : "Tab");
            told.addAll(shownAsWrong());
        }
        page.waitForCondition(() -> lost(typed, told).isEmpty());
    }

    private Set<String> shownAsWrong() {
        return Set.copyOf(page.locator("main input[aria-invalid=true]").all().stream()
                .map(Locator::inputValue)
                .toList());
    }

    private Set<String> lost(List<String> typed, Set<String> told) {
        var lost = new HashSet<>(typed);
        lost.removeAll(told);
        lost.removeAll(kept());
        return lost;
    }

    /** In the book, or on the tablet: refused with a reason, or without a place. */
    private Set<String> kept() {
        var written = new ArrayList<>(
                shop.readings(visitId).stream().map(Reading::asWritten).toList());
        ((List<?>) page.evaluate(ON_TABLET)).forEach(each -> written.add(String.valueOf(each)));
        return written.stream().map(each -> each.split(" ", 2)[0]).collect(Collectors.toSet());
    }

    /** A gauge that types into a field that has a value replaces it; the change is asked about and nothing is strung together. */
    @Test
    void aTapSelectsWhatIsThere() {
        open("OFF");
        type("5.0", "Enter");
        page.locator("[id='f.TREAD_DEPTH.LF.OUTER']").click();
        type("5.1", "Enter");
        assertThat(page.locator("[id='f.TREAD_DEPTH.LF.OUTER']")).hasValue("5.1");
        assertThat(page.locator("main")).containsText("Why does it change?");
    }

    private void open(String step) {
        page.navigate(shop.address("/bay/visits/" + visitId + "#" + step));
        assertThat(page.locator("#main h2")).isVisible();
        assertThat(page.locator("#link")).hasText("All in the book");
    }

    private void type(String value, String key) {
        page.keyboard().type(value);
        page.keyboard().press(key);
    }

    private static String plausible(String id) {
        var measure = Measure.valueOf(id.split("\\.", 3)[1]);
        return switch (measure) {
            case TREAD_DEPTH -> "5.0";
            case PRESSURE_FOUND, PRESSURE_SET, SENSOR_PRESSURE -> "240";
            case WHEEL_TORQUE -> "120";
            case PAD_THICKNESS, PAD_THICKNESS_TRAILING -> "7.0";
            case DISC_THICKNESS -> "22.1";
            case DISC_DIAL_RADIUS -> "120";
            case HUB_DIAL_RADIUS -> "60";
            case BATTERY_VOLTAGE -> "12.6";
            case BATTERY_CRANKING_CURRENT -> "500";
            case BRAKE_FLUID_BOILING_POINT -> "200";
            case DISC_MOVED_BY -> "2";
            default -> measure.highest() > 5 ? "5" : "0.02";
        };
    }
}
