package cornerbook.app.desk.days;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import cornerbook.app.book.rack.Bringing;
import cornerbook.app.book.rack.By;
import cornerbook.app.book.rack.KeptSet;
import cornerbook.app.desk.link.DayLinks;
import cornerbook.app.desk.link.StoreLinks;
import cornerbook.app.door.Axe;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.core.days.WorkHours;
import cornerbook.core.days.plan.Wanted;
import cornerbook.core.store.FloorPoint;
import cornerbook.core.store.Naming;
import cornerbook.core.store.OnTheWay;
import cornerbook.core.store.Rack;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/**
 * A set that lies in another house: no day is proposed before it can be here. It is Wednesday noon; people work on Wednesdays and
 * Fridays, and a set that is asked for by eleven comes on the second working day after. Cars and people are invented.
 */
class SetsElsewherePagesTest {
    private static final String CAR = "demo-03";
    private static final LocalDate FRIDAY = ServedShop.TODAY.plusDays(2);
    /** Asked for on Wednesday noon counts for Friday; then Wednesday, then Friday. */
    private static final LocalDate FIRST = ServedShop.TODAY.plusDays(9);

    private final By by = new By("Ida", ServedShop.CLOCK.instant());
    private static final Pattern ADDRESS = Pattern.compile("(/pick/[^<\"]+)");

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private ServedShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = new ServedShop(folder, ServedShop.cars());
        shop.book().devices().putPerson("Ines", "no hash");
        shop.book()
                .hours()
                .put(
                        "Ines",
                        Map.of(
                                DayOfWeek.WEDNESDAY,
                                WorkHours.parse("8:00-16:30"),
                                DayOfWeek.FRIDAY,
                                WorkHours.parse("8:00-16:30")));
        rack("annex", "Annex", "R-##");
        rack("cellar", "Cellar", "K-##");
        shop.book().stock().put("put", "03S1", "R-05", by, ServedShop.TODAY);
        shop.book().bringing().say("room", " annex ", new Bringing(new OnTheWay(2), LocalTime.of(11, 0)), by);
    }

    private void rack(String id, String room, String pattern) {
        shop.book()
                .racks()
                .name(id, new Rack(room, new Naming(pattern, 1, 10), FloorPoint.DOOR, Rack.Along.RIGHT, 1, 1), by);
    }

    private HttpResponse<String> agree(LocalDate day, String work, Map<String, String> more) throws Exception {
        var fields = new HashMap<>(Map.of(
                "id",
                UUID.randomUUID().toString(),
                "car",
                CAR,
                "day",
                day.toString(),
                "work",
                work,
                "state",
                "BOOKED"));
        fields.putAll(more);
        return shop.post(DayLinks.appointments(), fields);
    }

    private KeptSet set() {
        return shop.book().stock().find("03S1").orElseThrow();
    }

    private static String main(Page page) {
        return page.locator("main").innerText();
    }

    @Test
    void anAppointmentSoonerIsSaidAtOnce() throws Exception {
        assertThat(shop.get(DayLinks.newAppointment(CAR)).body())
                .contains("Its set lies in Annex, and is here from 4 Dec 2026 on.");
        var refused = agree(FRIDAY, "WHEELS_AND_BRAKES", Map.of());
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("choose a later day").contains("name=\"sooner\"");
        assertThat(shop.book().appointments().listOf(CAR)).isEmpty();

        assertThat(agree(FRIDAY, "WHEELS", Map.of("sooner", "1")).statusCode()).isEqualTo(303);
        assertThat(shop.get(DayLinks.days(FRIDAY)).body()).contains("Its set lies in Annex");
        assertThat(agree(FIRST, "WHEELS", Map.of()).statusCode()).isEqualTo(303);
        assertThat(agree(FRIDAY.plusDays(5), "BRAKES", Map.of()).statusCode())
                .as("brakes need no set")
                .isEqualTo(303);
    }

    @Test
    void customersAndPlansGetNoDayBeforeIt() throws Exception {
        var made = shop.post(DayLinks.askDay(), Map.of("car", CAR, "work", "WHEELS"));
        var found = ADDRESS.matcher(made.body());
        assertThat(found.find()).isTrue();
        assertThat(shop.get(found.group(1)).body())
                .contains(FIRST + "T08:00")
                .doesNotContain(FRIDAY + "T", FRIDAY.plusDays(5) + "T");

        agree(FRIDAY, "WHEELS", Map.of("sooner", "1", "time", "09:00"));
        var now = ZonedDateTime.now(ServedShop.CLOCK);
        assertThat(DayPlanner.gather(shop.book(), PlanAsked.USUAL, now).visits())
                .singleElement()
                .extracting(Wanted::earliest)
                .isEqualTo(FIRST);

        var page = chromium.open(shop.address(DayLinks.days()), 390);
        page.getByLabel("Its plate").fill(ServedShop.car(CAR).vehicle().plate());
        page.getByText("Where does it fit?").click();
        page.getByText("The next day with room: 4 Dec 2026").waitFor();
        assertThat(main(page)).contains("Its set lies in Annex");
        Axe.assertNoViolation(page, "where a car fits whose set lies elsewhere");
        page.getByLabel("Its plate").fill("nothing is called so");
        page.getByText("Where does it fit?").click();
        page.getByText("No car is called so").waitFor();
    }

    @Test
    void aSetIsAskedForAndComesByATapEach() throws Exception {
        agree(FIRST, "WHEELS", Map.of());
        var page = chromium.open(shop.address(StoreLinks.bring()), 1180);
        // Two working days before the fourth of December is Friday, the 27th of November.
        page.getByText("To be asked for by 27 Nov 2026").waitFor();
        Axe.assertNoViolation(page, "sets to be brought");
        assertThat(shop.get(StoreLinks.bring() + ".csv").body())
                .contains("2026-11-27,11:00,Annex,R-05")
                .contains(",2026-12-04,not asked for,2026-12-04");
        page.locator("button[value=ASKED]").click();
        page.getByText("asked for, here on 4 Dec 2026").waitFor();
        assertThat(shop.get(StoreLinks.fetch(FIRST)).body()).contains("To be brought from elsewhere");

        assertThat(page.locator("input[name=place]").inputValue()).isEqualTo("K-01");
        page.locator("button[value=HERE]").click();
        page.getByText("No set has to be brought").waitFor();
        assertThat(set().place()).isEqualTo("K-01");
        assertThat(agree(FRIDAY, "WHEELS", Map.of()).statusCode()).isEqualTo(303);
        assertThat(shop.get(StoreLinks.fetch(FIRST)).body()).doesNotContain("To be brought from elsewhere");
    }

    /** The other house has promised another day; what comes after the appointment is said. */
    @Test
    void anotherDayMayBePromised() throws Exception {
        agree(FIRST, "WHEELS", Map.of());
        assertThat(say("ASKED", Map.of("comes", FIRST.plusDays(1).toString())).statusCode())
                .isEqualTo(303);
        assertThat(shop.get(StoreLinks.bring()).body()).contains("too late: here on 5 Dec 2026");
        assertThat(say("ASKED", Map.of("comes", FRIDAY.toString())).statusCode())
                .isEqualTo(303);
        assertThat(agree(FRIDAY, "WHEELS", Map.of()).statusCode()).isEqualTo(303);
        assertThat(say("NOT_ASKED", Map.of()).statusCode()).isEqualTo(303);
        assertThat(agree(FRIDAY.plusDays(5), "WHEELS", Map.of()).statusCode()).isEqualTo(422);
        assertThat(say("HERE", Map.of("place", "")).statusCode()).isEqualTo(303);
        assertThat(agree(FRIDAY.plusDays(5), "WHEELS", Map.of()).statusCode()).isEqualTo(303);
        assertThat(shop.get(StoreLinks.bring()).body()).contains("Here, and laid nowhere yet");
    }

    @Test
    void whatCannotBeIsRefusedAndChangesNothing() throws Exception {
        for (var comes : List.of("yesterday", ServedShop.TODAY.minusDays(1).toString(), "2099-01-01")) {
            assertThat(say("ASKED", Map.of("comes", comes)).statusCode()).isEqualTo(409);
        }
        assertThat(say("HERE", Map.of("place", "nowhere")).body()).contains("The store has no place");
        shop.book().stock().put("back", "03S1", "K-07", by, ServedShop.TODAY);
        assertThat(say("ASKED", Map.of()).body()).contains("does not lie in another store any more");
        assertThat(shop.book().bringing().list()).isEmpty();

        for (var room : List.of(
                Map.of("room", "Nowhere", "elsewhere", "1", "days", "1"),
                Map.of("room", "Cellar", "elsewhere", "1", "days", "many"),
                Map.of("room", "Cellar", "elsewhere", "1", "days", "31"),
                Map.of("room", "Cellar", "elsewhere", "1", "days", "1", "hour", "noon"))) {
            var fields = new HashMap<>(room);
            fields.put("id", UUID.randomUUID().toString());
            assertThat(shop.post(StoreLinks.storeRoom(), fields).statusCode()).isBetween(409, 422);
        }
        assertThat(shop.book().bringing().listRooms()).containsOnlyKeys("annex");
        assertThat(shop.post(
                                StoreLinks.storeRoom(),
                                Map.of("id", UUID.randomUUID().toString(), "room", "Annex", "days", "1"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(shop.book().bringing().listRooms()).isEmpty();
    }

    private HttpResponse<String> say(String step, Map<String, String> more) throws Exception {
        var fields = new HashMap<>(Map.of(
                "step",
                step,
                "id.0",
                UUID.randomUUID().toString(),
                "car.0",
                CAR,
                "set.0",
                set().key().setId()));
        fields.putAll(more);
        return shop.post(StoreLinks.bring(), fields);
    }
}
