package cornerbook.app.desk.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import cornerbook.app.door.Axe;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.core.tool.ShopTool;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The pages of the bench in a real browser, over the invented shop. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BenchTest {
    private static final String CAR = "demo-08";
    private static final String LIFT =
            "/bench/lift?front=1050&rear=1150&wheelbase=2800&points-front=650&points-rear=2150&points-width=1500&arm-rating=1000&hoist-rating=4000&point-height=140&clearance=110&arm-height=95&adapter-height=60";
    private static final String PRESSURE =
            "/bench/pressure?placard=240&tyre-at=15&stands-at=-5&months=2,-4,-9&coldest=-27&first=250&first-at=20&second=190&second-at=0&days=30";
    private static final String SENSOR =
            "/bench/pressure?sensor-reads=264&gauge-reads=250&sensor-placard=250&sensor-since=2019-02-01&learning=tool";
    private static final String TORQUE =
            "/bench/torque?torque=130&count=5&length=450&adapter=150&thread=M14x1.5&class=10.9&on-thread=oiled&bar=90&bar-spread=15&calibrated=2026-01-10";
    private static final String TYRE =
            "/bench/tyre?placard=225/55R18+98V&other=235/50R18+101H&size=205/55R16&rim=7.5&worn=225/55R18%3D0&worn=225/55R18%3D2&circumference-limit=10";
    private static final String BATTERY =
            "/bench/battery?chemistry=agm&volts=12.5&rested=12&rated=680&standard=en&measured=560&capacity=70&standby=0.1";

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private ServedShop shop;

    @BeforeAll
    void openTheShop(@TempDir Path folder) {
        shop = new ServedShop(folder, ServedShop.cars());
    }

    @ParameterizedTest
    @ValueSource(ints = {390, 1180})
    void everyPageIsAccessibleAndDoesNotScrollSideways(int width) {
        var page = chromium.newPage(width, 844);
        for (var address : List.of(
                "/bench",
                LIFT,
                PRESSURE,
                SENSOR,
                TORQUE,
                TYRE,
                BATTERY,
                "/bench/lift",
                "/bench/pressure",
                "/bench/torque",
                "/bench/tyre",
                "/bench/cost",
                "/bench/renew",
                "/bench/battery",
                "/bench/burnish",
                "/bench/drag",
                "/bench/guides",
                "/bench/changeover",
                "/bench/torque?blank=yes")) {
            page.navigate(shop.address(address));
            page.evaluate("document.querySelectorAll('details').forEach(each => each.open = true)");
            Axe.assertNoViolation(page, address + " at " + width);
            assertThat((int) page.evaluate("document.documentElement.scrollWidth - window.innerWidth"))
                    .as(address)
                    .isLessThanOrEqualTo(0);
            assertThat(page.locator(".error").count()).as(address).isZero();
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                LIFT + " | Arm LF: 503 kg",
                PRESSURE + " | Set now to 265 kPa on this gauge",
                SENSOR + " | The sensor reads 14 kPa too much: off",
                TORQUE + " | Set the wrench to 98 N·m",
                TYRE + " | Rolling circumferences differ by 13 mm",
                BATTERY + " | 82 % of its rating: sound"
            })
    void eachCalculatorAnswersWithPictureAndWhy(String address, String answer) {
        var page = open(address, 1180);
        assertThat(page.locator("main").innerText().replace('\u00a0', ' ')).contains(answer);
        assertThat(page.locator(".bench-picture svg[aria-label]").count()).isPositive();
        var why = page.locator("details.why").first();
        why.locator("summary").click();
        assertThat(why.locator("dd").count()).isPositive();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/bench/torque?torque=130&length=20&adapter=150 | length | Wrench length is 20 mm, expected 100 to 2\u202f000 mm.",
                "/bench/torque?torque=130&length=450&adapter=20+psi | adapter | has the unit \"psi\"",
                "/bench/torque?torque=130&length=450 | adapter | Is missing",
                "/bench/torque?torque=130&thread=M13&class=10.9 | thread | Thread \"M13\" has no coarse pitch",
                "/bench/pressure?placard=240&tyre-at=15&stands-at=-30&maximum=280 | maximum | above the tyre's maximum of 280 kPa",
                "/bench/pressure?axle-load=3000&load-index=91&reference=250&at-pressure=240 | axle-load | above the 615 kg of load index 91",
                "/bench/pressure?sensor-reads=250&gauge-reads=2500&sensor-placard=250 | gauge-reads | Pressure of the gauge is 2\u202f500 kPa, expected 0 to 1\u202f000 kPa.",
                "/bench/pressure?sensor-since=2999-01-01 | sensor-since | expected a day not after",
                "/bench/tyre?size=205-55R16&rim=7 | size | where it needs a slash after the section width.",
                "/bench/tyre?tin=DOT+AB+C2+5419 | tin | Week of manufacture is 54, expected 01 to 53.",
                "/bench/battery?chemistry=agm&volts=13.8&rested=3 | volts | a charger holds it up"
            })
    void badInputIsRefusedAtItsFieldAndWhatWasTypedIsKept(String address, String field, String sentence) {
        var page = open(address, 1180);
        Locator input = page.locator("[id='" + field + "']");
        assertThat(input.getAttribute("aria-invalid")).isEqualTo("true");
        assertThat(page.locator("[id='error." + field + "']").innerText().replace('\u00a0', ' '))
                .contains(sentence)
                .endsWith(".");
        Axe.assertNoViolation(page, address);
    }

    @Test
    void torqueOutsideTheWrenchAndACentreOutsideThePointsAreRefusedInTheirPlace() {
        var torque = open("/bench/torque?torque=130&wrench-from=5&wrench-to=60", 1180);
        assertThat(torque.locator("#setting .error").innerText()).contains("expected 5 to 60");
        var lift = open(LIFT.replace("points-front=650", "points-front=1900"), 1180);
        assertThat(lift.locator("#loads .error").innerText()).contains("the car would tip, do not lift");
        assertThat(lift.locator("#stack .lead").count())
                .as("the rest is answered")
                .isOne();
        var plates = open(LIFT.replace("hoist-rating=4000", "hoist-rating=900"), 1180);
        assertThat(plates.locator("[id='error.hoist-rating']").innerText().replace('\u00a0', ' '))
                .contains("below the 1\u202f000 kg of one of its arms");
    }

    @Test
    void aCarsDataAreFilledInFromItsPageAndItsFindings() {
        var page = open("/cars/" + CAR, 1180);
        page.locator("a.button[href^='/bench/']").click();
        assertThat(page.locator("#torque").inputValue()).isEqualTo("120");
        assertThat(page.locator("#order .lead").innerText()).contains("1 3 5 2 4");
        assertThat(page.locator(".error").count()).isZero();
        page.locator("#class").selectOption("10.9");
        page.locator("#clamp-load button").click();
        assertThat(page.locator("#clamp-load .lead").first().innerText()).contains("of the proof load");
        assertThat(page.url()).contains("car=" + CAR).contains("class=10.9");
        var findings = open("/visits/demo-03-v7/findings", 1180);
        assertThat(findings.locator("a[href='/bench/torque?car=demo-03']").count())
                .isPositive();
    }

    @Test
    void unitsAreSwitchedOnThePageRememberedAndGoWithTheAddress() {
        var page = open("/bench/torque?torque=98&units=us&length=18&adapter=6", 1180);
        assertThat(page.locator("#setting .lead").innerText().replace('\u00a0', ' '))
                .contains("100 N·m")
                .contains("133 N·m");
        assertThat(page.locator(".note").innerText()).contains("US customary");
        page.locator(".units button[value=us]").click();
        assertThat(page.url()).endsWith("/bench/torque?torque=98&units=us&length=18&adapter=6");
        assertThat(page.locator(".units button[value=us]").getAttribute("aria-pressed"))
                .isEqualTo("true");
        assertThat(page.locator("#setting .lead").innerText().replace('\u00a0', ' '))
                .contains("Set the wrench to 74 lbf·ft");
        page.navigate(shop.address("/bench/torque?car=" + CAR));
        assertThat(Double.parseDouble(page.locator("#torque").inputValue())).isEqualTo(88.507);
        page.locator(".units button[value=metric]").click();
        assertThat(page.locator("#torque").inputValue()).isEqualTo("120");
    }

    @Test
    void readingsAreTypedInThePersonsUnitsAndAnUnitThatIsWrittenCounts() {
        var page = open("/visits/" + CAR + "-v7", 1180);
        page.locator(".units button[value=us]").click();
        var depths = page.locator("input[name^='TREAD_DEPTH.RR.']");
        depths.nth(0).fill("6.5");
        depths.nth(1).fill("5.5 mm");
        depths.nth(2).fill("13/64");
        page.locator("input[name^='BATTERY_TEMPERATURE']").fill("41");
        page.getByText("Store readings").click();
        page.waitForLoadState();
        var readings = shop.readings(CAR + "-v7");
        assertThat(readings)
                .extracting(reading -> reading.asWritten())
                .contains("6.5/32 in", "5.5 mm", "13/64 in", "41 °F");
        assertThat(readings)
                .filteredOn(reading -> reading.asWritten().contains("/"))
                .allSatisfy(reading -> assertThat(reading.value()).isCloseTo(6.5 * 25.4 / 32, within(1e-9)))
                .hasSize(2);
        assertThat(page.locator("input[name^='TREAD_DEPTH.RR.']").first().inputValue())
                .isEqualTo("6.5");
        page.locator(".units button[value=metric]").click();
        assertThat(page.locator("input[name^='TREAD_DEPTH.RR.']").first().inputValue())
                .isEqualTo("6.5/32 in");
    }

    @Test
    void aTorqueThatNoWrenchOfTheShopSetsIsRefusedWithTheReason() {
        var page = open("/shop/tools", 390);
        page.locator("#id").fill("W-2");
        page.locator("#name").fill("Invented small wrench");
        page.locator("#lowest").fill("5");
        page.locator("#highest").fill("44 lbf·ft");
        page.getByText("Keep it").click();
        assertThat(page.locator("[role=alert]").innerText()).contains("ay of the next calibration");
        assertThat(page.locator("#highest").inputValue()).isEqualTo("44 lbf·ft");
        page.locator("#due").fill("2027-03-01");
        page.getByText("Keep it").click();
        assertThat(page.locator("li.row.tool").innerText().replace('\u00a0', ' '))
                .contains("W-2")
                .contains("5 to 60 N·m");
        Axe.assertNoViolation(page, "tools");
        assertThat((int) page.evaluate("document.documentElement.scrollWidth - window.innerWidth"))
                .isLessThanOrEqualTo(0);
        page.navigate(shop.address("/visits/demo-03-v7"));
        var key = page.locator("input[name^='WHEEL_TORQUE.LF.']").getAttribute("name");
        page.locator("[id='" + key + "']").fill("121");
        page.getByText("Store readings").click();
        page.locator("[name='reason." + key + "']").fill("read again");
        page.getByText("Store readings").click();
        assertThat(page.locator("[id='error." + key + "']").innerText().replace('\u00a0', ' '))
                .isEqualTo("No calibrated wrench of the shop sets 121 N·m: W-2 goes from 5 N·m to 60 N·m.");
        page.navigate(shop.address("/bench/torque?blank=yes"));
        assertThat(page.locator("#wrench-to").inputValue()).startsWith("59.6");
        page.navigate(shop.address("/shop/tools"));
        page.locator("li.row.tool button").click();
        assertThat(shop.book().tools().list()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "lift",
                "pressure",
                "torque",
                "tyre",
                "cost",
                "renew",
                "battery",
                "burnish",
                "drag",
                "guides",
                "changeover"
            })
    void aPageThatNobodyHasTypedIntoAnswersAnInventedExampleInEitherUnits(String name) {
        var page = open("/bench/" + name, 1180);
        for (var system : List.of("metric", "us")) {
            page.locator(".units button[value=" + system + "]").click();
            page.waitForLoadState();
            assertThat(page.locator(".example").innerText()).contains("Invented example");
            assertThat(page.locator(".error").count()).isZero();
            assertThat(page.locator("section.bench").count())
                    .as("each part is answered")
                    .isEqualTo(page.locator("section.bench:has(details.why)").count());
            assertThat(page.locator(".answered .bench-picture svg[role=img][aria-label]")
                            .count())
                    .as("pictures that say what they show")
                    .isEqualTo(page.locator(".answered svg").count())
                    .isPositive();
        }
        page.locator(".example a.button").first().click();
        assertThat(page.url()).contains("car=");
        assertThat(page.locator(".example").count()).isZero();
        page.navigate(shop.address("/bench/" + name + "?blank=yes"));
        assertThat(page.locator("details.why").count()).isZero();
        assertThat(page.locator(".answered .soft").first().innerText())
                .startsWith("Still to be filled in: ")
                .doesNotContain("--");
    }

    @Test
    void aWrenchOfTheShopIsTakenInHandAndAnotherOneReplacesIt() {
        shop.book().tools().put(wrench("W-1", 40, 200, 3, ServedShop.TODAY.plusDays(100)));
        shop.book().tools().put(wrench("W-9", 20, 100, -1, ServedShop.TODAY.minusDays(1)));
        var page = open("/bench/torque?torque=90", 390);
        page.locator("#tool").selectOption("W-1");
        page.locator("#setting button").click();
        assertThat(page.locator("#setting .lead").innerText().replace('\u00a0', ' '))
                .contains("To be read on this wrench: 93 N·m");
        page.locator("#wrench-offset").fill("5");
        page.locator("#setting button").click();
        assertThat(page.locator("#setting .lead").innerText()).contains("95");
        page.locator("#tool").selectOption("W-9");
        page.locator("#setting button").click();
        assertThat(page.locator("#setting .lead").innerText()).contains("89");
        assertThat(page.locator(".common .error").innerText()).contains("overdue");
        page.locator("#tool").selectOption("");
        page.locator("#setting button").click();
        assertThat(page.locator("#wrench-to").inputValue()).isEmpty();
        List.of("W-1", "W-9").forEach(shop.book().tools()::remove);
    }

    @Test
    void theClimateOfThePlaceIsEnteredAndAnswersTheSeasonAndTheFindings() {
        var page = open("/bench/pressure", 390);
        page.getByText("Enter it").click();
        Axe.assertNoViolation(page, "climate");
        page.locator("#place").fill("Val-Ombrelune");
        page.locator("#source").fill("invented");
        page.locator("#coldest").fill("-27");
        for (int month = 1; month <= 12; month++) {
            page.locator("[name='minimum." + month + "']").fill(month == 12 ? "" : "-15");
            page.locator("[name='maximum." + month + "']").fill("-5");
        }
        page.getByText("Keep it").click();
        assertThat(page.locator("[role=alert]").innerText())
                .startsWith("Mean daily minimum of December is missing")
                .endsWith("what you typed is kept.");
        page.locator("[name='minimum.12']").fill("5 °F");
        page.getByText("Keep it").click();
        assertThat(page.locator("[name='minimum.12']").inputValue()).isEqualTo("−15");
        assertThat((int) page.evaluate("document.documentElement.scrollWidth - window.innerWidth"))
                .isLessThanOrEqualTo(0);
        page.navigate(shop.address("/bench/pressure"));
        assertThat(page.locator("#season .line").allInnerTexts())
                .anyMatch(line -> line.startsWith("Nov: "))
                .anyMatch(line -> line.equals("Temperatures: Val-Ombrelune (invented)"));
        page.navigate(shop.address("/visits/demo-03-v6/findings"));
        assertThat(page.locator("main").textContent().replace('\u00a0', ' ')).contains("to expect at −27 °C");
        page.navigate(shop.address("/shop/climate"));
        page.getByText("Remove it from the book").click();
        assertThat(shop.book().climate().find()).isEmpty();
    }

    private static ShopTool wrench(String id, double lowest, double highest, double offset, LocalDate due) {
        return new ShopTool(id, ShopTool.Kind.TORQUE_WRENCH, "Invented wrench", lowest, highest, offset, due);
    }

    @Test
    void aVisitNamesItsHoistOnTheEntryPageAndItsFindingsSayWhatTheArmsCarry() {
        var page = open("/shop/tools", 1180);
        page.locator("#id").fill("H-9");
        page.locator("#kind").selectOption("HOIST");
        page.locator("#name").fill("Invented hoist");
        page.locator("#lowest").fill("100");
        page.locator("#highest").fill("1900");
        page.locator("#due").fill("2027-03-01");
        page.getByText("Keep it").click();
        assertThat(page.locator("[role=alert]").innerText()).contains("Rating of the hoist is missing");
        page.getByText("Of a hoist").click();
        page.locator("#rating").fill("8800 lb");
        page.locator("#front-arm").fill("1000");
        page.locator("#rear-arm").fill("1000");
        page.locator("#blocks").fill("40; 80");
        page.getByText("Keep it").click();
        assertThat(page.locator("li.row.tool").innerText().replace('\u00a0', ' '))
                .contains("H-9")
                .contains("arms 1\u202f000 kg in front and 1\u202f000 kg behind");
        page.navigate(shop.address("/visits/demo-03-v7"));
        page.locator("[id='tool.HOIST']").selectOption("H-9");
        page.getByText("Store readings").click();
        assertThat(page.locator("[id='tool.HOIST']").inputValue()).isEqualTo("H-9");
        Axe.assertNoViolation(page, "entry with tools");
        page.navigate(shop.address("/visits/demo-03-v7/findings"));
        assertThat(page.locator("main").textContent()).contains("Hoist H-9: ").contains("inside the lift points");
        page.navigate(shop.address("/shop/tools"));
        page.locator("li.row.tool button").click();
    }

    /** Whatever a page says in metric units it says in the other units too, as a sentence. */
    @Test
    void noMetricQuantityIsLeftOnAnyPageOfAPersonWithUsUnits() {
        var page = open("/", 1180);
        page.locator(".units button[value=us]").click();
        for (var address : List.of(
                "/cars/" + CAR,
                "/visits/demo-03-v7",
                "/visits/demo-03-v7/findings",
                "/visits/demo-03-v7/plan",
                "/visits/demo-03-v7/burnish",
                "/cars/" + CAR + "/data",
                "/shop/climate",
                TORQUE,
                PRESSURE)) {
            page.navigate(shop.address(address));
            page.evaluate("document.querySelectorAll('[translate=no]').forEach(each => each.remove())");
            assertThat(page.locator("main").innerText().replaceAll("\"[^\"]*\"", ""))
                    .as(address)
                    .doesNotContainPattern("[0-9][\\s\u00a0\u202f](kPa|N·m|km|kg)\\b");
        }
    }

    private Page open(String address, int width) {
        return chromium.open(shop.address(address), width);
    }
}
