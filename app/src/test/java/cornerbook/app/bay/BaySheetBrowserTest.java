package cornerbook.app.bay;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.ColorScheme;
import cornerbook.app.cars.PlausibleReading;
import cornerbook.app.door.Axe;
import cornerbook.app.door.Chromium;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.WorkStep;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The bay sheet as hands in gloves meet it, in a real browser. */
class BaySheetBrowserTest {
    private static final String CAR = "demo-08";
    private static final List<String> DEPTHS =
            List.of("5.0", "4.9", "5.1", "5.0", "5.0", "5.0", "5.1", "5.2", "5.0", "5.3", "5.2", "5.1");

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private BayShop shop;

    private String visitId;

    @BeforeEach
    void openTheShop(@TempDir Path folder) {
        var car = BayShop.untouched(CAR);
        visitId = car.visits().getLast().id();
        shop = new BayShop(folder, List.of(car));
    }

    @Test
    void aGaugeThatTypesWalksThroughTwelveGrooves() {
        Page page = sheet("OFF", tablet("Ada"));
        for (String depth : DEPTHS) {
            page.keyboard().type(depth);
            page.keyboard().press("Enter");
        }
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(shop.readings(visitId))
                .extracting(Reading::asWritten)
                .containsExactlyElementsOf(
                        DEPTHS.stream().map(depth -> depth + " mm").toList());
        assertThat(shop.readings(visitId)).extracting(Reading::corner).startsWith(Corner.LF, Corner.LF, Corner.LF);
        assertThat(page.locator("#next .main")).isFocused();
    }

    /** Each point that was read around a disc is a cell; what is typed after a tap takes its place alone. */
    @Test
    void aPointAroundADiscIsTappedAndPutRight() {
        Page page = sheet("BRAKE.LF", tablet("Ada"));
        page.locator("summary:visible").all().forEach(Locator::click);
        type(page, "f.DISC_RUNOUT.LF.", "0 12 30 11 µm");
        assertThat(page.locator("#link")).hasText("All in the book");
        var points = page.locator(".read-points:visible button");
        assertThat(points).hasText(new String[] {"10", "212", "330", "411"});
        points.nth(2).click();
        page.keyboard().type("20");
        page.keyboard().press("Enter");
        assertThat(page.locator("[id='f.DISC_RUNOUT.LF.']")).hasValue("0 12 20 11 µm");
        assertThat(points).hasText(new String[] {"10", "212", "320", "411"});
        page.getByText("Typed wrong.").click();
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(shop.readings(visitId).getLast().asWritten()).isEqualTo("0 12 20 11 µm");
        Axe.assertNoViolation(page, "points around a disc");
        type(page, "f.DISC_RUNOUT.LF.", "0.03");
        assertThat(points).hasCount(0);
    }

    @Test
    void whatIsTypedWithoutALinkOutlivesReloadAndRestartAndArrivesOnce() {
        var tablet = tablet("Ada");
        Page page = sheet("OFF", tablet);
        assertThat(page.locator("#link")).hasText("All in the book");
        page.evaluate("navigator.serviceWorker.ready.then(() => true)");
        shop.kill();
        tablet.setOffline(true);
        for (String depth : DEPTHS.subList(0, 5)) {
            page.keyboard().type(depth);
            page.keyboard().press("Tab");
        }
        assertThat(page.locator("#link")).hasText("No link, 5 only on this tablet");
        page.reload();
        assertThat(page.locator(".corner.LF input").first()).hasValue("5.0");
        assertThat(page.locator(".corner.LF .mark.here")).hasCount(3);
        page.close();
        Page again = sheet("OFF", tablet);
        assertThat(again.locator("#link")).hasText("No link, 5 only on this tablet");
        assertThat(again.locator(":focus")).hasAttribute("id", "f.TREAD_DEPTH.RF.INNER");
        again.keyboard().type("5.0");
        again.keyboard().press("Enter");
        tablet.setOffline(false);
        shop.restart();
        assertThat(again.locator("#link")).hasText("All in the book");
        assertThat(again.locator(".corner.LF .mark.book")).hasCount(3);
        assertThat(shop.readings(visitId)).hasSize(6);
    }

