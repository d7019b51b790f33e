package cornerbook.app.bay;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import cornerbook.app.book.bay.ReadingAuthor;
import cornerbook.app.door.Axe;
import cornerbook.app.door.Chromium;
import cornerbook.core.car.Reading;
import cornerbook.core.corner.Corner;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Who works on a tablet, and how that person wants the sheet, in a real browser. */
class BayPersonBrowserTest {
    private static final String LF_OUTER = "[id='f.TREAD_DEPTH.LF.OUTER']";

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private BayShop shop;

    private BrowserContext tablet;
    private String visitId;

    @BeforeEach
    void openTheShop(@TempDir Path folder) {
        var car = BayShop.untouched("demo-08");
        visitId = car.visits().getLast().id();
        shop = new BayShop(folder, List.of(car), "127.0.0.1");
        tablet = chromium.newTablet(1180, 820);
    }

    @Test
    void otherUnitsAreOneTapAwayAndWhatIsTypedInThemComesBackAsTyped() {
        Page page = sheetOfAda();
        choose(page, "units.us");
        assertThat(page.locator(".corner.LF .unit").first()).hasText("/32″");
        type(page, LF_OUTER, "6");
        assertThat(page.locator(".corner.LF .mark.book")).hasCount(1);
        assertThat(shop.readings(visitId)).extracting(Reading::asWritten).containsExactly("6/32 in");
        type(page, "[id='f.TREAD_DEPTH.LF.CENTRE']", "1");
        assertThat(page.locator(".corner.LF")).containsText("/32 in after the visits before");
        assertThat(page.locator(LF_OUTER)).hasValue("6");

        choose(page, "units.metric");
        // 6/32 in of 25.4 mm (NIST SP 811, appendix B.8) is 4.7625 mm.
        assertThat(page.locator(LF_OUTER)).hasValue("4.763");
        page.navigate(shop.address("/visits/" + visitId));
        assertThat(page.locator("button[name=units][value=metric]")).hasAttribute("aria-pressed", "true");
        page.locator("button[name=units][value=us]").click();
        page.navigate(shop.address("/bay/visits/" + visitId + "#OFF"));
        assertThat(page.locator(LF_OUTER)).hasValue("6");
        assertThat(shop.readings(visitId)).hasSize(2);
    }

    @Test
    void unitsChangeWithoutALinkAndWhatWasTypedBeforeKeepsItsOwn() {
        Page page = sheetOfAda();
        page.evaluate("navigator.serviceWorker.ready.then(() => true)");
        tablet.setOffline(true);
        type(page, LF_OUTER, "5.0");
        choose(page, "units.us");
        assertThat(page.locator(".corner.LF")).containsText("Typed as 5.0 mm.");
        type(page, "[id='f.TREAD_DEPTH.LF.CENTRE']", "6.5");
        // The marks appear when the values are on the tablet's disk.
        assertThat(page.locator(".corner.LF .mark.here")).hasCount(2);
        page.reload();
        assertThat(page.locator("[id='f.TREAD_DEPTH.LF.CENTRE']")).hasValue("6.5");
        tablet.setOffline(false);
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(shop.readings(visitId)).extracting(Reading::asWritten).containsExactly("5.0 mm", "6.5/32 in");
        assertThat(page.locator(LF_OUTER)).hasValue("6.3");
    }

    /** Whoever takes the tablet up reads it, far from the server too. */
    @Test
    void otherLanguageIsOneTapAwayWithoutALink() {
        Page page = sheetOfAda();
        page.evaluate("navigator.serviceWorker.ready.then(() => true)");
        tablet.setOffline(true);
        choose(page, "language.fr");
        assertThat(page.locator("html")).hasAttribute("lang", "fr");
        assertThat(page.locator("#main h2")).hasText("Roues déposées");
        type(page, LF_OUTER, "52");
        assertThat(page.locator(".corner.LF")).containsText("52 mm est impossible; attendu : 0 à 25 mm.");
        page.reload();
        assertThat(page.locator("#main h2")).hasText("Roues déposées");
        assertThat(page.locator("#steps a").nth(3)).containsText("Frein AVG");
        tablet.setOffline(false);
        assertThat(page.locator("#link")).hasText("Tout est au registre");
        page.locator("#steps a[href='#ON']").click();
        page.locator("text=Ces roues sont posées").click();
        assertThat(page.locator("main")).containsText("Noté au registre.");
    }

    @Test
    void gaugeWalksRoundTheCarInTheOrderOfThePerson() {
        Page page = sheetOfAda();
        choose(page, "walk.RR-LR-LF-RF");
        assertThat(page.locator(":focus")).hasAttribute("id", "f.TREAD_DEPTH.RR.OUTER");
        for (int i = 0; i < 12; i++) {
            page.keyboard().type("5.0");
            page.keyboard().press("Enter");
        }
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(shop.readings(visitId).stream().map(Reading::corner).distinct())
                .containsExactly(Corner.RR, Corner.LR, Corner.LF, Corner.RF);
        page.reload();
        assertThat(page.locator("#steps a").nth(3)).containsText("Brake RR");
    }

