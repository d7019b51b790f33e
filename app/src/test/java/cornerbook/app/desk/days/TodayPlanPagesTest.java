package cornerbook.app.desk.days;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.appointment.Appointment.Because;
import cornerbook.app.book.appointment.AppointmentState;
import cornerbook.app.book.appointment.Plan;
import cornerbook.app.book.visit.VisitState;
import cornerbook.app.desk.link.DayLinks;
import cornerbook.app.door.Axe;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.core.car.Visit;
import cornerbook.core.days.PlannedWork;
import cornerbook.core.days.WorkHours;
import cornerbook.core.days.plan.PlanGap;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** It is noon, and the day does not go as it was agreed: the desk lays the rest of it anew. Cars and people are invented. */
class TodayPlanPagesTest {
    private static final String AT_WORK = "demo-03";
    private static final String NEXT = "demo-05";
    private static final String LATE = "demo-02";

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private ServedShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = new ServedShop(folder, List.of(ServedShop.car(AT_WORK), ServedShop.car(NEXT), ServedShop.car(LATE)));
        shop.book().devices().putPerson("Ines", "no hash");
        var day = WorkHours.parse("8:00-12:00, 12:30-16:30");
        shop.book().hours().put("Ines", Map.of(DayOfWeek.WEDNESDAY, day, DayOfWeek.THURSDAY, day));
    }

    private void book(String car, int minutes, @Nullable LocalTime time) {
        shop.book()
                .appointments()
                .make(
                        car,
                        car,
                        AppointmentState.BOOKED,
                        new Plan(ServedShop.TODAY, time, PlannedWork.WHEELS, minutes, null, "Ines", ""),
                        new Because(null, "Ines", ServedShop.CLOCK.instant()),
                        ServedShop.TODAY);
    }

    /** The car came, and so many minutes ago its work began, of 90 expected. */
    private void begin(int minutesAgo) {
        book(AT_WORK, 90, LocalTime.of(8, 0));
        var before = ServedShop.car(AT_WORK).visits().getLast();
        shop.book()
                .visits()
                .add(
                        AT_WORK,
                        new Visit(
                                "running",
                                ServedShop.TODAY,
                                before.odometerKm() + 10,
                                before.leftOn(),
                                Map.of(),
                                List.of()));
        shop.book()
                .visits()
                .say(
                        "said",
                        "running",
                        VisitState.ON_THE_HOIST,
                        "Ines",
                        ServedShop.CLOCK.instant().minus(Duration.ofMinutes(minutesAgo)));
    }

    private Plan planOf(String id) {
        return shop.book().appointments().find(id).map(Appointment::plan).orElseThrow();
    }

    @Test
    void whatTakesLongerPushesOnlyWhoCannotStayAndSaysWhy() throws Exception {
        begin(150);
        book(NEXT, 60, LocalTime.of(12, 30));
        book(LATE, 60, LocalTime.of(9, 0));
        var page = chromium.open(shop.address(DayLinks.days()), 390);
        assertThat(main(page))
                .contains("2 cars of today cannot be worked on as agreed.")
                .contains("It was to come at 09:00 and is not here")
                .contains("Ines is at work on another car until about 13:");
        Axe.assertNoViolation(page, "today slips");

        page.getByText("Lay the rest of today anew").first().click();
        assertThat(page.locator("#weeks").inputValue()).isEqualTo("0");
        page.getByText("Propose a plan").last().click();
        page.getByText("Throw it away").waitFor();
        page.getByText("What stays, and why").click();
        Axe.assertNoViolation(page, "what is left of today");
        assertThat(main(page))
                .contains("Today is laid anew from 12:00 on.")
                .contains("2 changes are proposed.")
                .contains("Its work has begun, about")
                .containsPattern("(No plan of these days could be better|At most .* from the best possible plan)");
        assertThat(planOf(NEXT).time()).as("nothing is stored before").isEqualTo("12:30");

        page.getByText("Accept this plan").click();
        page.getByText("The plan stands: 2 appointments were written").waitFor();
        assertThat(List.of(planOf(NEXT), planOf(LATE)))
                .allSatisfy(plan -> assertThat(plan.day()).isEqualTo(ServedShop.TODAY))
                .allSatisfy(plan -> assertThat(plan.time()).isAfter("12:45"));
        assertThat(planOf(NEXT).clashesWith(planOf(LATE))).isFalse();
        assertThat(planOf(AT_WORK).time()).isEqualTo("08:00");
    }

    /** What has no room today has it tomorrow, where the plan may go as far. */
    @Test
    void whatHasNoRoomTodayGoesToAnotherDay() throws Exception {
        begin(5);
        book(NEXT, 200, LocalTime.of(9, 0));
        var page = propose("0");
        assertThat(main(page))
                .contains("One car has no place today any more.")
                .contains("Without a place")
                .contains("No day of this plan has room for it");
        assertThat(page.locator("a[href='" + DayLinks.appointment(NEXT) + "']").count())
                .isEqualTo(1);
        page = propose("1");
        assertThat(main(page)).contains("Moved: it was to come at 09:00 and is not here");
        page.getByText("Accept this plan").click();
        page.getByText("The plan stands: 1 appointment was written").waitFor();
        assertThat(planOf(NEXT).day()).isEqualTo(ServedShop.TODAY.plusDays(1));
    }

    /** A car that waits has its turn told; it has come, so nothing of it is stored. */
    @Test
    void whoWaitsHereHasItsTurnTold() throws Exception {
        begin(30);
        shop.book().visits().say("waits", "running", VisitState.WAITING, "Ines", ServedShop.CLOCK.instant());
        var page = propose("0");
        assertThat(main(page))
                .contains("Here already, its turn")
                .contains("It is here, and has its turn as soon as somebody is free")
                .contains("at 12:30");
        assertThat(page.getByText("Accept this plan").count()).isZero();
    }

    /** A car comes meanwhile: the plan was of another day. */
    @Test
    void aDayThatWentOnIsRefused() throws Exception {
        book(NEXT, 60, LocalTime.of(9, 0));
        propose("0");
        begin(1);
        var refused = shop.post(DayLinks.dayPlan() + "/accept", Map.of());
        assertThat(refused.statusCode()).isEqualTo(409);
        assertThat(refused.body()).contains("The days have changed since this plan was made");
        assertThat(planOf(NEXT).time()).isEqualTo("09:00");
    }

    /** A quarter of an hour is soon enough to accept a plan of today; a plan of other days does not age by the hour. */
    @Test
    void aPlanOfTodayIsOverSoon() {
        var now = ZonedDateTime.now(ServedShop.CLOCK);
        for (var asked : List.of(PlanAsked.TODAY, PlanAsked.USUAL)) {
            var proposed = new PlanState.Proposed(
                    asked, DayPlanner.gather(shop.book(), asked, now), List.of(), new PlanGap(0));
            assertThat(proposed.isOver(now.plusMinutes(15))).isFalse();
            assertThat(proposed.isOver(now.plusMinutes(16))).isEqualTo(asked.withToday());
        }
    }

    /** At noon in Greenwich it is eight in the morning at this shop, and two hours of work are all of it. */
    @Test
    void nowIsTheTimeOfTheShop() {
        begin(120);
        var moment = ServedShop.CLOCK.instant();
        var there = ZonedDateTime.ofInstant(moment, ZoneId.of("America/Halifax"));
        var gathered = DayPlanner.gather(shop.book(), PlanAsked.TODAY, there);
        assertThat(gathered.facts().stations())
                .singleElement()
                .satisfies(station -> assertThat(station.hours().written()).isEqualTo("08:00-12:00, 12:30-16:30"));
        var here = DayPlanner.gather(
                shop.book(), PlanAsked.TODAY, ZonedDateTime.ofInstant(moment, ServedShop.CLOCK.getZone()));
        assertThat(here.facts().stations())
                .singleElement()
                .satisfies(station -> assertThat(station.hours().written()).isEqualTo("12:30-16:30"));
        assertThat(here.visits().getFirst().minutes())
                .as("two hours of an hour and a half are over, more is to come")
                .isEqualTo(gathered.visits().getFirst().minutes())
                .isBetween(5, 60);
    }

    private Page propose(String weeks) {
        var page = chromium.open(shop.address(DayLinks.dayPlan()), 390);
        page.locator("#weeks").selectOption(weeks);
        page.locator("input[name=today]").check();
        page.getByText("Propose").last().click();
        page.getByText("Throw it away").waitFor();
        return page;
    }

    private static String main(Page page) {
        return page.locator("main").innerText();
    }
}
