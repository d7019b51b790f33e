package cornerbook.app.bay;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.FilePayload;
import cornerbook.app.door.Axe;
import cornerbook.app.door.Chromium;
import cornerbook.app.photo.Photos;
import cornerbook.core.car.Reading;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** What the book or the server does not take steps aside on the tablet, and keeps nothing else back. */
class BayRefusedBrowserTest {
    private static final String LF = "f.TREAD_DEPTH.LF.";

    /** Leaves an entry of a visit that the book has no more, as it waits on a tablet; on a page that sends nothing. */
    private static final String OF_A_LOST_VISIT = """
            async (entry) => {
              const { assets } = document.documentElement.dataset;
              const { Outbox } = await import(`${assets}/bay-outbox.mjs`);
              const outbox = new Outbox(await import(`${assets}/bay-store.mjs`));
              await outbox.load();
              outbox.send = () => {};
              const blob = entry.photo ? new Blob([new Uint8Array([1, 2, 3])]) : undefined;
              await outbox.add({ visit: "lost-visit", person: "Ada", corner: "LF", ...entry, blob });
            }
            """;

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private BayShop shop;

    private String visitId;
    private BrowserContext tablet;

    @BeforeEach
    void openTheShop(@TempDir Path folder) {
        var car = BayShop.untouched("demo-08");
        visitId = car.visits().getLast().id();
        shop = new BayShop(folder, List.of(car));
        tablet = chromium.newTablet(1180, 820);
        tablet.addInitScript("localStorage.setItem('person', 'Ada')");
    }

    @Test
    void anAnswerThatNobodyUnderstandsStepsAsideAndIsPutRight() {
        Page page = sheet("BRAKE.LF");
        type(page, "f.DISC_RUNOUT.LF.", "stud 1:;");
        assertThat(page.locator("#aside")).hasText("1 not taken");
        type(page, "f.DISC_THICKNESS.LF.", "22.1");
        assertThat(page.locator("#link")).hasText("1 only on this tablet, 1 needs you");
        assertThat(shop.readings(visitId)).extracting(Reading::asWritten).containsExactly("22.1 mm");
        assertThat(page.locator("#steps [aria-current] small")).hasText("1 of 8");
        page.locator("#aside").click();
        assertThat(page.locator(".aside")).containsText("is not a quantity");
        Axe.assertNoViolation(page, "what was not taken");
        page.locator(".aside input").fill("0.02");
        page.locator("text=Send").click();
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(page.locator("#aside")).isHidden();
        assertThat(shop.readings(visitId)).extracting(Reading::asWritten).contains("0.02 mm");
    }

    @Test
    void entriesOfAVisitThatIsGoneKeepNothingBackAndMoveOrBecomeANote() {
        Page shell = shell();
        shell.evaluate(
                OF_A_LOST_VISIT,
                Map.of(
                        "kind",
                        "reading",
                        "key",
                        "k1",
                        "measure",
                        "TREAD_DEPTH",
                        "spot",
                        "CENTRE",
                        "wheel",
                        "X",
                        "written",
                        "4.9 mm"));
        shell.evaluate(
                OF_A_LOST_VISIT,
                Map.of(
                        "kind",
                        "reading",
                        "key",
                        "k2",
                        "measure",
                        "TREAD_DEPTH",
                        "spot",
                        "INNER",
                        "wheel",
                        "X",
                        "written",
                        "4.8 mm"));
        shell.close();
        Page page = sheet("OFF");
        type(page, LF + "OUTER", "5.0");
        assertThat(page.locator("#aside")).hasText("2 not taken");
        assertThat(page.locator(".corner.LF .mark.book")).hasCount(1);
        page.locator("#aside").click();
        var first = page.locator(".aside").first();
        assertThat(first).containsText("The book has no visit with this address.");
        assertThat(first).containsText("visit lost-visit");
        first.locator("text=Move it there").click();
        assertThat(page.locator(".aside")).hasCount(1);
        page.locator("text=Keep as a note").click();
        assertThat(page.locator(".aside textarea")).hasValue(Pattern.compile(".*4\\.8 mm.*Ada.*"));
        page.locator("#aside-close").click();
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(shop.readings(visitId)).extracting(Reading::asWritten).containsExactlyInAnyOrder("5.0 mm", "4.9 mm");
        page.reload();
        assertThat(page.locator("#aside")).hasText("Notes");
    }

