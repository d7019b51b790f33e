package cornerbook.app.bay;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import cornerbook.app.cars.PlausibleReading;
import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.door.Chromium;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A car that nobody knows, in a book that is empty, until it is handed over. It is invented. */
class FirstVisitBrowserTest {
    private static final int MOST_TAPS = 70;

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private BayShop shop;

    private final Map<String, Integer> taps = new LinkedHashMap<>();
    private String at = "desk";
    private Page page;

    @BeforeEach
    void openAnEmptyBook(@TempDir Path folder) {
        shop = new BayShop(folder, List.of());
        page = chromium.newTablet(1180, 820).newPage();
    }

    private void tap(Locator target) {
        target.click();
        taps.merge(at, 1, Integer::sum);
    }

    /** Each place of each step that is not folded; what is typed, Enter and scrolling count nothing. */
    @Test
    void aFirstVisitTakesFewTaps() {
        newCar();
        assertThat(page.locator("#next .main")).isVisible();
        for (boolean more = true; more; ) {
            at = String.valueOf(page.evaluate("location.hash.slice(1)"));
            at = at.isEmpty() ? "RECEIVE" : at;
            page.locator(
                            "#main > button.tick[aria-pressed='false']:visible, .ticks button.tick[aria-pressed='false']:visible")
                    .all()
                    .forEach(this::tap);
            if (at.equals("ON")) {
                tap(page.getByText("These wheels are on"));
                assertThat(page.locator("main")).containsText("Recorded");
            }
            page.locator(".look > button.tick[aria-pressed='false']:visible")
                    .all()
                    .forEach(this::tap);
            words();
            typed();
            more = goOn();
        }
        assertThat(page.locator(".missing")).hasText("Nothing is missing.");
        assertThat(page.locator(".open")).hasCount(0);
        tap(page.getByText("The car leaves"));
        assertThat(page.locator("main")).containsText("Handed over by Ada.");
        int all = taps.values().stream().mapToInt(Integer::intValue).sum();
        assertThat(all).as("%s", taps).isLessThanOrEqualTo(MOST_TAPS);
    }

    private void newCar() {
        page.navigate(shop.address("/"));
        tap(page.locator("a[href='" + CarLinks.newCar() + "']").first());
        page.keyboard().type("QX 7007");
        for (var field : List.of(
                Map.entry("/customer/name", "Tamsin Orlavet"),
                Map.entry("/customer/phone", "555 0100"),
                Map.entry("/vehicle/frontAxle/tyreSize", "225/55R18"))) {
            tap(page.locator("[id='" + field.getKey() + "']"));
            page.keyboard().type(field.getValue());
        }
        tap(page.locator("input[value=SUMMER]"));
        tap(page.locator("main form button[type=submit]:visible:not([disabled])")
                .last());
        assertThat(page.locator("#odometer")).isFocused();
        page.keyboard().type("30000");
        tap(page.locator("main form button[type=submit]:visible:not([disabled])")
                .last());
        tap(page.locator("a[href^='/bay/visits/']").first());
        assertThat(page.locator("#person")).isFocused();
        page.keyboard().type("Ada");
        page.keyboard().press("Enter");
    }

    /** What is as it should be at once, where the sheet has that; then each word that has no answer. */
    private void words() {
        for (var row : page.locator(".at-once").all()) {
            var everywhere = row.locator("button").last();
            if (row.isVisible() && "false".equals(everywhere.getAttribute("aria-pressed"))) {
                tap(everywhere);
            }
        }
        for (var choice :
                page.locator("main .field:not(details .field) .choice:visible").all()) {
            if (choice.locator("[aria-pressed='true']").count() == 0) {
                var words = choice.locator("button");
                tap(choice.innerText().contains("not done") ? words.last() : words.first());
            }
        }
    }

    /** A gauge types where the hands are; a tap only where they are not. */
    private void typed() {
        var places = page.locator("main .field:not(.words):not(details .field) input[id^='f.']:visible");
        for (int i = 0; i < places.count(); i++) {
            var place = places.nth(i);
            if (!place.inputValue().isEmpty()) {
                continue;
            }
            if (!(boolean) place.evaluate("each => document.activeElement === each")) {
                tap(place);
            }
            page.keyboard().type(PlausibleReading.of(String.valueOf(place.getAttribute("id"))));
            page.keyboard().press("Enter");
        }
    }

    private boolean goOn() {
        var next = page.locator("#next .main");
        if (next.count() == 0) {
            return false;
        }
        String title = String.valueOf(next.textContent()).replaceFirst("^Next: ", "");
        tap(next);
        assertThat(page.locator("main h2").first()).hasText(title);
        return true;
    }
}
