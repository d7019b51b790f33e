package cornerbook.app.desk.today;

import cornerbook.app.book.people.TabletAtWork;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.visit.OpenRetorque;
import cornerbook.app.book.visit.RetorqueAnswer;
import cornerbook.app.desk.BrakeDust;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.DeskSaid;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.today.TodayPage.Again;
import cornerbook.app.desk.today.TodayPage.Car;
import cornerbook.app.desk.today.TodayPage.Cars;
import cornerbook.app.request.Caller;
import cornerbook.app.request.PageException;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;

/** The first page: today's visits, open re-torques, all cars. */
public final class TodayHandler {
    private final Desk desk;
    private final Pages pages;
    private final GravestFindings gravest;

    public TodayHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
        this.gravest = new GravestFindings(
                desk::assessor,
                id -> desk.book().cars().find(id).map(desk::findingsOfLatest).orElse(List.of()));
    }

    public void show(ServerRequest request, ServerResponse response) {
        var today = desk.today();
        var date = dateOf(Pages.queryValue(request, "date"), today);
        var query = Pages.queryValue(request, "q");
        int from = numberOf(Pages.queryValue(request, "from"));
        var found = desk.book().search().find(query, from, Cars.ON_A_PAGE);
        var cars = found.cars().stream()
                .map(vehicle -> new Car(vehicle, gravest.of(vehicle)))
                .toList();
        pages.send(
                response,
                200,
                "desk/today/today",
                new TodayPage(
                        today,
                        date,
                        desk.book().visits().list(date),
                        desk.book().retorques().listOpen().stream()
                                .filter(open -> !open.contact().declined())
                                .map(this::again)
                                .toList(),
                        desk.book().retorques().listConfirmed(today),
                        new Cars(query, cars, from, found.all(), found.near()),
                        BrakeDust.ofWeek(desk.book(), date)));
    }

    private Again again(OpenRetorque open) {
        var last = open.contact().last();
        return new Again(open, last == null ? null : desk.dayOf(last.at()));
    }

    /** Somebody says what came of asking a customer to come back. */
    public void saveAnswer(ServerRequest request, ServerResponse response) {
        var visitId = Pages.pathValue(request, "id");
        var typed = Form.read(request);
        var answer = Arrays.stream(RetorqueAnswer.Kind.values())
                .filter(kind -> kind.name().equals(typed.get("answer")))
                .findFirst()
                .orElseThrow(() -> new PageException(400, new DeskSaid.FormNotUnderstood()));
        desk.getVisit(visitId);
        try {
            desk.book()
                    .retorques()
                    .answer(
                            typed.identity("id"),
                            visitId,
                            answer,
                            Caller.current().tablet().map(TabletAtWork::person).orElse(""),
                            desk.now());
        } catch (BookException e) {
            throw new PageException(409, e.said());
        }
        Pages.redirect(response, "/#retorques");
    }

    /** The wheels were tightened again to the torque that is asked for, or that was said by mistake today. */
    public void confirmRetorque(ServerRequest request, ServerResponse response) {
        var visitId = Pages.pathValue(request, "id");
        var typed = Form.read(request);
        desk.getVisit(visitId);
        try {
            if (typed.has("taken-back")) {
                desk.book().retorques().takeBack(visitId, desk.today());
            } else {
                desk.book().retorques().confirm(visitId, desk.today(), typed.person());
            }
        } catch (BookException e) {
            throw new PageException(409, e.said());
        }
        Pages.redirect(response, "/#retorques");
    }

    /** An address that was cut or typed shows the first page. */
    private static int numberOf(String text) {
        return text.matches("\\d{1,7}") ? Integer.parseInt(text) : 0;
    }

    private static LocalDate dateOf(String text, LocalDate today) {
        if (text.isEmpty()) {
            return today;
        }
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new PageException(400, new DeskSaid.NoDayInAddress(today.toString()));
        }
    }
}
