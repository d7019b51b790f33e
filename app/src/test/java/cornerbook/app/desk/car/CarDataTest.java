package cornerbook.app.desk.car;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Page;
import cornerbook.app.book.Book;
import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.core.car.CarHistory;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.words.UnitSystem;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A car is added and its data are changed, in a real browser. All cars are invented. */
class CarDataTest {
    private static final CarHistory KNOWN = ServedShop.cars().getFirst();

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private ServedShop shop;

    private Book book;
    private Page page;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = new ServedShop(folder, List.of(KNOWN));
        book = shop.book();
        page = chromium.newPage(1180, 820);
    }

    /** New car to first reading in at most 12 taps, besides what is typed: each field is tapped that has not the focus already. */
    @Test
    void aNewCarHasItsFirstReadingWithinTwelveTaps() {
        page.navigate(shop.address("/"));
        int taps = 0;
        page.locator("a[href='" + CarLinks.newCar() + "']").first().click();
        taps++;
        page.waitForFunction("document.activeElement?.id === '/vehicle/plate'");
        page.keyboard().type("QX 7007");
        for (var field : List.of(
                Map.entry("/customer/name", "Tamsin Orlavet"),
                Map.entry("/customer/phone", "555 0100"),
                Map.entry("/vehicle/frontAxle/tyreSize", "225/55R18"))) {
            page.locator("[id='" + field.getKey() + "']").click();
            taps++;
            page.keyboard().type(field.getValue());
        }
        page.locator("input[value=SUMMER]").click();
        taps++;
        submit();
        taps++;
        assertThat(page.locator("#filled-in").innerText()).startsWith("Filled in with the");
        page.waitForFunction("document.activeElement?.id === 'odometer'");
        page.keyboard().type("30000");
        submit();
        taps++;
        page.locator("input[name*='TREAD_DEPTH']").first().click();
        taps++;
        page.keyboard().type("5.6");
        page.locator(".store button[type=submit]:visible, main form button[type=submit]:visible:not([disabled])")
                .last()
                .click();
        taps++;
        page.waitForLoadState();
        assertThat(taps).as("taps").isLessThanOrEqualTo(12);
        var added = added("QX 7007");
        assertThat(added.vehicle().name()).isEqualTo("QX 7007");
        assertThat(added.vehicle().fastener()).isNull();
        assertThat(added.vehicle().jurisdiction())
                .as("the law of the other cars")
                .isEqualTo(KNOWN.vehicle().jurisdiction());
        assertThat(added.sets().getFirst().wheels())
                .extracting(wheel -> wheel.tag())
                .containsExactly("QX7007-1", "QX7007-2", "QX7007-3", "QX7007-4");
        assertThat(added.visits().getFirst().readings())
                .extracting(reading -> reading.value())
                .containsExactly(5.6);
    }

    @Test
    void whatIsMissingAtTheDoorIsNamedMarkedAndGoneTo() {
        go(CarLinks.newCar());
        fill("/customer/name", "Tamsin Orlavet");
        submit();
        assertThat(page.locator("[role=alert] a").allInnerTexts())
                .as("as the page names them")
                .containsExactly("Plate", "Tyre size", "It came on");
        assertThat(page.evaluate("document.activeElement.id")).isEqualTo("/vehicle/plate");
        page.locator("[role=alert] a").nth(1).click();
        assertThat(page.evaluate("document.activeElement.id")).isEqualTo("/vehicle/frontAxle/tyreSize");
        assertThat(page.locator("[id='/vehicle/frontAxle/tyreSize']").getAttribute("aria-invalid"))
                .isEqualTo("true");
        fill("/vehicle/plate", "QX 7007");
        fill("/vehicle/frontAxle/tyreSize", "wide");
        page.locator("input[value=SUMMER]").click();
        submit();
        assertThat(page.locator("[role=alert]").innerText()).contains("Tyre size", "wide");
        assertThat(book.cars().list()).hasSize(1);
    }

    @Test
    void dataAreCopiedFromACarOfTheSameKindAndSayFromWhich() {
        go(CarLinks.newCar());
        fill("/vehicle/plate", "QX 7007");
        fill("/customer/name", "Tamsin Orlavet");
        fill("/vehicle/frontAxle/tyreSize", KNOWN.vehicle().front().tyreSize());
        fill("/vehicle/name", KNOWN.vehicle().name().replaceFirst(",.*", ""));
        page.locator("input[value=SUMMER]").click();
        submit();
        assertThat(page.locator(".asks").innerText()).contains(KNOWN.vehicle().plate(), "by name");
        page.locator(".asks button").first().click();
        page.waitForLoadState();
        var added = added("QX 7007").vehicle();
        assertThat(added.front().brake()).isEqualTo(KNOWN.vehicle().front().brake());
        assertThat(added.front().placardPressureKpa())
                .isEqualTo(Objects.requireNonNull(KNOWN.vehicle().front().placardPressureKpa()));
        assertThat(added.details().copiedFrom()).contains(KNOWN.vehicle().plate());
        go(CarLinks.car(added.id()));
        assertThat(page.locator(".facts").innerText()).contains(KNOWN.vehicle().plate());
    }

    /** One set all year, other tyres behind than in front, and a spare that goes round with them. */
    @Test
    void aCarWithOtherTyresBehindAndAFullSizeSpareIsTakenAtTheDoor() {
        go(CarLinks.newCar());
        fill("/vehicle/plate", "QX 7007");
        fill("/customer/name", "Tamsin Orlavet");
        fill("/vehicle/frontAxle/tyreSize", "225/55R18");
        page.locator("input[value=ALL_SEASON]").click();
        page.locator("details.set summary").click();
        fill("/vehicle/rearAxle/tyreSize", "broad");
        page.locator("input[name=spare]").check();
        submit();
        assertThat(page.locator("[role=alert] a").innerText()).isEqualTo("Rear tyre size, if another");
        assertThat(page.evaluate("document.activeElement.id")).isEqualTo("/vehicle/rearAxle/tyreSize");
        assertThat(page.locator("input[name=spare]").isChecked()).isTrue();
        fill("/vehicle/rearAxle/tyreSize", "255/45R19");
        submit();
        assertThat(page.locator("#filled-in").innerText()).startsWith("Filled in with the");
        var set = added("QX 7007").sets().getFirst();
        assertThat(set.season()).isEqualTo(SeasonKind.ALL_SEASON);
        assertThat(set.wheels())
                .extracting(wheel -> wheel.tag() + " " + wheel.tyre().size())
                .containsExactly(
                        "QX7007-1 225/55R18",
                        "QX7007-2 225/55R18",
                        "QX7007-3 255/45R19",
                        "QX7007-4 255/45R19",
                        "QX7007-5 225/55R18");
    }

    private CarHistory added(String plate) {
        var id = book.cars().list().stream()
                .filter(car -> car.plate().equals(plate))
                .findFirst()
                .orElseThrow()
                .id();
        return book.cars().find(id).orElseThrow();
    }

    @Test
    void aSetIsFilledInWhenTheFirstVisitIsOpened() {
        go(CarLinks.newVisit(KNOWN.vehicle().id()));
        var set = KNOWN.sets().getLast();
        page.locator("a[data-form=arrived]").last().click();
        for (var corner : Corner.values()) {
            assertThat(set.wheels())
                    .extracting(wheel -> wheel.tag())
                    .contains(page.locator("[id='arrived." + corner + "']").inputValue());
        }
        assertThat(page.locator("#filled-in").innerText()).startsWith("Filled in with the");
        go(CarLinks.newVisitOn(KNOWN.vehicle().id(), set.id()));
        assertThat(page.locator("#filled-in").innerText())
                .as("without the module")
                .startsWith("Filled in with the");
    }

    @Test
    void dataAreChangedAndAnAllWheelLimitKept() {
        go(CarLinks.carData(KNOWN.vehicle().id()));
        openAll();
        fill("/vehicle/differences/sameAxle", "2/32 in");
        fill("/vehicle/body/kerbMass", "1700");
        submit();
        var changed = book.cars().find(KNOWN.vehicle().id()).orElseThrow();
        assertThat(changed.vehicle().details().differences().sameAxleMm()).isEqualTo(2 * 25.4 / 32);
        assertThat(changed.vehicle().details().body().kerbMassKg()).isEqualTo(1700);
        assertThat(changed.visits()).isEqualTo(KNOWN.visits());
        assertThat(changed.sets()).isEqualTo(KNOWN.sets());
    }

    @Test
    void inUsUnitsWhatWasNotTouchedStaysToTheLastDigit() {
        go(CarLinks.carData(KNOWN.vehicle().id()));
        page.locator(".units button[value=us]").click();
        openAll();
        assertThat(page.locator("[id='/vehicle/frontAxle/placardPressure']").inputValue())
                .isEqualTo(UnitSystem.US.field(
                        Objects.requireNonNull(KNOWN.vehicle().front().placardPressureKpa()), "kPa"));
        submit();
        assertThat(page.locator("p.error").count()).isZero();
        assertThat(book.cars().find(KNOWN.vehicle().id())).contains(KNOWN);
        go(CarLinks.carData(KNOWN.vehicle().id()));
        openAll();
        fill("/vehicle/rearAxle/placardPressure", "40");
        fill("/vehicle/body/kerbMass", "1700 kg");
        submit();
        var changed = book.cars().find(KNOWN.vehicle().id()).orElseThrow().vehicle();
        assertThat(changed.rear().placardPressureKpa()).isCloseTo(40 * 6.894757293168, within(1e-6));
        assertThat(changed.front()).isEqualTo(KNOWN.vehicle().front());
        assertThat(changed.details().body().kerbMassKg()).isEqualTo(1700);
        page.locator(".units button[value=metric]").click();
    }

    @Test
    void aWheelIsPutRightAndWhatStoodThereIsKept() {
        var id = KNOWN.vehicle().id();
        var known = KNOWN.sets().getFirst().wheels().getFirst();
        go(CarLinks.carData(id));
        fill("/wheelSets/0/wheels/0/tyre/tin", "DOT AB C2 5419");
        submit();
        assertThat(page.locator(".wrong .error").innerText()).contains("eek of manufacture is 54, expected 01 to 53");
        assertThat(book.cars().find(id)).contains(KNOWN);

        fill("/wheelSets/0/wheels/0/tyre/tin", "DOT 1AB C2D EFH 3519");
        fill("/wheelSets/0/wheels/0/sensorId", "");
        fill("/wheelSets/0/wheels/0/mounting", "5x114.3 M14x1.5 cone 64.1 ET45 7.5J");
        submit();
        var changed = book.cars().find(id).orElseThrow();
        var wheel = changed.sets().getFirst().wheels().getFirst();
        assertThat(wheel.tyre().tin()).isEqualTo("DOT 1AB C2D EFH 3519");
        assertThat(wheel.sensorId()).isNull();
        assertThat(wheel.details().mounting()).isNotNull();
        assertThat(wheel.tyre().model()).isEqualTo(known.tyre().model());
        assertThat(changed.visits()).isEqualTo(KNOWN.visits());
        assertThat(changed.sets().get(1)).isEqualTo(KNOWN.sets().get(1));
        assertThat(book.cars().listWheelChanges(id))
                .filteredOn(change -> change.what().equals("TIN"))
                .singleElement()
                .satisfies(change -> {
                    assertThat(change.tag()).isEqualTo(known.tag());
                    assertThat(change.before()).isEqualTo(known.tyre().tin());
                    assertThat(change.after()).isEqualTo("DOT 1AB C2D EFH 3519");
                });
        go(CarLinks.carData(id));
        assertThat(page.locator("main").innerText())
                .contains("TIN was " + known.tyre().tin());
    }

    @Test
    void whoeverSawAnOlderCarChangesNothing() {
        var id = KNOWN.vehicle().id();
        go(CarLinks.carData(id));
        book.cars().change(KNOWN, book.cars().findRevision(id).orElseThrow(), LocalDate.of(2026, 2, 2));
        fill("/vehicle/name", "Another name");
        submit();
        assertThat(page.locator("p.error").first().innerText()).contains("changed by somebody else");
        assertThat(book.cars().find(id).orElseThrow()).isEqualTo(KNOWN);
    }

    @Test
    void aContradictionIsSaidAtItsObject() {
        go(CarLinks.carData(KNOWN.vehicle().id()));
        fill("/vehicle/rearAxle/brake/parkingBrake", "cable");
        submit();
        assertThat(page.locator("details.set > p.error").innerText()).startsWith("Parking brake is electric");
        assertThat(book.cars().find(KNOWN.vehicle().id())).contains(KNOWN);
    }

    private void go(String path) {
        page.navigate(shop.address(path));
        openAll();
    }

    private void openAll() {
        page.locator("main form details").evaluateAll("all => all.forEach(one => one.open = true)");
    }

    private void fill(String pointer, String value) {
        openAll();
        var field = page.locator("[id='" + pointer + "']");
        if (field.evaluate("one => one.tagName").equals("SELECT")) {
            field.selectOption(value);
        } else {
            field.fill(value);
        }
    }

    private void submit() {
        page.locator("main form button[type=submit]:not([disabled])").click();
        page.waitForLoadState();
    }
}