    @Test
    void otherTabletsSeeEntriesWithoutAskingAndTwoReadingsOfOnePlaceAskAPerson() {
        var first = tablet("Ada");
        var second = tablet("Bo");
        Page one = sheet("OFF", first);
        Page two = sheet("OFF", second);
        assertThat(two.locator("#who")).hasText("Boand Ada");
        type(one, "f.TREAD_DEPTH.LF.OUTER", "5.0");
        assertThat(two.locator(".corner.LF input").first()).hasValue("5.0");

        second.setOffline(true);
        type(two, "f.TREAD_DEPTH.LF.CENTRE", "4.4");
        type(one, "f.TREAD_DEPTH.LF.CENTRE", "4.9");
        assertThat(one.locator("#link")).hasText("All in the book");
        second.setOffline(false);
        assertThat(one.locator(".corner.LF")).containsText("Bo read 4.4 mm; the book has 4.9 mm. Which one counts?");
        assertThat(two.locator(".corner.LF")).containsText("Which one counts?");
        assertThat(shop.readings(visitId)).hasSize(2);
        two.locator("button", new Page.LocatorOptions().setHasText("4.4 mm")).click();
        assertThat(one.locator(".corner.LF input").nth(1)).hasValue("4.4");
        assertThat(one.locator(".corner.LF")).not().containsText("Which one counts?");
        assertThat(shop.readings(visitId)).hasSize(3);
    }

    @Test
    void unlikelyDepthIsAskedAboutAtOnceEvenWithoutALinkAndNeverKeptBack() {
        var tablet = tablet("Ada");
        Page page = sheet("OFF", tablet);
        assertThat(page.locator("#link")).hasText("All in the book");
        tablet.setOffline(true);
        type(page, "f.TREAD_DEPTH.LF.OUTER", "1.2");
        assertThat(page.locator(".corner.LF")).containsText("read it again, or is it another wheel?");
        assertThat(page.locator("#link")).containsText("1 only on this tablet");
        type(page, "f.TREAD_DEPTH.LF.OUTER", "5.0");
        tablet.setOffline(false);
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(shop.readings(visitId).getLast().asWritten()).isEqualTo("5.0 mm");
    }

    @Test
    void impossibleDepthIsRefusedBesideItsFieldAndStaysThere() {
        Page page = sheet("OFF", tablet("Ada"));
        type(page, "f.TREAD_DEPTH.LF.OUTER", "52");
        assertThat(page.locator(".corner.LF")).containsText("52 mm cannot be, expected 0 to 25 mm.");
        assertThat(page.locator("[id='f.TREAD_DEPTH.LF.OUTER']")).isFocused();
        assertThat(shop.readings(visitId)).isEmpty();
    }

    @Test
    void changeOfAStoredValueWaitsForItsReason() {
        Page page = sheet("OFF", tablet("Ada"));
        type(page, "f.TREAD_DEPTH.LF.OUTER", "5.0");
        assertThat(page.locator(".corner.LF .mark.book")).hasCount(1);
        type(page, "f.TREAD_DEPTH.LF.OUTER", "5.1");
        assertThat(page.locator("#link")).containsText("1 needs you");
        page.locator("button", new Page.LocatorOptions().setHasText("Misread.")).click();
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(shop.readings(visitId).getLast().reason()).isEqualTo("Misread.");
    }

    /** Another set than planned is filled in at once; tags are compared with what is chosen then. */
    @Test
    void aTagThatIsReadIsComparedWithTheWheelThatIsChosen() {
        Page page = sheet("ON", tablet("Ada"));
        page.locator("button", new Page.LocatorOptions().setHasText("The summer set stays on"))
                .click();
        assertThat(page.locator(".mixed")).isEmpty();
        var atRightFront = page.locator("[id='wheel.RF']").inputValue();
        var tag = page.locator("[id='tag.LF']");
        tag.fill(atRightFront);
        tag.press("Enter");
        assertThat(page.locator(".corner.LF")).containsText(atRightFront + " belongs to RF.");
        tag.fill(page.locator("[id='wheel.LF']").inputValue());
        tag.press("Enter");
        assertThat(page.locator(".corner.LF")).containsText("The right wheel.");
    }

    /** Placard 240 kPa at −15 °C: (240 + 101.325) × 293.15/258.15 − 101.325 (ideal gas, by hand) are 286.3 kPa at 20 °C. */
    @Test
    void whatToSetFollowsTheTemperatures() {
        Page page = sheet("ON", tablet("Ada"));
        page.locator("text=These wheels are on").click();
        page.locator("#steps a[href='#PRESSURE']").click();
        assertThat(page.locator(".corner.LR .air"))
                .hasText("Set 240 kPa the placard, for tyres as cold as the air where the car will stand.");
        type(page, "f.TYRE_TEMPERATURE..", "20");
        type(page, "f.OUTSIDE_TEMPERATURE..", "-15");
        assertThat(page.locator(".corner.LR .air"))
                .hasText("Set 286 kPa the placard's 240 kPa at −15 °C outside, tyres at 20 °C.");
    }

