package cornerbook.app.desk.visit;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import cornerbook.app.door.Axe;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Tyre;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** The wheels go on, in a real browser: filled in by the plan, compared with their take-off, stopped at a mix-up. */
class LeavingTest {
    private static final String VISIT = "demo-08-v7";

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private ServedShop shop;

    private CarHistory car;
    private Map<Corner, String> planned;
    private Page page;
    private int loads;

    @BeforeEach
    void openTheVisit(@TempDir Path folder) {
        car = withIdentities(ServedShop.car("demo-08"));
        planned = Optional.ofNullable(
                        new Assessor(LimitsFile.load()).assess(car, VISIT).plan())
                .orElseThrow()
                .wheelAt();
        shop = new ServedShop(folder, List.of(car));
        page = chromium.newPage(390, 844);
        page.onLoad(loaded -> loads++);
        page.navigate(shop.address("/visits/" + VISIT));
    }

    @Test
    void plansWheelsOfTheSeasonStandThere() {
        assertThat(planned.values()).allMatch(tag -> isOf(SeasonKind.WINTER, tag));
        planned.forEach((corner, tag) ->
                assertThat(wheel(corner).inputValue()).as(corner.name()).isEqualTo(tag));
        assertThat(page.locator("#filled-in").innerText()).isEqualTo("Filled in as the wheel plan has the winter set.");
    }

    @Test
    void fillingInAnotherSetLosesNoReadingThatWasTyped() {
        field("BATTERY_TEMPERATURE...").fill("11");
        link("summer").click();
        for (var corner : Corner.values()) {
            assertThat(isOf(SeasonKind.SUMMER, wheel(corner).inputValue())).isTrue();
        }
        assertThat(page.locator("#filled-in").innerText()).contains("summer");
        assertThat(field("BATTERY_TEMPERATURE...").inputValue()).isEqualTo("11");
        assertThat(page.locator("#unsaved").innerText()).startsWith("Not stored yet:");
    }

    @Test
    void readingThatWasTypedIsStoredWithTheWheels() {
        field("BATTERY_TEMPERATURE...").fill("11");
        record();
        assertThat(visit().leftOn()).isEqualTo(planned);
        assertThat(visit().readings().getLast().asWritten()).isEqualTo("11 °C");
        assertThat(page.locator("#RR").innerText()).contains("Going on, " + planned.get(Corner.RR));
    }

    @Test
    void anotherSensorStopsAtItsCornerAndKeepsWhatWasTyped() {
        var tag = planned.get(Corner.RF);
        var sensor = String.valueOf(car.findWheel(String.valueOf(planned.get(Corner.LR)))
                .orElseThrow()
                .sensorId());
        field("BATTERY_TEMPERATURE...").fill("11");
        field("dateCode.LF").fill("3523");
        field("sensor.RF").fill(sensor);
        record();
        assertThat(visit()).as("nothing is stored").isEqualTo(car.getVisit(VISIT));
        assertThat(place(Corner.RF).locator(".error").innerText())
                .contains(
                        "Stop: wheel %s carries sensor %s, expected".formatted(tag, sensor),
                        "That is the sensor of wheel " + planned.get(Corner.LR),
                        "Leave it off",
                        "look for %s at Rack W".formatted(tag));
        assertThat(place(Corner.LF).locator(".error").count()).isZero();
        assertThat(field("sensor.RF").inputValue()).isEqualTo(sensor);
        assertThat(field("dateCode.LF").inputValue()).isEqualTo("3523");
        assertThat(field("BATTERY_TEMPERATURE...").inputValue()).isEqualTo("11");
        assertThat(page.evaluate("document.activeElement.id")).isEqualTo("leaving.RF");
        Axe.assertNoViolation(page, "stopped");
    }

    @Test
    void anotherDateCodeStops() {
        field("dateCode.RR").fill("DOT 1AB C2D EFG 0119");
        record();
        assertThat(place(Corner.RR).locator(".error").innerText()).contains("shows date code 0119, expected 3523");
        assertThat(visit().leftOn()).isEmpty();
        field("dateCode.RR").fill("5423");
        record();
        assertThat(place(Corner.RR).locator(".error").innerText()).contains("expected 01 to 53");
        field("dateCode.RR").fill("3523");
        record();
        assertThat(visit().leftOn()).isEqualTo(planned);
    }