    @Test
    void aPhotoThatCannotBeTakenKeepsNothingBack() {
        Page shell = shell();
        shell.evaluate(OF_A_LOST_VISIT, Map.of("kind", "photo", "photo", true));
        shell.close();
        Page page = sheet("BRAKE.LF");
        page.locator("input[type=file]")
                .setInputFiles(new FilePayload(
                        "pad.jpeg", "image/jpeg", Photos.patches(3, 60, 40).content()));
        assertThat(page.locator(".picture")).hasCount(1);
        assertThat(page.locator("#aside")).hasText("1 not taken");
        assertThat(shop.book.photos().list(visitId)).hasSize(1);
    }

    /** The server fails at one value each time: it is found by halves and set aside, the others arrive. */
    @Test
    void whatTheServerFailsAtIsSetAsideAndCanBeTriedAgain() {
        Page page = sheet("OFF");
        tablet.setOffline(true);
        for (String depth : List.of("5.0", "4.9", "4.4", "5.1", "5.2")) {
            page.keyboard().type(depth);
            page.keyboard().press("Enter");
        }
        assertThat(page.locator("#link")).hasText("No link, 5 only on this tablet");
        page.route("**/entries", route -> {
            if (String.valueOf(route.request().postData()).contains("4.4 mm")) {
                route.fulfill(new Route.FulfillOptions().setStatus(500).setBody("<html>"));
            } else {
                route.resume();
            }
        });
        tablet.setOffline(false);
        assertThat(page.locator("#aside")).hasText("1 not taken");
        assertThat(page.locator("#link")).hasText("1 only on this tablet, 1 needs you");
        assertThat(shop.readings(visitId))
                .extracting(Reading::asWritten)
                .containsExactly("5.0 mm", "4.9 mm", "5.1 mm", "5.2 mm");
        page.unroute("**/entries");
        page.locator("#aside").click();
        assertThat(page.locator(".aside")).containsText("The server answered 500.");
        page.locator("text=Try again").click();
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(shop.readings(visitId)).hasSize(5);
    }

    /** The clock of the tablet is days ahead of the server's in these tests; here it was set while nothing told the time. */
    @Test
    void aTabletWhoseClockWasSetLearnsTheTimeAndSendsAgain() {
        Page page = sheet("OFF");
        assertThat(page.locator("#link")).hasText("All in the book");
        page.evaluate("localStorage.setItem('clockAheadMs', '0')");
        page.keyboard().type("5.0");
        page.keyboard().press("Enter");
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(page.locator(".corner.LF .mark.book")).hasCount(1);
        assertThat(shop.book.bay().read(visitId).authors().values())
                .singleElement()
                .satisfies(author -> assertThat(author.madeAt()).isBefore("2026-11-25T12:02:00Z"));
    }

    @Test
    void theSecondWhoAnswersIsToldWhatWasDecided() {
        Page page = sheet("OFF");
        type(page, LF + "OUTER", "5.0");
        assertThat(page.locator(".corner.LF .mark.book")).hasCount(1);
        var other = chromium.newTablet(1180, 820);
        other.addInitScript("localStorage.setItem('person', 'Bo')");
        Page two = other.newPage();
        two.navigate(shop.address("/bay/visits/" + visitId + "#OFF"));
        assertThat(two.locator(".corner.LF .mark.book")).hasCount(1);
        other.setOffline(true);
        type(two, LF + "CENTRE", "4.4");
        type(page, LF + "CENTRE", "4.9");
        assertThat(page.locator(".corner.LF .mark.book")).hasCount(2);
        other.setOffline(false);
        assertThat(two.locator(".corner.LF")).containsText("Which one counts?");
        other.setOffline(true);
        two.locator("button", new Page.LocatorOptions().setHasText("4.4 mm")).click();
        page.locator("button", new Page.LocatorOptions().setHasText("4.9 mm")).click();
        assertThat(page.locator("#link")).hasText("All in the book");
        other.setOffline(false);
        assertThat(two.locator("#aside")).hasText("1 not taken");
        two.locator("#aside").click();
        assertThat(two.locator(".aside")).containsText("Ada has decided meanwhile that 4.9 mm counts and not 4.4 mm");
    }

    private Page shell() {
        Page page = tablet.newPage();
        page.route("**/entries", Route::abort);
        page.route("**/photos/**", Route::abort);
        page.navigate(shop.address("/bay/shell"));
        assertThat(page.locator("main h2").first()).isVisible();
        return page;
    }

    private Page sheet(String step) {
        Page page = tablet.newPage();
        page.navigate(shop.address("/bay/visits/" + visitId + "#" + step));
        assertThat(page.locator("#main h2")).isVisible();
        return page;
    }

    private static void type(Page page, String fieldId, String value) {
        page.locator("[id='" + fieldId + "']").fill(value);
        page.locator("[id='" + fieldId + "']").press("Enter");
    }
}
