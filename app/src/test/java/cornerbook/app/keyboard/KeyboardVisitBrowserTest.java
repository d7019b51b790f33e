package cornerbook.app.keyboard;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import cornerbook.app.bay.BayRoom;
import cornerbook.app.cars.PlausibleReading;
import cornerbook.app.desk.Room;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.core.car.CarHistory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/**
 * A whole first visit by keyboard alone, from the first page of an empty book until the hand-over: Tab, Shift+Tab, Enter, the space
 * bar, arrows and what is typed. After each key something has the focus, shows it (WCAG 2.2, 2.4.7), is not under a bar (2.4.11),
 * and lets go of it again (2.1.2). The car is invented.
 */
class KeyboardVisitBrowserTest {
    /** More than any page has places: who presses Tab as often as this is trapped. */
    private static final int TRAPPED = 250;

    /** From opening a page with readings until one that was typed is stored. */
    private static final int MOST_TABS_TO_STORE = 12;

    /** What has the focus: where, and whether a person sees that. */
    private static final String FOCUSED = """
            async () => {
              await new Promise((drawn) => requestAnimationFrame(drawn));
              const at = document.activeElement;
              if (!at || at === document.body || !at.checkVisibility()) { return { at: "nothing", seen: false }; }
              const box = at.getBoundingClientRect();
              const top = document.elementFromPoint(box.x + Math.min(box.width, innerWidth) / 2, box.y + Math.min(box.height, 40) / 2);
              const uncovered = top !== null && (at.contains(top) || top.contains(at) || at.parentElement.contains(top));
              const style = getComputedStyle(at);
              const ringed = style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2;
              const choice = at.closest(".choice");
              return {
                at: `${at.tagName} ${at.id} ${at.textContent.trim().slice(0, 60)}`,
                html: at.outerHTML.slice(0, 200),
                id: at.id,
                seen: uncovered && ringed,
                next: at.matches("#next .main"),
                bar: at.closest("#steps, header") !== null,
                tick: at.matches("main button.tick[aria-pressed=false]:enabled"),
                field: at.matches("main input[id^='f.']:not(details .field input)") && at.value === "",
                word: at.matches("main .field:not(details .field) .choice button") && !choice.querySelector("[aria-pressed=true]")
                  && at === (choice.innerText.includes("not done") ? [...choice.querySelectorAll("button")].at(-1) : choice.querySelector("button")),
                wheels: at.textContent === "These wheels are on" && !document.querySelector("main").innerText.includes("Recorded"),
                leaves: at.textContent.startsWith("The car leaves"),
              };
            }""";

    /** What is asked of a new car. */
    private static final Map<String, String> FIRST = new LinkedHashMap<>();

    static {
        FIRST.put("/vehicle/plate", "QX 7007");
        FIRST.put("/customer/name", "Tamsin Orlavet");
        FIRST.put("/customer/phone", "555 0100");
        FIRST.put("/vehicle/frontAxle/tyreSize", "225/55R18");
    }

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private ServedShop shop;

    private Page page;

    @BeforeEach
    void openAnEmptyBook(@TempDir Path folder) {
        shop = new ServedShop(folder, List.of(), () -> new Room[] {new BayRoom()});
        page = chromium.newPage(1180, 820);
    }

    @Test
    void aWholeFirstVisitByKeyboardAlone() {
        newCar();
        press("Enter");
        page.waitForURL("**/bay/visits/*");
        assertThat(page.locator("#person")).isFocused();
        page.keyboard().type("Ada");
        press("Enter");
        assertThat(page.locator("#steps [aria-current]")).hasCount(1);
        int steps = page.locator("#steps a").count();
        for (int i = 1; i < steps; i++) {
            String step = String.valueOf(page.locator("#steps [aria-current]").getAttribute("href"));
            work(step);
            press("Enter");
            assertThat(page.locator("#steps [aria-current]")).not().hasAttribute("href", step);
            look(step + " was left");
        }
        assertThat(page.locator(".missing")).hasText("Nothing is missing.");
        tabTo("leaves", "Tab");
        press("Enter");
        assertThat(page.locator("main")).containsText("Handed over by Ada.");
        look("handed over");
        assertThat(page.locator("a[href$='handover.pdf']")).isVisible();
        tabToAddress("a[href$='handover.pdf']");
    }

