package cornerbook.app.desk.visit;

import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.DeskSaid;
import cornerbook.app.desk.EntryUnits;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Links;
import cornerbook.app.desk.OpenVisit;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.request.PageException;
import cornerbook.core.car.Visit;
import cornerbook.core.season.judge.OdometerDoubt;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.DateTimeException;
import java.time.LocalDate;

/** Puts right the date and the odometer of a visit. Nothing is judged here, so that a car that cannot be is put right too. */
public final class VisitDataHandler {
    private final Desk desk;
    private final Pages pages;

    public VisitDataHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        var open = desk.getOpenVisit(Pages.pathValue(request, "id"));
        var visit = open.visit();
        send(
                response,
                200,
                open,
                new Answer(visit.date().toString(), VisitDataPage.shown(visit), "", "", AskedOdometer.NONE));
    }

    public void save(ServerRequest request, ServerResponse response) {
        var open = desk.getOpenVisit(Pages.pathValue(request, "id"));
        var typed = Form.read(request);
        var error = "";
        var asked = AskedOdometer.NONE;
        try {
            var seen = seen(open.visit(), typed);
            var changed = open.visit()
                    .withOdometer(EntryHandler.dateOf(typed.get("date"), desk.today()), odometerKm(seen, typed));
            var doubt = AskedOdometer.of(OdometerDoubt.of(open.history(), changed), typed);
            if (doubt.isEmpty() || changed.odometerKm() == seen.odometerKm()) {
                desk.book()
                        .visits()
                        .putRight(seen, changed.date(), changed.odometerKm(), typed.get("reason"), desk.today());
                desk.learning().learnSoon();
                Pages.redirect(response, Links.visit(changed.id()));
                return;
            }
            asked = doubt.get();
        } catch (BookException | IllegalArgumentException e) {
            error = Typed.sentence(e);
        }
        send(
                response,
                422,
                open,
                new Answer(
                        typed.get("date"),
                        asked.asks() ? "" : typed.get("odometer"),
                        typed.get("reason"),
                        error,
                        asked));
    }

    /** The visit as the form showed it. */
    private static Visit seen(Visit visit, Form typed) {
        try {
            return visit.withOdometer(
                    LocalDate.parse(typed.get("seenDate")), Double.parseDouble(typed.get("seenOdometer")));
        } catch (DateTimeException | NumberFormatException e) {
            throw new PageException(400, new DeskSaid.FormNotUnderstood());
        }
    }

    /** A field that still says what it showed keeps the value to the last digit, whatever units it was shown in. */
    private static double odometerKm(Visit seen, Form typed) {
        var text = typed.get("odometer");
        return typed.has("shownOdometer") && text.equals(typed.get("shownOdometer"))
                ? seen.odometerKm()
                : Typed.valueOf(text, "km", EntryUnits.of(typed).system());
    }

    private record Answer(String date, String odometer, String reason, String error, AskedOdometer asked) {}

    private void send(ServerResponse response, int status, OpenVisit open, Answer answer) {
        pages.send(
                response,
                status,
                "desk/visit/visit-data",
                new VisitDataPage(
                        open.history(),
                        open.visit(),
                        answer.date(),
                        answer.odometer(),
                        answer.reason(),
                        answer.error(),
                        answer.asked(),
                        VisitDataPage.changes(desk.book(), open)));
    }
}
