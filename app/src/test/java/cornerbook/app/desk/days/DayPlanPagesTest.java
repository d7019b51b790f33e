package cornerbook.app.desk.days;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.appointment.Appointment.Because;
import cornerbook.app.book.appointment.AppointmentState;
import cornerbook.app.book.appointment.Plan;
import cornerbook.app.book.coming.ComingLedger;
import cornerbook.app.desk.link.DayLinks;
import cornerbook.app.door.Axe;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.core.coming.Matter;
import cornerbook.core.days.PlannedWork;
import cornerbook.core.days.Skill;
import cornerbook.core.days.WorkHours;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** The desk asks for a plan, looks at it and accepts it. Cars and people are invented. */
class DayPlanPagesTest {
    private static final LocalDate FRIDAY = ServedShop.TODAY.plusDays(2);
    private static final LocalDate MONDAY = ServedShop.TODAY.plusDays(5);

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private ServedShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = new ServedShop(folder, List.of(ServedShop.car("demo-03"), ServedShop.car("demo-08")));
        shop.book().devices().putPerson("Ines", "no hash");
        var day = WorkHours.parse("8:00-12:00, 12:30-16:30");
        shop.book().hours().put("Ines", Map.of(DayOfWeek.FRIDAY, day, DayOfWeek.MONDAY, day));
    }

    private void book(String id, String car, LocalDate day, @Nullable LocalTime time) {
        book(id, car, day, time, null);
    }

    private void book(String id, String car, LocalDate day, @Nullable LocalTime time, @Nullable String worker) {
        shop.book()
                .appointments()
                .make(
                        id,
                        car,
                        AppointmentState.BOOKED,
                        new Plan(day, time, PlannedWork.WHEELS, 60, null, worker, ""),
                        new Because(null, "Ines", ServedShop.CLOCK.instant()),
                        ServedShop.TODAY);
    }

    private Plan planOf(String id) {
        return shop.book().appointments().find(id).map(Appointment::plan).orElseThrow();
    }

    @Test
    void whatSlippedIsProposedAnewAndStandsWhenItIsAccepted() throws Exception {
        book("stays", "demo-03", MONDAY, LocalTime.of(9, 0));
        book("slips", "demo-08", FRIDAY, LocalTime.of(9, 0));
        shop.book().hours().close(FRIDAY, "stocktaking");
        var page = propose();
        assertThat(main(page))
                .contains("One change is proposed")
                .contains("One appointment stays as it is")
                .contains("Moved: nobody works on 27 Nov 2026");
        assertThat(planOf("slips").day()).as("nothing is stored before").isEqualTo(FRIDAY);

        page.getByText("Accept this plan").click();
        page.getByText("The plan stands: 1 appointment was written").waitFor();
        assertThat(planOf("slips").day()).isEqualTo(MONDAY);
        assertThat(planOf("slips").worker()).isEqualTo("Ines");
        assertThat(planOf("slips").clashesWith(planOf("stays"))).isFalse();
        assertThat(planOf("stays").time()).isEqualTo(LocalTime.of(9, 0));
        page.navigate(shop.address(DayLinks.days(MONDAY)));
        assertThat(main(page)).contains("moved: nobody works on 27 Nov 2026");
        assertThat(shop.post(DayLinks.dayPlan() + "/accept", Map.of()).body()).contains("No plan waits for an answer");
    }

    /** Somebody is ill on one day: that day's cars go to who is there, and no other week is touched. */
    @Test
    void whoIsAwayOnADayIsPlannedForNoCarOfThatDay() throws Exception {
        shop.book().devices().putPerson("Olav", "no hash");
        var all = WorkHours.parse("8:00-12:00, 12:30-16:30");
        shop.book().hours().put("Olav", Map.of(DayOfWeek.FRIDAY, all));
        book("slips", "demo-08", FRIDAY, LocalTime.of(9, 0), "Ines");
        book("stays", "demo-03", MONDAY, LocalTime.of(9, 0), "Ines");
        var page = chromium.open(shop.address("/shop/hours"), 390);
        page.locator("#person-away").selectOption("Ines");
        page.locator("#first").fill(FRIDAY.toString());
        page.getByText("Is not there").click();
        page.getByText("There after all").waitFor();
        Axe.assertNoViolation(page, "somebody away");

        page.navigate(shop.address(DayLinks.days(FRIDAY)));
        assertThat(main(page)).contains("Not there on this day: Ines.").contains("Ines is not there on this day");
        page.navigate(shop.address(DayLinks.days(MONDAY)));
        assertThat(main(page)).doesNotContain("not there on this day");
        page = propose();
        assertThat(main(page)).contains("One appointment stays as it is");
        page.getByText("Accept this plan").click();
        page.getByText("The plan stands: 1 appointment was written").waitFor();
        assertThat(planOf("slips").worker()).isEqualTo("Olav");
        assertThat(planOf("slips").day()).isEqualTo(FRIDAY);
        assertThat(planOf("slips").time()).as("nobody is told another time").isEqualTo("09:00");
        assertThat(planOf("stays").worker()).isEqualTo("Ines");

        page.navigate(shop.address("/shop/hours"));
        page.getByText("There after all").click();
        page.getByText("Nobody from today on").waitFor();
        assertThat(shop.book().hours().listAway(ServedShop.TODAY)).isEmpty();
    }

    /** Work that has no name of its own is said by what the car is due for: the desk has to tell it to the customer. */
    @Test
    void aCarThatIsDueSaysForWhat() {
        for (var matter : EnumSet.complementOf(EnumSet.of(Matter.RETORQUE, Matter.NEXT_VISIT))) {
            var matters = Set.of(matter);
            var work = ComingLedger.work(matters);
            assertThat(PlanRow.beside(work, matters).isEmpty())
                    .as("%s is said by %s", matter, work)
                    .isEqualTo(work != PlannedWork.OTHER);
        }
        assertThat(PlanRow.beside(PlannedWork.WHEELS_AND_BRAKES, Set.of(Matter.NEXT_VISIT, Matter.BRAKE_FLUID)))
                .containsExactly(Matter.BRAKE_FLUID);
        assertThat(PlanRow.beside(PlannedWork.RETORQUE, Set.of(Matter.RETORQUE)))
                .isEmpty();
    }

    @Test
    void daysAwayThatCannotBeAreOneSentence() throws Exception {
        awayRefused("does not work here", Map.of("person-away", "Nobody", "first", FRIDAY.toString()));
        awayRefused("not a date, expected one as", Map.of("person-away", "Ines", "first", "soon"));
        awayRefused("is past, expected a day from today on", Map.of("person-away", "Ines", "first", "2026-01-05"));
        awayRefused(
                "expected a last day that is not before the first",
                Map.of("person-away", "Ines", "first", MONDAY.toString(), "last", FRIDAY.toString()));
        assertThat(shop.book().hours().listAway(LocalDate.EPOCH)).isEmpty();
    }

    private void awayRefused(String sentence, Map<String, String> fields) throws Exception {
        var refused = shop.post("/shop/hours/away", fields);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains(sentence);
    }

    @Test
    void aPlanOfOtherDaysIsRefusedAndChangesNothing() throws Exception {
        book("free", "demo-03", MONDAY, null);
        propose();
        book("late", "demo-08", MONDAY, LocalTime.of(8, 0));
        var refused = shop.post(DayLinks.dayPlan() + "/accept", Map.of());
        assertThat(refused.statusCode()).isEqualTo(409);
        assertThat(refused.body()).contains("The days have changed since this plan was made");
        assertThat(planOf("free").time()).isNull();
    }

    @Test
    void whatCannotBeAskedIsOneSentence() throws Exception {
        for (var wrong : List.of(Map.of("weeks", "7", "free", "15"), Map.of("weeks", "-1", "free", "15"))) {
            var refused = shop.post(DayLinks.dayPlan(), wrong);
            assertThat(refused.statusCode()).isEqualTo(422);
            assertThat(refused.body()).contains("How far ahead must be 1 to 6 weeks");
        }
        assertThat(shop.post(DayLinks.dayPlan(), Map.of("weeks", "2", "free", "much"))
                        .body())
                .contains("What is left free must be 0 to 60 % of a day");
    }

    @Test
    void whoIsNotTrainedForACarIsTold() {
        shop.book().devices().putPerson("Olav", "no hash");
        var page = chromium.open(shop.address("/shop/hours"), 390);
        var olav = page.locator("form", new Page.LocatorOptions().setHasText("Olav"))
                .first();
        olav.locator("input[name=" + Skill.BRAKES.name() + "]").check();
        olav.getByText("Keep this").click();
        page.waitForURL("**/shop/hours");
        assertThat(shop.book().skills().list().of()).isEqualTo(Map.of("Olav", Set.of(Skill.BRAKES)));
        shop.book()
                .appointments()
                .make(
                        "brakes",
                        "demo-08",
                        AppointmentState.BOOKED,
                        new Plan(FRIDAY, null, PlannedWork.BRAKES, 90, null, "Ines", ""),
                        new Because(null, "Ines", ServedShop.CLOCK.instant()),
                        ServedShop.TODAY);
        page.navigate(shop.address(DayLinks.days(FRIDAY)));
        assertThat(main(page)).contains("Ines is not trained for this: brakes");
        page.navigate(shop.address(DayLinks.appointment("brakes")));
        assertThat(page.locator(".caution").innerText()).contains("Ines is not trained for this: brakes");
    }

    private Page propose() {
        var page = chromium.open(shop.address(DayLinks.days()), 390);
        page.getByText("Plan the coming days").click();
        page.getByText("Propose a plan").last().click();
        page.getByText("Throw it away").waitFor();
        Axe.assertNoViolation(page, "a proposed plan");
        return page;
    }

    private static String main(Page page) {
        return page.locator("main").innerText();
    }
}
