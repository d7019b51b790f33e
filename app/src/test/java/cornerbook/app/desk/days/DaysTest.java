package cornerbook.app.desk.days;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Cookie;
import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.appointment.AppointmentState;
import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.desk.link.DayLinks;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.core.days.PlannedWork;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** Days agreed at the desk, by finger and by keyboard. Cars are invented. */
class DaysTest {
    private static final String CAR = "demo-03";
    private static final LocalDate FRIDAY = LocalDate.of(2026, 11, 27);

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private ServedShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = new ServedShop(folder, List.of(ServedShop.car(CAR)));
    }

    @Test
    void aDayIsAgreedMovedAndCalledOff() {
        var page = chromium.open(shop.address(CarLinks.car(CAR)), 390);
        page.getByText("Agree a day").click();
        page.locator("#day").fill("2026-11-27");
        page.locator("#time").fill("09:30");
        page.getByText("Book the day").click();
        page.waitForURL("**" + DayLinks.days(FRIDAY));
        assertThat(main(page)).contains("09:30").contains("125\u00a0min").contains("Booked");
        assertThat(page.locator(".week a[aria-current]").innerText())
                .contains("27")
                .contains("1 car")
                .contains("2 h 05");

        page.getByText("Move or call off").click();
        page.locator("#day").fill("2026-12-01");
        page.locator("#change\\.reason").fill("parts are late");
        page.locator("#change\\.person").fill("Ines");
        page.locator("#change\\.person").press("Tab");
        page.keyboard().press("Enter");
        page.waitForURL("**" + DayLinks.days(LocalDate.of(2026, 12, 1)));
        assertThat(main(page)).contains("parts are late");

        page.getByText("Move or call off").click();
        page.getByText("Call off").first().click();
        page.locator("#off\\.reason").fill("sold the car");
        page.locator("#off\\.person").fill("Ines");
        page.locator("button[value=CALLED_OFF]").click();
        page.waitForURL("**" + DayLinks.days(LocalDate.of(2026, 12, 1)));
        assertThat(main(page)).contains("Called off").contains("sold the car");
        assertThat(shop.book().appointments().listOf(CAR))
                .extracting(Appointment::state)
                .containsExactly(AppointmentState.CALLED_OFF);
    }

    @Test
    void theCarIsExpectedTodayAndItsVisitSaysThatItCame() throws Exception {
        post(Map.of("day", ServedShop.TODAY.toString(), "time", "14:00", "work", "RETORQUE"));
        var page = chromium.open(shop.address("/"), 1180);
        assertThat(page.locator("section[aria-labelledby=expected]").innerText())
                .contains("14:00")
                .contains("Wheels tightened again");
        page.getByText("It is here").click();
        page.locator("#odometer")
                .fill(Integer.toString(
                        (int) ServedShop.car(CAR).visits().getLast().odometerKm() + 60));
        page.getByText("Open the visit").click();
        page.waitForURL("**/visits/**");
        page.navigate(shop.address(DayLinks.days()));
        assertThat(main(page)).contains("Came").contains("Its visit").doesNotContain("Without appointment\n");
        page.navigate(shop.address("/"));
        assertThat(page.locator("section[aria-labelledby=expected]").count()).isZero();
    }

    @Test
    void aCarIsFoundAndADueRetorqueIsAgreed() {
        var page = chromium.open(shop.address(DayLinks.days()), 390);
        page.locator("#car").fill("nivaro");
        page.locator("#car").press("Enter");
        page.waitForURL("**" + DayLinks.newAppointment() + "?q=nivaro");
        page.locator("main .rows a").click();
        page.waitForURL("**" + DayLinks.newAppointment(CAR));
        assertThat(main(page)).contains("Nivaro Lumen");
    }

    @Test
    void nothingScrollsSidewaysInFrenchOnATelephone() {
        shop.book().devices().putPerson("Marie-Ève des Trois-Rivières", "no hash");
        var page = chromium.open(shop.address(DayLinks.days()), 390);
        page.context().addCookies(List.of(new Cookie("language", "fr").setUrl(shop.address("/"))));
        for (var address : List.of(DayLinks.days(), DayLinks.weeks(), "/shop/hours")) {
            page.navigate(shop.address(address));
            assertThat(page.locator("html").getAttribute("lang")).isEqualTo("fr");
            assertThat(page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                    .as(address)
                    .isEqualTo(0);
        }
        page.locator("li.calendar button").first().click();
        page.locator(".secret").waitFor();
        assertThat(page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                .isEqualTo(0);
    }

    @Test
    void whatCannotBeIsOneSentenceAndChangesNothing() throws Exception {
        refused("is past, expected", Map.of("day", "2026-11-24"));
        refused("not a date, expected one as", Map.of("day", "soon"));
        refused("no time of day, expected one as 09:30", Map.of("time", "9 and a bit"));
        refused("no number of minutes", Map.of("minutes", "-5"));
        refused("The expected time must be 1\u00a0min to", Map.of("minutes", "5000"));
        refused("The shop has no hoist H-99", Map.of("hoist", "H-99"));
        refused("is not among the people of the shop", Map.of("worker", "Nobody"));
        assertThat(post(Map.of("work", "NOTHING")).statusCode()).isEqualTo(400);
        assertThat(shop.get(DayLinks.appointment("nothing")).statusCode()).isEqualTo(404);
        assertThat(shop.get(DayLinks.days() + "?day=soon").statusCode()).isEqualTo(400);
        assertThat(shop.book().appointments().listOf(CAR)).isEmpty();
        assertThat(post(Map.of("time", "08:15")).statusCode()).isEqualTo(303);
        assertThat(shop.book().appointments().listOf(CAR))
                .singleElement()
                .satisfies(each -> assertThat(each.plan())
                        .satisfies(plan -> assertThat(plan.time()).isEqualTo(LocalTime.of(8, 15)))
                        .satisfies(plan -> assertThat(plan.work()).isEqualTo(PlannedWork.WHEELS)));
    }

    @Test
    void whatADayTakesFollowsFromHoursAndClosedDays() throws Exception {
        shop.book().devices().putPerson("Ines", "no hash");
        var page = chromium.open(shop.address("/shop/hours"), 390);
        page.getByLabel("Friday").fill("8:00-12:00, 12:30-13:00");
        page.getByText("Keep this").click();
        page.waitForURL("**/shop/hours");
        assertThat(page.getByLabel("Friday").inputValue()).isEqualTo("08:00-12:00, 12:30-13:00");
        post(Map.of("minutes", "300"));
        page.navigate(shop.address(DayLinks.weeks()));
        var row = page.locator("tbody tr").filter(new Locator.FilterOptions().setHasText("27 Nov 2026"));
        assertThat(row.innerText()).contains("5 h").contains("4 h 30").contains("0 h 30 too much");

        page.navigate(shop.address("/shop/hours"));
        page.locator("#day").fill("2026-11-27");
        page.locator("#why").fill("stocktaking");
        page.getByText("Closed on that day").click();
        page.waitForURL("**/shop/hours");
        page.navigate(shop.address(DayLinks.days(FRIDAY)));
        assertThat(main(page)).contains("The shop is closed on this day: stocktaking.");
        page.navigate(shop.address(DayLinks.weeks()));
        assertThat(row.innerText()).contains("5 h too much");

        var refused = shop.post("/shop/hours", Map.of("who", "Ines", "MONDAY", "all day"));
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("Monday: “all day” is no hours of work");
        assertThat(shop.post("/shop/hours", Map.of("who", "Nobody")).statusCode())
                .isEqualTo(422);
        assertThat(shop.post("/shop/hours/close", Map.of("day", "soon")).statusCode())
                .isEqualTo(422);
        assertThat(shop.book().hours().list()).containsOnlyKeys("Ines");
        shop.book().devices().removePerson("Ines", ServedShop.CLOCK.instant());
        assertThat(shop.book().hours().list()).isEmpty();
    }

    private void refused(String sentence, Map<String, String> fields) throws Exception {
        var answer = post(fields);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains(sentence).contains("Nothing was stored");
    }

    private HttpResponse<String> post(Map<String, String> fields) throws Exception {
        var all = new HashMap<>(Map.of(
                "id",
                UUID.randomUUID().toString(),
                "car",
                CAR,
                "day",
                FRIDAY.toString(),
                "work",
                "WHEELS",
                "state",
                "BOOKED"));
        all.putAll(fields);
        return shop.post(DayLinks.appointments(), all);
    }

    private static String main(Page page) {
        return page.locator("main").innerText();
    }
}