    /** By the landmarks: to what is on the page, to a corner, to its first field, to what stores. */
    @Test
    void aReadingAtTheDeskIsStoredWithinTwelveTabs() {
        var car = untouched();
        var visit = car.visits().getLast().id();
        shop.book().records().addCar(car);
        page.navigate(shop.address("/visits/" + visit));
        int tabs = tabToAddress(".skip[href='#main']");
        press("Enter");
        look("main");
        tabs += tabToAddress(".jump a[href='#LF']");
        press("Enter");
        tabs += tabToAddress("#LF input[type=text]");
        page.keyboard().type("5.1");
        press("Shift+Tab");
        tabs += 1 + tabToAddress("a[href='#store']");
        press("Enter");
        look("the button that stores");
        press("Enter");
        assertThat(page.locator("main")).containsText("1 reading is stored.");
        assertThat(shop.readings(visit)).hasSize(1);
        assertThat(tabs).isLessThanOrEqualTo(MOST_TABS_TO_STORE);
    }

    /** A car of today whose visit has nothing read yet. */
    private static CarHistory untouched() {
        var car = ServedShop.car("demo-08");
        var visits = new ArrayList<>(car.visits());
        visits.add(visits.removeLast().withReadings(List.of()).withLeftOn(Map.of()));
        return new CarHistory(car.vehicle(), car.customer(), car.sets(), visits);
    }

    /** From the first page: plate, name, telephone, tyre size and which set is on; then the odometer. */
    private void newCar() {
        page.navigate(shop.address("/"));
        tabToAddress("a[href='/cars/new']");
        press("Enter");
        page.waitForURL("**/cars/new");
        for (var field : FIRST.entrySet()) {
            tabTo(field.getKey());
            page.keyboard().type(field.getValue());
        }
        press("Tab");
        assertThat(page.locator("input[type=radio]:focus")).hasCount(1);
        while (!page.locator("input[value=SUMMER]").isChecked()) {
            press("Space");
            press(page.locator("input[value=SUMMER]").isChecked() ? "Shift" : "ArrowDown");
        }
        look("summer wheels");
        submit();
        page.waitForURL("**/visits/new*");
        assertThat(page.locator("#odometer")).isFocused();
        look("odometer");
        page.keyboard().type("30000");
        submit();
        assertThat(page.locator("a[href^='/bay/visits/']").first()).isVisible();
        tabToAddress("a[href^='/bay/visits/']");
    }

    private void submit() {
        tabToAddress("main form:is(.door, .narrow) > button[type=submit]:not([disabled])");
        press("Enter");
    }

    private void work(String step) {
        // Hands begin anywhere; then once back to what stands above, and forward again.
        pass(step, "next", "Tab");
        pass(step, "bar", "Shift+Tab");
        pass(step, "next", "Tab");
    }

    /** From place to place until one of a kind has the focus; what has no answer gets one on the way. */
    private void pass(String step, String until, String key) {
        var at = look(step);
        for (int i = 0; i < TRAPPED; i++) {
            if (is(at, until)) {
                return;
            }
            if (is(at, "tick")) {
                press("Space");
                page.waitForCondition(() -> !is(focused(), "tick"));
                look(step + " ticked " + at.get("at"));
            } else if (is(at, "word")) {
                press("Space");
                at = look(step + " chosen " + at.get("at"));
                continue;
            } else if (is(at, "field")) {
                page.keyboard().type(PlausibleReading.of(String.valueOf(at.get("id"))));
            } else if (is(at, "wheels")) {
                press("Enter");
                assertThat(page.locator("main")).containsText("Recorded, in the book.");
                look(step + " recorded");
            }
            var from = at.get("html");
            press(key);
            at = look(step);
            assertThat(at.get("html")).as("%s goes on", key).isNotEqualTo(from);
        }
        throw new AssertionError("trapped at " + step + ": " + focused());
    }

    private void tabTo(String kind, String key) {
        for (int i = 0; !is(look(kind), kind); i++) {
            assertThat(i).as("presses until %s", kind).isLessThan(TRAPPED);
            press(key);
        }
    }

    private void tabTo(String id) {
        tabToAddress("[id='" + id + "']");
    }

    private int tabToAddress(String selector) {
        for (int i = 0; i < TRAPPED; i++) {
            if ((boolean) page.evaluate("selector => document.activeElement.matches(selector)", selector)) {
                look(selector);
                return i;
            }
            press("Tab");
        }
        throw new AssertionError("no key leads to " + selector + ": " + focused());
    }

    private void press(String key) {
        page.keyboard().press(key);
    }

    private Map<?, ?> focused() {
        return (Map<?, ?>) page.evaluate(FOCUSED);
    }

    private Map<?, ?> look(String when) {
        var at = focused();
        assertThat(at.get("seen")).as("%s: %s", when, at).isEqualTo(true);
        return at;
    }

    private static boolean is(Map<?, ?> at, String kind) {
        return Boolean.TRUE.equals(at.get(kind));
    }
}
