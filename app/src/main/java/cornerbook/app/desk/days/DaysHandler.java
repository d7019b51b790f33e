package cornerbook.app.desk.days;

import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.shop.Absence;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.SetsThere;
import cornerbook.app.picture.days.DayLoad;
import cornerbook.core.days.PlannedWork;
import cornerbook.core.days.plan.PlanSaid.Slipped;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Shows a day of the shop and its week. */
public final class DaysHandler {
    private static final int LAST_OF_WEEK = 6;
    private static final int WEEKS_AHEAD = 6;
    private static final int MOST_PLACES = 4;

    private final Desk desk;
    private final Pages pages;

    public DaysHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        var today = desk.today();
        var day = desk.dayInAddress(Pages.queryValue(request, "day"));
        var monday = day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        var ofWeek = desk.book().appointments().list(monday, monday.plusDays(LAST_OF_WEEK));
        var ofDay =
                ofWeek.stream().filter(each -> each.plan().day().equals(day)).toList();
        var expected = ofDay.stream()
                .map(Appointment::visitId)
                .flatMap(Stream::ofNullable)
                .collect(Collectors.toSet());
        pages.send(
                response,
                200,
                "desk/days/days",
                new DaysPage(
                        today,
                        day,
                        loads(monday, 1, ofWeek),
                        desk.book().hours().listClosed(day).get(day),
                        ofDay,
                        desk.book().visits().list(day).stream()
                                .filter(visit -> !expected.contains(visit.visitId()))
                                .toList(),
                        desk.book().skills().list(),
                        new DaysPage.Beside(
                                desk.book().dayWishes().listWaiting(),
                                desk.reach(),
                                fit(Form.ofQuery(request)),
                                SetsThere.of(desk.book(), desk.localNow()),
                                desk.book().hours().listAway(day).stream()
                                        .filter(away -> !away.first().isAfter(day))
                                        .map(Absence::person)
                                        .distinct()
                                        .sorted()
                                        .toList(),
                                day.equals(today) ? slipping() : Map.of())));
    }

    /** What of today nobody can keep any more as it was agreed. Where nobody has said when they work, nothing is known of it. */
    private Map<String, Slipped> slipping() {
        return desk.book().hours().list().isEmpty()
                ? Map.of()
                : DayPlanner.gather(desk.book(), PlanAsked.TODAY, ZonedDateTime.now(desk.clock()))
                        .problem(PlanAsked.TODAY.freePercent())
                        .board()
                        .slipped();
    }

    /** Where a car fits that stands here, when somebody asks by the work that it needs. */
    private @Nullable FitPage fit(Form asked) {
        var work = asked.choice("fit", List.of(PlannedWork.values())).orElse(null);
        if (work == null) {
            return null;
        }
        var today = desk.today();
        int minutes = DayPlanner.minutes(work, desk.book().clockedTimes().expected());
        var offers = DayOffers.of(desk.book(), desk.localNow(), today.plusWeeks(WEEKS_AHEAD), "");
        boolean voltage = asked.has("voltage");
        var named = asked.get("car").isEmpty() ? null : desk.book().search().find(asked.get("car"), 0, 1);
        var waits = named != null && named.all() == 1
                ? offers.there().coming(named.cars().getFirst().id(), work)
                : Optional.<SetsThere.Coming>empty();
        var earliest = waits.map(SetsThere.Coming::day).orElse(today);
        return new FitPage(
                asked,
                work,
                minutes,
                earliest.isAfter(today)
                        ? List.of()
                        : offers.today(work, minutes, voltage).stream()
                                .limit(MOST_PLACES)
                                .toList(),
                offers.later(work, minutes, voltage, earliest).stream()
                        .findFirst()
                        .orElse(null),
                named,
                waits.orElse(null));
    }

    /** The weeks ahead, against what their days take. */
    public void showWeeks(ServerRequest request, ServerResponse response) {
        var monday = desk.today().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        var agreed = desk.book()
                .appointments()
                .list(monday, monday.plusWeeks(WEEKS_AHEAD).minusDays(1));
        pages.send(response, 200, "desk/days/weeks", new WeeksPage(desk.today(), loads(monday, WEEKS_AHEAD, agreed)));
    }

    private List<DayLoad> loads(LocalDate monday, int weeks, List<Appointment> agreed) {
        int usual = DayPlanner.minutes(
                PlannedWork.WHEELS_AND_BRAKES, desk.book().clockedTimes().expected());
        return desk
                .book()
                .hours()
                .capacityMinutes(
                        monday, weeks * (LAST_OF_WEEK + 1), desk.book().tools().list())
                .entrySet()
                .stream()
                .map(day -> DaysPage.load(day.getKey(), agreed, walkIns(day.getKey(), agreed, usual), day.getValue()))
                .toList();
    }

    /** How long each car that came without appointment takes; there are none yet of days to come. */
    private List<Integer> walkIns(LocalDate day, List<Appointment> agreed, int usual) {
        if (day.isAfter(desk.today())) {
            return List.of();
        }
        var expected = agreed.stream()
                .map(Appointment::visitId)
                .flatMap(Stream::ofNullable)
                .collect(Collectors.toSet());
        return desk.book().visits().list(day).stream()
                .filter(visit -> !expected.contains(visit.visitId()))
                .map(visit -> usual)
                .toList();
    }
}
