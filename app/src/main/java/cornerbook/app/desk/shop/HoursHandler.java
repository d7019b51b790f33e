package cornerbook.app.desk.shop;

import cornerbook.app.desk.Desk;
import cornerbook.app.desk.DeskSaid;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.request.PageException;
import cornerbook.core.days.WorkHours;
import cornerbook.core.say.Refused;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.EnumMap;
import java.util.Map;

/** When people work, and when the shop is closed. */
public final class HoursHandler {
    public static final String PAGE = "/shop/hours";
    private static final int LONGEST_REASON = 80;

    private final Desk desk;
    private final Pages pages;

    public HoursHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        send(response, 200, Form.EMPTY, "");
    }

    /** The hours of one person. */
    public void save(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        var person = typed.get("who");
        if (!desk.book().devices().listPeople().contains(person)) {
            throw new PageException(422, new ShopSaid.NobodyOfThatName(person));
        }
        try {
            desk.book().hours().put(person, read(typed));
            Pages.redirect(response, PAGE);
        } catch (IllegalArgumentException e) {
            send(response, 422, typed, Typed.sentence(e));
        }
    }

    private static Map<DayOfWeek, WorkHours> read(Form typed) {
        var hours = new EnumMap<DayOfWeek, WorkHours>(DayOfWeek.class);
        for (var weekday : DayOfWeek.values()) {
            try {
                hours.put(weekday, WorkHours.parse(typed.get(weekday.name())));
            } catch (Refused e) {
                throw new Refused(new ShopSaid.HoursOf(HoursPage.nameOf(weekday), e.said()));
            }
        }
        return hours;
    }

    public void close(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        try {
            var day = day(typed);
            if (typed.get("why").length() > LONGEST_REASON) {
                throw new Refused(new ShopSaid.ReasonTooLong(LONGEST_REASON));
            }
            desk.book().hours().close(day, typed.get("why"));
            Pages.redirect(response, PAGE);
        } catch (IllegalArgumentException e) {
            send(response, 422, typed, Typed.sentence(e));
        }
    }

    public void open(ServerRequest request, ServerResponse response) {
        try {
            desk.book().hours().open(day(Form.read(request)));
            Pages.redirect(response, PAGE);
        } catch (IllegalArgumentException e) {
            send(response, 422, Form.EMPTY, Typed.sentence(e));
        }
    }

    private LocalDate day(Form typed) {
        try {
            return LocalDate.parse(typed.get("day"));
        } catch (DateTimeParseException e) {
            throw new Refused(new DeskSaid.NoDay(desk.today().toString()));
        }
    }

    private void send(ServerResponse response, int status, Form typed, String error) {
        var hours = desk.book().hours();
        pages.send(
                response,
                status,
                "desk/shop/hours",
                new HoursPage(
                        desk.today(),
                        desk.book().devices().listPeople(),
                        hours.list(),
                        hours.listClosed(desk.today()),
                        typed,
                        error));
    }
}