    /** What another tablet enters arrives between the moment a finger lies down on a step and the moment it leaves. */
    @Test
    void aTapOnAStepIsNotLostWhenSomethingArrivesMeanwhile() {
        Page page = sheet("RECEIVE", tablet("Ada"));
        Page other = sheet("OFF", tablet("Berta"));
        var step = page.locator("#steps a[href='#OFF']");
        step.scrollIntoViewIfNeeded();
        var scrolled = page.evaluate("document.getElementById('steps').scrollLeft");
        step.hover();
        var before = step.innerText();
        page.mouse().down();
        type(other, "f.TREAD_DEPTH.LF.OUTER", "6.1");
        assertThat(step).not().hasText(before, new LocatorAssertions.HasTextOptions().setUseInnerText(true));
        assertThat(page.evaluate("document.getElementById('steps').scrollLeft"))
                .as("the bar stays where the hand has moved it")
                .isEqualTo(scrolled);
        page.mouse().up();
        assertThat(page.locator("#steps a[aria-current]")).hasAttribute("href", "#OFF");
        assertThat(page.locator("#steps a[aria-current]")).hasCount(1);
    }

    @Test
    void complaintAndNotesAreKeptWhereverTheyAreTyped() {
        Page page = sheet("RECEIVE", tablet("Ada"));
        page.locator("[id='remark.COMPLAINT']").fill("Pulls to the left");
        page.locator("[id='remark.ARRIVAL_DAMAGE']").fill("Scratch on the left door");
        page.locator("#next .main").click();
        assertThat(page.locator("#link")).hasText("All in the book");
        for (boolean more = true; more; ) {
            assertThat(page.locator("main .remarks textarea")).not().hasCount(0);
            page.locator("main .remarks textarea").last().fill("Noted at " + page.evaluate("location.hash"));
            more = page.locator("#next .main").count() > 0;
            if (more) {
                page.locator("#next .main").click();
            } else {
                page.keyboard().press("Tab");
            }
        }
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(sheet("RECEIVE", page.context()).locator("[id='remark.COMPLAINT']"))
                .hasValue("Pulls to the left");
        Page desk = page.context().newPage();
        desk.navigate(shop.address("/visits/" + visitId));
        assertThat(desk.locator("main")).containsText("Damage on arrival Scratch on the left door, Ada");
        assertThat(desk.locator("main")).containsText("Brake LR Noted at #BRAKE.LR, Ada");
        assertThat(desk.locator("main")).containsText("Hand over Noted at #DEPART, Ada");
    }

    /** A tick beside "all free" says nothing of the pad that is seized. */
    @Test
    void oneTapForWhatIsFreeSpeaksOfAllElseWhereSomethingIsSeized() {
        Page page = sheet("BRAKE.LF", tablet("Ada"));
        var atOnce = page.locator(".at-once button");
        assertThat(atOnce).hasText(new String[] {"This corner: all free", "All four corners: all free"});
        page.locator("[id='f.PAD_MOVEMENT.LF.INNER'] button[value='seized']").click();
        assertThat(atOnce).hasText(new String[] {"This corner: all else free", "All four corners: all else free"});
    }

    @Test
    void oneTapAnswersACornerThatIsSoundAndOneSignMakesItsFinding() {
        Page page = sheet("BRAKE.LF", tablet("Ada"));
        String open = page.locator("#steps a[aria-current]").innerText();
        page.locator(".look summary").click();
        assertThat(page.locator(".look > .tick")).hasText("Look it over: all sound");
        page.locator("[id='f.BALL_JOINT.LF.'] button[value='dangerous']").click();
        assertThat(page.locator(".look > .tick")).hasText("Look it over: all else sound");
        page.locator(".look > .tick").click();
        assertThat(page.locator(".look > .tick")).hasAttribute("aria-pressed", "true");
        assertThat(page.locator("#link")).hasText("All in the book");
        var looked = shop.readings(visitId);
        var asked = Arrays.stream(Measure.values())
                .filter(measure -> measure.isReadIn(WorkStep.LOOK_OVER))
                .filter(measure -> measure.scale() != null && measure.scale().beginsSound())
                .filter(measure -> measure.isOn(BayShop.untouched(CAR).vehicle(), Axle.FRONT))
                .toList();
        assertThat(looked)
                .extracting(Reading::measure)
                .as("no key, no hole, no weight: what is sound has none")
                .containsExactlyInAnyOrderElementsOf(asked);
        assertThat(looked)
                .filteredOn(reading -> reading.value() != 0)
                .extracting(Reading::measure)
                .as("what was seen before the tap stays")
                .containsExactly(Measure.BALL_JOINT);
        assertThat(page.locator("#steps a[aria-current]"))
                .hasText(open, new LocatorAssertions.HasTextOptions().setUseInnerText(true));
        Page depart = sheet("DEPART", page.context());
        assertThat(depart.locator("main")).containsText("ball joints, dangerous");
    }