    @Test
    void treadThatDiffersFromTheTakeOffStopsAtTheCornerUntilItIsSettled() {
        record();
        var depth = "TREAD_DEPTH.LF.CENTRE." + planned.get(Corner.LF);
        field(depth).fill("3.1");
        store();
        assertThat(visit().readings()).as("asked about first").noneMatch(reading -> reading.value() == 3.1);
        page.getByText("these readings stand").click();
        store();
        assertThat(visit().readings()).as("what was read is kept").anyMatch(reading -> reading.value() == 3.1);
        assertThat(page.locator("#LF .group > .error").innerText())
                .contains("reads 3.1\u00a0mm in the centre groove", "at take-off", "Take it off");
        assertThat(page.getByRole(AriaRole.ALERT).innerText()).contains("Stop: the wheel at LF");
        field(depth).fill(takeOffDepth(String.valueOf(planned.get(Corner.LF))));
        store();
        field("reason." + depth).fill("read the wrong groove");
        store();
        assertThat(page.locator("#LF .group > .error").count()).as("settled").isZero();
    }

    @Test
    void storingReadingsKeepsWhatWasTypedAboutTheWheels() {
        field("BATTERY_TEMPERATURE...").fill("11");
        field("sensor.LR").fill("A&B=1");
        store();
        assertThat(visit().readings().getLast().asWritten()).isEqualTo("11 °C");
        assertThat(field("sensor.LR").inputValue()).isEqualTo("A&B=1");
        assertThat(visit().leftOn()).isEmpty();
    }

    @Test
    void leavingThePageWithSomethingTypedAsksFirst() {
        var asked = new StringBuilder();
        page.onDialog(dialog -> {
            asked.append(dialog.type());
            dialog.dismiss();
        });
        field("BATTERY_TEMPERATURE...").fill("11");
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Findings"))
                .first()
                .click();
        page.waitForCondition(() -> !asked.isEmpty());
        assertThat(asked).hasToString("beforeunload");
        assertThat(field("BATTERY_TEMPERATURE...").inputValue()).isEqualTo("11");
    }

    private static CarHistory withIdentities(CarHistory history) {
        return new CarHistory(
                history.vehicle(),
                history.customer(),
                history.sets().stream()
                        .map(set -> new WheelSet(
                                set.id(),
                                set.season(),
                                set.storePlace(),
                                set.wheels().stream()
                                        .map(wheel ->
                                                new Wheel(wheel.tag(), dated(wheel.tyre()), "7C" + wheel.tag() + "E"))
                                        .toList()))
                        .toList(),
                history.visits());
    }

    private static Tyre dated(Tyre tyre) {
        return new Tyre(
                tyre.model(),
                tyre.size(),
                tyre.loadIndex(),
                tyre.speedSymbol(),
                "3523",
                tyre.directional(),
                tyre.asymmetric(),
                tyre.newDepthMm());
    }

    private String takeOffDepth(String tag) {
        return car.visits().reversed().stream()
                .flatMap(visit -> visit.readings().stream())
                .filter(reading -> reading.measure() == Measure.TREAD_DEPTH
                        && reading.spot() == Spot.CENTRE
                        && tag.equals(reading.wheelTag()))
                .map(reading -> String.valueOf(reading.value()))
                .findFirst()
                .orElseThrow();
    }

    private boolean isOf(SeasonKind season, String tag) {
        return car.findSetOf(tag).orElseThrow().season() == season;
    }

    private Visit visit() {
        return shop.visit(VISIT);
    }

    private Locator field(String name) {
        return page.locator("[name='" + name + "']");
    }

    private Locator wheel(Corner corner) {
        return page.locator("#leaving select[name='" + corner + "']");
    }

    private Locator place(Corner corner) {
        return page.locator(".place").nth(corner.ordinal());
    }

    private Locator link(String season) {
        return page.locator("#leaving a").filter(new Locator.FilterOptions().setHasText(season));
    }

    private void record() {
        press("Record the wheels");
    }

    private void store() {
        press("Store readings");
    }

    /** Sends the form and waits for the page that answers. */
    private void press(String name) {
        int before = loads;
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name))
                .click();
        page.waitForCondition(() -> loads > before);
    }
}