    @Test
    void anotherPersonTakesThePairedTabletOverAndEachReadingHasItsName() {
        Page page = tablet.newPage();
        addPerson(page, "Ada", "4711");
        addPerson(page, "Bo", "0815");
        pair(page, "Ada", "4711");
        page.navigate(shop.address("/bay/visits/" + visitId + "#OFF"));
        assertThat(page.locator("#who")).hasText("Ada");
        type(page, LF_OUTER, "5.0");
        choose(page, "units.us");
        assertThat(page.locator("#link")).hasText("All in the book");

        tablet.setOffline(true);
        takeOver(page, "Bo", "9999");
        assertThat(page.locator(".panel")).containsText("No link: Bo works here now and types the PIN again");
        page.locator("#panel-close").click();
        assertThat(page.locator(".corner.LF .unit").first()).hasText("mm");
        type(page, "[id='f.TREAD_DEPTH.LF.CENTRE']", "4.9");
        tablet.setOffline(false);
        assertThat(page.locator("#link")).hasText("1 only on this tablet, 1 needs you");
        takeOver(page, "Bo", "1111");
        assertThat(page.locator(".panel")).containsText("Name or PIN are not right.");
        page.locator("#pin").fill("0815");
        page.locator("text=Take over").last().click();
        page.locator("#panel-close").click();
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(shop.book.bay().read(visitId).authors().values())
                .extracting(ReadingAuthor::person)
                .containsExactlyInAnyOrder("Ada", "Bo");

        takeOver(page, "Ada", "4711");
        page.locator("#panel-close").click();
        assertThat(page.locator(".corner.LF .unit").first()).hasText("/32″");
        page.navigate(shop.address("/"));
        assertThat(page.locator("button[name=units][value=us]")).hasAttribute("aria-pressed", "true");
    }

    @Test
    void torqueWaitsForASecondPersonWhereTheShopAsksForIt() {
        Page page = tablet.newPage();
        page.navigate(shop.address("/shop"));
        page.locator("text=Ask for it at every car").click();
        tablet.addInitScript("localStorage.person ??= 'Ada'");
        page.navigate(shop.address("/bay/visits/" + visitId + "#ON"));
        page.locator("text=These wheels are on").click();
        assertThat(page.locator("main")).containsText("Recorded, in the book.");
        page.evaluate("navigator.serviceWorker.ready.then(() => true)");
        tablet.setOffline(true);
        page.evaluate("location.hash = 'TORQUE'");
        Locator check = page.locator("main button.tick");
        assertThat(page.locator("main")).containsText("when every wheel is tight");
        assertThat(check).isDisabled();
        for (var nut : page.locator("main button.nut").all()) {
            nut.click();
        }
        assertThat(page.locator("main")).containsText("Ada has tightened here; another person takes over");
        assertThat(check).isDisabled();
        page.evaluate("location.hash = 'DEPART'");
        assertThat(page.locator(".open")).containsText("Nobody but the one who tightened has checked the torque.");
        page.locator(".open a").click();
        page.locator("#who").click();
        page.locator("#taker").fill("Bo");
        page.locator(".panel >> text=Take over").last().click();
        page.locator("#panel-close").click();
        check.click();
        assertThat(check).hasAttribute("aria-pressed", "true");
        page.evaluate("location.hash = 'DEPART'");
        assertThat(page.locator(".open")).hasCount(0);
        tablet.setOffline(false);
        assertThat(page.locator("#link")).hasText("All in the book");
        page.locator("main .main").click();
        assertThat(page.locator("main")).containsText("Handed over by Bo.");
    }

    @ParameterizedTest
    @ValueSource(ints = {390, 820, 1180})
    void settingsAreAccessibleWithTargetsForGloves(int width) {
        Page page = sheetOfAda();
        page.setViewportSize(width, width == 390 ? 844 : 820);
        page.locator("#who").click();
        for (String look : List.of("light", "dark")) {
            page.locator("[id='look." + look + "']").click();
            assertThat(page.locator("html")).hasAttribute("data-look", look);
            Axe.assertNoViolation(page, "settings, " + look + " at " + width);
        }
        assertThat(page.evaluate("""
                        () => [...document.querySelectorAll(".panel button, .panel input")]
                          .filter((each) => each.offsetHeight < 48 || each.offsetWidth < 48).map((each) => each.outerHTML)
                        """)).isEqualTo(List.of());
        assertThat((Integer) page.evaluate("document.querySelector('.panel').scrollWidth - innerWidth"))
                .isLessThanOrEqualTo(0);
    }

    private Page sheetOfAda() {
        tablet.addInitScript("localStorage.person ??= 'Ada'");
        Page page = tablet.newPage();
        page.navigate(shop.address("/bay/visits/" + visitId + "#OFF"));
        assertThat(page.locator("#main h2")).isVisible();
        assertThat(page.locator("#link")).hasText("All in the book");
        return page;
    }

    private static void choose(Page page, String option) {
        page.locator("#who").click();
        page.locator("[id='" + option + "']").click();
        assertThat(page.locator("[id='" + option + "']")).hasAttribute("aria-pressed", "true");
        page.locator("#panel-close").click();
    }

    private static void takeOver(Page page, String person, String pin) {
        page.locator("#who").click();
        page.locator("#taker").selectOption(person);
        page.locator("#pin").fill(pin);
        page.locator("#pin").press("Enter");
    }

    private void addPerson(Page page, String person, String pin) {
        page.navigate(shop.address("/devices"));
        page.locator("#person").fill(person);
        page.locator("#pin").fill(pin);
        page.locator("text=Add, or change the PIN").click();
        assertThat(page.locator("main")).containsText(person);
    }

    private void pair(Page page, String person, String pin) {
        page.navigate(shop.address("/devices"));
        String code = page.locator(".code").innerText();
        page.navigate(shop.address("/pair"));
        page.locator("#code").fill(code);
        page.locator("#person").fill(person);
        page.locator("#pin").fill(pin);
        page.locator("form[action='/pair'] button").click();
        page.waitForURL("**/bay/visits");
    }

    private static void type(Page page, String field, String value) {
        page.locator(field).fill(value);
        page.locator(field).press("Enter");
    }
}
