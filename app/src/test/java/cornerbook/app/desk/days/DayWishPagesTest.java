package cornerbook.app.desk.days;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.appointment.AppointmentState;
import cornerbook.app.desk.link.DayLinks;
import cornerbook.app.door.Axe;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import cornerbook.core.days.WorkHours;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A customer picks a day by an address, and the desk makes an appointment of it. Cars and people are invented. */
class DayWishPagesTest {
    private static final LocalDate FRIDAY = ServedShop.TODAY.plusDays(2);
    private static final String CAR = "demo-03";
    private static final Pattern ADDRESS = Pattern.compile("(/pick/[^<\"]+)");

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private ServedShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = new ServedShop(folder, List.of(ServedShop.car(CAR), ServedShop.car("demo-08")));
        shop.book().devices().putPerson("Ines", "no hash");
        shop.book()
                .hours()
                .put(
                        "Ines",
                        Map.of(
                                DayOfWeek.WEDNESDAY,
                                WorkHours.parse("8:00-16:30"),
                                DayOfWeek.FRIDAY,
                                WorkHours.parse("8:00-12:00")));
    }

    private String addressFor(String car) throws Exception {
        var made = shop.post(DayLinks.askDay(), Map.of("car", car, "work", "WHEELS_AND_BRAKES"));
        assertThat(made.statusCode()).isEqualTo(200);
        var found = ADDRESS.matcher(made.body());
        assertThat(found.find()).isTrue();
        return found.group(1);
    }

    @Test
    void whatACustomerPicksBecomesAnAppointmentByOneTap() {
        var desk = chromium.open(shop.address(DayLinks.newAppointment(CAR)), 390);
        desk.getByText("Make the address").click();
        desk.locator(".secret").waitFor();
        Axe.assertNoViolation(desk, "an address to pick a day");
        var secret = ADDRESS.matcher(desk.locator(".secret").innerText());
        assertThat(secret.find()).isTrue();
        assertThat(desk.locator("a[href^='sms:']").getAttribute("href"))
                .startsWith("sms:+1819555")
                .contains(secret.group(1).substring(DayLinks.PICK.length()));

        var customer = chromium.open(shop.address(secret.group(1)), 390);
        Axe.assertNoViolation(customer, "picking a day");
        customer.locator("button[value=\"2026-11-27T08:00\"]").click();
        customer.getByText("It holds when the shop has confirmed it").waitFor();
        assertThat(main(customer)).contains("You asked for Friday, 27 Nov 2026 at 08:00");
        assertThat(shop.book().appointments().listOf(CAR)).isEmpty();

        desk.navigate(shop.address(DayLinks.days()));
        Axe.assertNoViolation(desk, "a wish on the days");
        desk.getByText("Book it").click();
        desk.waitForURL("**" + DayLinks.days(FRIDAY));
        assertThat(shop.book().appointments().listOf(CAR)).singleElement().satisfies(each -> {
            assertThat(each.state()).isEqualTo(AppointmentState.BOOKED);
            assertThat(each.plan().time()).isEqualTo(LocalTime.of(8, 0));
            assertThat(each.plan().worker()).isEqualTo("Ines");
        });
        assertThat(shop.book().dayWishes().listWaiting()).isEmpty();
        customer.reload();
        assertThat(main(customer)).contains("The shop has answered it");
        assertThat(customer.locator("button").count()).isZero();
    }

    @Test
    void noRoomIsGivenAwayTwice() throws Exception {
        var one = addressFor(CAR);
        var other = addressFor("demo-08");
        assertThat(shop.get(other).body()).contains("2026-11-27T08:00");
        assertThat(pick(one, "2026-11-27T08:00").statusCode()).isEqualTo(200);
        // Four hours, of which 15 % stay free: one visit of 125 minutes.
        assertThat(shop.get(other).body()).doesNotContain("2026-11-27");
        var refused = pick(other, "2026-11-27T08:00");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("That time is not free any more");
        assertThat(shop.get(one).body())
                .as("one’s own wish takes no room from oneself")
                .contains("2026-11-27T08:00");
        assertThat(pick(other, "call").body()).contains("You asked to be called");
        assertThat(shop.book().dayWishes().listWaiting()).hasSize(2);
        assertThat(pick(other, "whenever").statusCode()).isEqualTo(422);
        assertThat(shop.get("/pick/unknown").statusCode()).isEqualTo(404);
    }

    /** Whoever is asked may read another language than whoever asked. */
    @Test
    void theCustomerReadsItInTheOwnLanguageOrThatOfTheBrowser() throws Exception {
        var address = addressFor(CAR);
        assertThat(in("fr-CA,fr;q=0.9", address)).contains("lang=\"fr\"", "vendredi");
        assertThat(in("en-CA", address)).contains("lang=\"en\"", "Friday");
        var cars = shop.book().cars();
        var known = cars.find(CAR).orElseThrow();
        var customer = known.customer();
        cars.change(
                new CarHistory(
                        known.vehicle(),
                        new Customer(customer.id(), customer.name(), customer.phone(), customer.email(), "fr"),
                        known.sets(),
                        known.visits()),
                cars.findRevision(CAR).orElseThrow(),
                ServedShop.TODAY);
        assertThat(in("en-CA", address)).contains("lang=\"fr\"", "vendredi");
    }

    private String in(String language, String address) throws Exception {
        return shop.get(address, "Accept-Language", language).body();
    }

    @Test
    void aWishIsAnsweredOnce() throws Exception {
        pick(addressFor(CAR), "2026-11-27T08:00");
        var wish = shop.book().dayWishes().listWaiting().getFirst().id();
        assertThat(shop.post(DayLinks.dayWish(), Map.of("wish", wish, "answer", "SET_ASIDE"))
                        .statusCode())
                .isEqualTo(303);
        var again = shop.post(DayLinks.dayWish(), Map.of("wish", wish, "answer", "BOOK"));
        assertThat(again.statusCode()).isEqualTo(409);
        assertThat(again.body()).contains("This wish was answered already");
        assertThat(shop.book().appointments().listOf(CAR))
                .extracting(Appointment::id)
                .isEmpty();
    }

    @Test
    void aCarThatStandsHereFitsAsLongAsTheDayHasRoom() {
        // It is noon, Ines works until half past four, and the car that is here already takes 125 minutes of it.
        var page = chromium.open(shop.address(DayLinks.days()), 390);
        page.getByText("Where does it fit?").click();
        page.getByText("14:15 to about 16:20, Ines").waitFor();
        shop.book().hours().close(ServedShop.TODAY, "");
        page.reload();
        assertThat(main(page))
                .contains("today has no such room left")
                .contains("The next day with room: 27 Nov 2026, from 08:00");
    }

    /** The car of today came without appointment: it takes its time of the day as one with an appointment does. */
    @Test
    void whoCameWithoutAppointmentCountsInTheLoad() throws Exception {
        assertThat(shop.book().appointments().list(ServedShop.TODAY, ServedShop.TODAY))
                .isEmpty();
        for (var page : List.of(DayLinks.days(), DayLinks.weeks())) {
            assertThat(shop.get(page).body()).contains("2 h 05");
        }
    }

    private HttpResponse<String> pick(String address, String what) throws Exception {
        return shop.post(address, Map.of("id", UUID.randomUUID().toString(), "pick", what));
    }

    private static String main(Page page) {
        return page.locator("main").innerText();
    }
}
