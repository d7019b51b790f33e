package cornerbook.app.desk.days;

import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.days.DaysPage.DayLoad;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.DayOfWeek;
import java.time.temporal.TemporalAdjusters;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Shows a day of the shop and its week. */
public final class DaysHandler {
    private static final int LAST_OF_WEEK = 6;

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
        var ofDay = ofWeek.stream()
                .filter(each -> each.plan().day().equals(day))
                .toList();
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
                        monday.datesUntil(monday.plusWeeks(1))
                                .map(each -> DayLoad.of(each, ofWeek))
                                .toList(),
                        ofDay,
                        desk.book().visits().list(day).stream()
                                .filter(visit -> !expected.contains(visit.visitId()))
                                .toList()));
    }
}