    @ParameterizedTest
    @ValueSource(ints = {390, 1180})
    void wholeVisitByTouch(int width) {
        Page page = sheet("RECEIVE", tablet("Ada"));
        page.setViewportSize(width, width == 390 ? 844 : 820);
        for (boolean more = true; more; ) {
            String step = String.valueOf(page.evaluate("location.hash.slice(1)"));
            for (var tick : page.locator("main button.tick:visible").all()) {
                tick.click();
                assertThat(tick).hasAttribute("aria-pressed", "true");
            }
            if (step.equals("ON")) {
                page.locator("text=These wheels are on").click();
                assertThat(page.locator("main")).containsText("Recorded");
            }
            for (var nut : page.locator("main button.nut").all()) {
                nut.click();
            }
            for (var choice : page.locator("main .choice:visible").all()) {
                // The mildest word; and what there is to be done is done, or the car stays.
                var words = choice.locator("button");
                (choice.innerText().contains("not done") ? words.last() : words.first()).click();
            }
            for (var input : page.locator("main .field:not(.words) input[id^='f.']:visible")
                    .all()) {
                if (input.inputValue().isEmpty() && !step.equals("TORQUE")) {
                    input.fill(PlausibleReading.of(String.valueOf(input.getAttribute("id"))));
                    input.press("Enter");
                }
            }
            more = goOn(page);
        }
        assertThat(page.locator(".missing")).hasText("Nothing is missing.");
        assertThat(page.locator(".open")).hasCount(0);
        page.locator("text=The car leaves").click();
        assertThat(page.locator("main")).containsText("Handed over by Ada.");
        assertThat(page.locator("main a", new Page.LocatorOptions().setHasText("Findings")))
                .isVisible();
        var visit = shop.visit(visitId);
        assertThat(visit.leftOn()).hasSize(4);
        assertThat(visit.tightened()).hasSize(4);
        assertThat(visit.readings())
                .as("nobody read one")
                .noneMatch(reading -> reading.measure() == Measure.WHEEL_TORQUE);
        assertThat(visit.readings())
                .filteredOn(reading -> reading.measure() == Measure.TREAD_DEPTH)
                .as("of the wheels that came off and of those that go on")
                .hasSize(2 * Corner.values().length * Spot.values().length);
        assertThat(visit.readings()).extracting(Reading::id).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @ValueSource(ints = {390, 820, 1180})
    void everyStepIsAccessibleWithTargetsForGloves(int width) {
        var tablet = tablet("Ada");
        Page page = sheet("RECEIVE", tablet);
        page.setViewportSize(width, width == 390 ? 844 : width == 820 ? 1180 : 820);
        page.emulateMedia(
                new Page.EmulateMediaOptions().setColorScheme(width == 390 ? ColorScheme.LIGHT : ColorScheme.DARK));
        for (boolean more = true; more; ) {
            String step = String.valueOf(page.evaluate("location.hash"));
            assertThat((Integer) page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                    .as(step)
                    .isLessThanOrEqualTo(0);
            assertThat(page.evaluate("""
                            () => [...document.querySelectorAll("a:not(.skip), button, input, select")]
                              .filter((each) => each.offsetHeight > 0 && (each.offsetHeight < 48 || each.offsetWidth < 48))
                              .map((each) => each.outerHTML)
                            """)).as(step).isEqualTo(List.of());
            if (width != 820) {
                Axe.assertNoViolation(page, step + " at " + width);
            }
            if (step.equals("#ON")) {
                page.locator("text=These wheels are on").click();
            }
            more = goOn(page);
        }
    }

    /** To the next step; false when this is the last one. */
    private static boolean goOn(Page page) {
        var next = page.locator("#next .main");
        if (next.count() == 0) {
            return false;
        }
        String title = String.valueOf(next.textContent()).replaceFirst("^Next: ", "");
        next.click();
        // The browser tells the page of its new address a moment later.
        assertThat(page.locator("main h2").first()).hasText(title);
        return true;
    }

    private static void type(Page page, String fieldId, String value) {
        page.locator("[id='" + fieldId + "']").fill(value);
        page.locator("[id='" + fieldId + "']").press("Enter");
    }

    private BrowserContext tablet(String person) {
        var tablet = chromium.newTablet(1180, 820);
        tablet.addInitScript("localStorage.setItem('person', '%s')".formatted(person));
        return tablet;
    }

    private Page sheet(String step, BrowserContext tablet) {
        Page page = tablet.newPage();
        page.navigate(shop.address("/bay/visits/" + visitId + "#" + step));
        assertThat(page.locator("#main h2")).isVisible();
        return page;
    }
}
