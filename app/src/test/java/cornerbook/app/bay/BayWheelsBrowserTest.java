package cornerbook.app.bay;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import cornerbook.app.cars.CarLibrary;
import cornerbook.app.door.Chromium;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
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
              for (const key of [...value, "Enter"]) {
                const passes = document.activeElement.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true, cancelable: true }));
                const at = document.activeElement;
                if (passes && key.length === 1 && at.setRangeText) {
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
    private String visitId;

    @BeforeEach
    void openTheSheet(@TempDir Path folder) {
        var car = BayShop.untouched("demo-08");
        visitId = car.visits().getLast().id();
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

    /** At the rack: the scanner types wherever the focus stands, and the hands are at the grooves of that wheel. */
    @Test
    void aScannedTagOpensItsSetAtItsReadings() {
        page.locator("#steps a[href='#BRAKE.LF']").click();
        page.locator("[id='f.PAD_THICKNESS.LF.OUTER']").click();
        page.evaluate(TYPES_LIKE_A_GAUGE, "08W2");
        assertThat(page.locator("#main h2").first()).hasText("Wheels on");
        assertThat(page.locator("section.corner:has(h3:has-text('08W2')) input:focus"))
                .hasCount(1);
        page.locator("#steps a[href='#BRAKE.LF']").click();
        assertThat(page.locator("[id='f.PAD_THICKNESS.LF.OUTER']")).hasValue("");
        assertThat(page.locator(".tray .stray")).hasCount(0);
    }

    /** A wheel that is on the car opens where it is read as it comes off. */
    @Test
    void aScannedTagOfAWheelOnTheCarOpensThere() {
        page.evaluate("document.activeElement.blur()");
        page.evaluate(TYPES_LIKE_A_GAUGE, "08S1");
        assertThat(page.locator("#main h2").first()).hasText("Wheels off");
    }

    @Test
    void aTagScannedInTheListOfVisitsOpensTheVisitOfItsCar() {
        page.navigate(shop.address("/bay/visits"));
        assertThat(page.locator("#tag")).isVisible();
        page.evaluate("document.activeElement.blur()");
        page.keyboard().type("08W2");
        page.keyboard().press("Enter");
        assertThat(page.locator("#main h2").first()).hasText("Wheels on");
        assertThat(page.locator("section.corner:has(h3:has-text('08W2')) input:focus"))
                .hasCount(1);
    }

    /** Where there is no set of the season, the wheels that it came on are filled in, and that is asked about. */
    @Test
    void wheelsThatStayForWantOfOthersAreNotFilledInSilently(@TempDir Path another) {
        var bare = CarLibrary.car(CarLibrary.text("bare-electric-first-visit"));
        var came = bare.visits().getLast().withLeftOn(Map.of());
        var first = new CarHistory(bare.vehicle(), bare.customer(), bare.sets(), List.of(came));
        try (var only = new BayShop(another, List.of(first))) {
            page.navigate(only.address("/bay/visits/" + bare.visits().getLast().id() + "#ON"));
            assertThat(page.locator(
                            ".note.asks", new Page.LocatorOptions().setHasText("No set of this season is in store")))
                    .isVisible();
        }
        page.navigate(shop.address("/bay/visits/" + visitId + "#ON"));
        assertThat(page.locator(".note", new Page.LocatorOptions().setHasText("Filled in as the wheel plan has")))
                .not()
                .hasClass("note asks");
    }

    /**
     * Worn when it came off in spring, and a visit in summer lay between: what was asked for then stands where the set is chosen, and
     * nothing looks as if somebody had chosen it.
     */
    @Test
    void aSetForWhichTyresWereToBeOrderedIsNotFilledInSilently(@TempDir Path another) {
        var worn = CarLibrary.car(CarLibrary.text("hybrid-in-order")
                .replace("\"value\": \"8.9 mm\"", "\"value\": \"5.6 mm\"")
                .replace("\"value\": \"8.0 mm\"", "\"value\": \"3.0 mm\""));
        var spring = worn.visits().get(1);
        var summer = new Visit(
                "between",
                LocalDate.of(2026, 7, 10),
                spring.odometerKm() + 1000,
                spring.leftOn(),
                spring.leftOn(),
                List.of());
        var autumn = worn.visits().getLast().withReadings(List.of()).withLeftOn(Map.of());
        var car = new CarHistory(
                worn.vehicle(),
                worn.customer(),
                worn.sets(),
                List.of(worn.visits().getFirst(), spring, summer, autumn));
        try (var only = new BayShop(another, List.of(car))) {
            page.navigate(only.address("/bay/visits/" + autumn.id() + "#ON"));
            var asks = page.locator(".note.asks");
            assertThat(asks).hasCount(2);
            assertThat(asks.first()).containsText("20 Apr 2026: Order new tyres.");
            assertThat(asks.last()).containsText("Something was asked for at this set");
            var winter = page.locator(".tick", new Page.LocatorOptions().setHasText("Put on the winter set"));
            assertThat(winter).hasAttribute("aria-pressed", "false");
            winter.click();
            assertThat(winter).hasAttribute("aria-pressed", "true");
            assertThat(asks).hasCount(1);
        }
    }

    /** The wrong wheel stops with one sentence, which goes when another is read there. */
    @Test
    void aWrongWheelStopsUntilAnotherIsReadThere() {
        var chosen = page.locator("[id='wheel.LF']").inputValue();
        var stop = page.locator(".mixed .note.wrong");
        page.locator("[id='tag.LF']").fill("08S1");
        page.locator("text=These wheels are on").click();
        assertThat(stop).hasText("Stop: 08S1 was read at LF, %s is chosen there.".formatted(chosen));
        assertThat(page.locator("main")).not().containsText("Recorded");
        page.locator("[id='tag.LF']").fill(chosen);
        page.locator("[id='tag.LF']").blur();
        assertThat(stop).hasCount(0);
        assertThat(page.locator(".corner.LF .note.wrong")).hasCount(0);
        page.locator("text=These wheels are on").click();
        assertThat(page.locator("main")).containsText("Recorded");
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
