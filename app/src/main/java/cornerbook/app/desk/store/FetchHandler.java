package cornerbook.app.desk.store;

import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.request.Told;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.LocalDate;
import java.util.List;

/** Which sets are fetched for a day, and in which order one walks to them. */
public final class FetchHandler {
    /** What is typed cannot be. */
    private static final int UNFIT = 422;

    private static final int USUALLY_CARRIED = 2;
    private static final int MOST_CARRIED = 50;
    private static final int DAYS_AHEAD = 7;

    private final Desk desk;
    private final Pages pages;

    public FetchHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        var asked = Form.ofQuery(request);
        var day = asked.get("day").isEmpty() ? nextDay() : desk.dayInAddress(asked.get("day"));
        var typed = asked.get("carried");
        int carried = carried(typed);
        boolean fits = carried >= 1 && carried <= MOST_CARRIED;
        pages.send(
                response,
                fits ? 200 : UNFIT,
                "desk/store/fetch",
                FetchPage.of(
                        new FetchPage.Asked(
                                day,
                                typed.isEmpty() ? String.valueOf(USUALLY_CARRIED) : typed,
                                fits ? "" : Typed.sentence(Told.say(new StoreSaid.NoCarried(1, MOST_CARRIED)))),
                        fits ? carried : USUALLY_CARRIED,
                        expected(day, day),
                        Shelves.of(desk),
                        desk.book().bringing().list()));
    }

    /** Tomorrow, or where nobody comes tomorrow, the next day within a week on which a car comes for its wheels. */
    private LocalDate nextDay() {
        var tomorrow = desk.today().plusDays(1);
        return expected(tomorrow, tomorrow.plusDays(DAYS_AHEAD)).stream()
                .map(each -> each.plan().day())
                .findFirst()
                .orElse(tomorrow);
    }

    private List<Appointment> expected(LocalDate first, LocalDate last) {
        return desk.book().appointments().list(first, last).stream()
                .filter(each -> each.state().isOpen())
                .filter(each -> each.plan().work().changesWheels())
                .toList();
    }

    /** Zero where it is no number. */
    private static int carried(String text) {
        return text.isEmpty() ? USUALLY_CARRIED : text.matches("\\d{1,4}") ? Integer.parseInt(text) : 0;
    }
}
