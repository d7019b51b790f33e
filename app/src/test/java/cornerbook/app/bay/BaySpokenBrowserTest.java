package cornerbook.app.bay;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import cornerbook.app.door.Axe;
import cornerbook.app.door.Chromium;
import cornerbook.core.car.Reading;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** What a keyboard dictates stands as cells at their corners, and one tap enters it like what is typed, in a real browser. */
class BaySpokenBrowserTest {
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

    private String visitId;
    private BrowserContext tablet;
    private Page page;

    @BeforeEach
    void openTheSheet(@TempDir Path folder) {
        var car = BayShop.untouched("demo-08");
        visitId = car.visits().getLast().id();
        shop = new BayShop(folder, List.of(car));
        tablet = chromium.newTablet(1180, 820);
        tablet.addInitScript("localStorage.setItem('person', 'Ada')");
        page = tablet.newPage();
        page.navigate(shop.address("/bay/visits/" + visitId + "#OFF"));
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(page.locator("#spoken")).isVisible();
    }

    /** One value cannot be: the others are stored, it is put right in the words, and nothing is stored twice. */
    @Test
    void readingsThatAreSpokenStandInTheBookAfterOneTapThoughTheLinkWasAway() {
        tablet.setOffline(true);
        dictate("Left front seven two, seven one, six eight. Right rear 5.1, 5 2, 72, inner pad 4 point 5, seized");
        assertThat(cells("LF")).hasText(new String[] {"7.2\u00a0mm", "7.1\u00a0mm", "6.8\u00a0mm"});
        assertThat(cells("RR")).hasText(new String[] {"5.1\u00a0mm", "5.2\u00a0mm", "4.5\u00a0mm", "seized"});
        assertThat(page.locator(".spoken [role=status]")).hasText("7 understood, 1 not taken");
        assertThat(page.locator(".marks .note"))
                .hasText("RR Tread inner, “72”: 72\u00a0mm cannot be, expected 0 to 25\u00a0mm.");
        // The same questions as of what is typed, before it is stored.
        assertThat(page.locator(".spoken .corner.LF .note.asks").first()).containsText("after the visits before");
        Axe.assertNoViolation(page, "spoken readings");
        store("Store 7 readings");
        assertThat(page.locator(".spoken .entered")).hasCount(7);
        assertThat(page.locator("#spoken-store")).isDisabled();
        page.locator("#spoken-text")
                .fill(page.locator("#spoken-text").inputValue().replace("72,", "seven two,"));
        store("Store 1 reading");
        assertThat(page.locator("#spoken-text")).hasCount(0);
        assertThat(page.locator("[id='f.TREAD_DEPTH.LF.OUTER']")).hasValue("7.2");
        assertThat(page.locator(".corner.LF .note.asks").first()).containsText("after the visits before");
        tablet.setOffline(false);
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(read())
                .containsExactlyInAnyOrder(
                        "TREAD_DEPTH LF OUTER 7.2 mm",
                        "TREAD_DEPTH LF CENTRE 7.1 mm",
                        "TREAD_DEPTH LF INNER 6.8 mm",
                        "TREAD_DEPTH RR OUTER 5.1 mm",
                        "TREAD_DEPTH RR CENTRE 5.2 mm",
                        "TREAD_DEPTH RR INNER 7.2 mm",
                        "PAD_THICKNESS RR INNER 4.5 mm",
                        "PAD_MOVEMENT RR INNER seized");
    }

    @Test
    void readingsThatAreSpokenInFrenchStandInTheBookAfterOneTap() {
        page.locator("#who").click();
        page.locator("[id='language.fr']").click();
        page.locator("#panel-close").click();
        dictate("Avant gauche sept virgule deux, sept un, six huit; arrière droite plaquette intérieure 4 et demi");
        assertThat(cells("LF")).hasText(new String[] {"7,2\u00a0mm", "7,1\u00a0mm", "6,8\u00a0mm"});
        assertThat(cells("RR")).hasText("4,5\u00a0mm");
        Axe.assertNoViolation(page, "mesures dictées");
        store("Enregistrer 4 mesures");
        assertThat(page.locator("#spoken-text")).hasCount(0);
        assertThat(page.locator("#link")).hasText("Tout est au registre");
        assertThat(read())
                .containsExactlyInAnyOrder(
                        "TREAD_DEPTH LF OUTER 7.2 mm",
                        "TREAD_DEPTH LF CENTRE 7.1 mm",
                        "TREAD_DEPTH LF INNER 6.8 mm",
                        "PAD_THICKNESS RR INNER 4.5 mm");
    }

    /** One tap from any step, which says what is meant. */
    @Test
    void eachStepHasIt() {
        int steps = page.locator("#steps a").count();
        assertThat(steps).isGreaterThan(10);
        for (int at = 0; at < steps; at++) {
            var step = page.locator("#steps a").nth(at);
            step.click();
            assertThat(step).hasAttribute("aria-current", "step");
            page.locator("#spoken").click();
            assertThat(page.locator("#spoken-text")).isFocused();
            page.keyboard().press("Escape");
            assertThat(page.locator("#spoken-text")).hasCount(0);
        }
    }

    /** Another value than the one that stands is questioned at its field, as a typed one is. */
    @Test
    void anotherValueThanTheOneThatStandsWaitsForItsReason() {
        page.keyboard().type("5.0");
        page.keyboard().press("Enter");
        assertThat(page.locator("#link")).hasText("All in the book");
        dictate("left front outer five one");
        assertThat(page.locator(".spoken .cell .note.here"))
                .hasText("Instead of 5.0; why it changes is asked at its field.");
        store("Store 1 reading");
        page.locator(".corner.LF").getByText("Measured again.").click();
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(read()).contains("TREAD_DEPTH LF OUTER 5.1 mm");
    }

    /** Into the words a gauge types nothing: its value lies in the tray; and once they are closed it goes on at the fields. */
    @Test
    void aGaugeThatTypesIsNotDisturbed() {
        dictate("left front outer seven two");
        page.evaluate(TYPES_LIKE_A_GAUGE, "5.3");
        assertThat(page.locator("#spoken-text")).hasValue("left front outer seven two");
        assertThat(cells("LF")).hasText("7.2\u00a0mm");
        store("Store 1 reading");
        assertThat(page.locator(".tray .stray button").first()).hasText("5.3");
        assertThat(page.locator(":focus")).hasAttribute("id", "f.TREAD_DEPTH.LF.CENTRE");
        page.keyboard().type("7.1");
        page.keyboard().press("Enter");
        assertThat(page.locator("[id='f.TREAD_DEPTH.LF.CENTRE']")).hasValue("7.1");
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(read()).containsExactlyInAnyOrder("TREAD_DEPTH LF OUTER 7.2 mm", "TREAD_DEPTH LF CENTRE 7.1 mm");
    }

    private Locator cells(String corner) {
        return page.locator(".spoken .corner." + corner + " .cell strong");
    }

    private List<String> read() {
        return shop.readings(visitId).stream().map(BaySpokenBrowserTest::said).toList();
    }

    private static String said(Reading reading) {
        return "%s %s %s %s".formatted(reading.measure(), reading.corner(), reading.spot(), reading.asWritten());
    }

    private void dictate(String words) {
        page.locator("#spoken").click();
        page.locator("#spoken-text").fill(words);
    }

    private void store(String words) {
        assertThat(page.locator("#spoken-store")).hasText(words);
        page.locator("#spoken-store").click();
    }
}
