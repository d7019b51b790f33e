package cornerbook.app.desk.car;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Page;
import cornerbook.app.book.Book;
import cornerbook.app.desk.Links;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.app.exchange.CarForm;
import cornerbook.core.car.CarHistory;
import cornerbook.core.corner.Corner;
import cornerbook.words.UnitSystem;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
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

    @Test
    void aCarIsAddedAndItsFirstVisitStarted() {
        go(Links.newCar());
        CarForm.values(KNOWN).forEach((pointer, value) -> {
            if (!pointer.startsWith(CarForm.SET)) {
                fill(pointer, value);
            }
        });
        fill("/vehicle/name", "Merlet Nova (invented)");
        fill("/vehicle/plate", "QX 7007");
        fillWinterSet("NEW-W");
        fill("/vehicle/frontAxle/axleLoad", "1150 furlongs");
        submit();
        assertThat(page.locator(".wrong .error").innerText()).contains("furlongs", "expected");
        assertThat(book.cars().list()).hasSize(1);

        fill("/vehicle/frontAxle/axleLoad", "2535 lb");
        submit();
        assertThat(page.locator("h1").innerText()).isEqualTo("Merlet Nova (invented)");
        var added = book.cars().list().stream()
                .filter(car -> car.plate().equals("QX 7007"))
                .findFirst()
                .orElseThrow();
        var history = book.cars().find(added.id()).orElseThrow();
        assertThat(history.vehicle().front().axleLoadKg()).isBetween(1149.0, 1151.0);
        assertThat(history.sets().getFirst().wheels())
                .extracting(wheel -> wheel.tag())
                .containsExactly("NEW-W1", "NEW-W2", "NEW-W3", "NEW-W4");

        page.locator("a", new Page.LocatorOptions().setHasText("New visit"))
                .first()
                .click();
        page.locator("#odometer").fill("12000");
        page.locator("main button[type=submit]:not([disabled])").click();
        assertThat(book.cars().find(added.id()).orElseThrow().visits()).hasSize(1);
    }

    @Test
    void eachFieldThatWasLeftOutSaysSo() {
        go(Links.newCar());
        submit();
        assertThat(page.locator(".wrong label").allInnerTexts())
                .as("those with a star, all at once")
                .hasSizeGreaterThan(30)
                .allMatch(label -> label.endsWith("*"));
        assertThat(page.locator(".wrong .error").allInnerTexts()).containsOnly("This is needed.");
        assertThat(book.cars().list()).hasSize(1);
    }

    @Test
    void aSetIsFilledInWhenTheFirstVisitIsOpened() {
        go(Links.newVisit(KNOWN.vehicle().id()));
        var set = KNOWN.sets().getLast();
        page.locator("a[data-form=arrived]").last().click();
        for (var corner : Corner.values()) {
            assertThat(set.wheels())
                    .extracting(wheel -> wheel.tag())
                    .contains(page.locator("[id='arrived." + corner + "']").inputValue());
        }
        assertThat(page.locator("#filled-in").innerText()).startsWith("Filled in with the");
        go(Links.newVisitOn(KNOWN.vehicle().id(), set.id()));
        assertThat(page.locator("#filled-in").innerText())
                .as("without the module")
                .startsWith("Filled in with the");
    }

    @Test
    void dataAreChangedAndAnAllWheelLimitKept() {
        go(Links.carData(KNOWN.vehicle().id()));
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
        go(Links.carData(KNOWN.vehicle().id()));
        page.locator(".units button[value=us]").click();
        openAll();
        assertThat(page.locator("[id='/vehicle/frontAxle/placardPressure']").inputValue())
                .isEqualTo(UnitSystem.US.field(KNOWN.vehicle().front().placardPressureKpa(), "kPa"));
        submit();
        assertThat(page.locator("p.error").count()).isZero();
        assertThat(book.cars().find(KNOWN.vehicle().id())).contains(KNOWN);
        go(Links.carData(KNOWN.vehicle().id()));
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
        go(Links.carData(id));
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
        go(Links.carData(id));
        assertThat(page.locator("main").innerText())
                .contains("TIN was " + known.tyre().tin());
    }

    @Test
    void whoeverSawAnOlderCarChangesNothing() {
        var id = KNOWN.vehicle().id();
        go(Links.carData(id));
        book.cars().change(KNOWN, book.cars().findRevision(id).orElseThrow(), LocalDate.of(2026, 2, 2));
        fill("/vehicle/name", "Another name");
        submit();
        assertThat(page.locator("p.error").first().innerText()).contains("changed by somebody else");
        assertThat(book.cars().find(id).orElseThrow()).isEqualTo(KNOWN);
    }

    @Test
    void aContradictionIsSaidAtItsObject() {
        go(Links.carData(KNOWN.vehicle().id()));
        fill("/vehicle/rearAxle/brake/parkingBrake", "cable");
        submit();
        assertThat(page.locator("details.set > p.error").innerText()).startsWith("Parking brake is electric");
        assertThat(book.cars().find(KNOWN.vehicle().id())).contains(KNOWN);
    }

    private void fillWinterSet(String tag) {
        for (var field : Map.of(
                        "season", "winter",
                        "tag", tag,
                        "tyre/model", "Isgrim Tapis 2",
                        "tyre/size", "215/55R17",
                        "tyre/loadIndex", "94",
                        "tyre/speedSymbol", "H",
                        "tyre/directional", "no",
                        "tyre/asymmetric", "yes",
                        "tyre/newDepth", "9.4")
                .entrySet()) {
            fill("/wheelSets/0/" + field.getKey(), field.getValue());
        }
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
