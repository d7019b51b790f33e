package cornerbook.app.desk.today;

import cornerbook.app.book.car.VehicleSummary;
import cornerbook.app.book.customer.Reach;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.visit.OpenRetorque;
import cornerbook.app.desk.BrakeDust;
import cornerbook.app.desk.Calls;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Slice;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.app.desk.today.TodayPage.Again;
import cornerbook.app.desk.today.TodayPage.Cars;
import cornerbook.app.desk.today.TodayPage.OfDay;
import cornerbook.app.request.PageException;
import cornerbook.app.request.Told;
import cornerbook.core.coming.Purpose;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.LocalDate;
import java.util.List;

/** The first page: today's visits, open re-torques, all cars. */
public final class TodayHandler {
    /** Says how many re-torques stand on the pages before. */
    private static final String AGAIN = "again";

    private static final int VISITS_ON_A_PAGE = 20;
    private static final int RETORQUES_ON_A_PAGE = 10;
    private static final int CARS_ON_A_PAGE = 25;

    private final Desk desk;
    private final Pages pages;

    public TodayHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        var today = desk.today();
        var date = desk.dayInAddress(Pages.queryValue(request, "date"));
        pages.send(
                response,
                200,
                "desk/today/today",
                new TodayPage(
                        today,
                        date,
                        visits(date, numberOf(Pages.queryValue(request, "visits"))),
                        retorques(numberOf(Pages.queryValue(request, AGAIN))),
                        desk.book().retorques().listConfirmed(today),
                        cars(Pages.queryValue(request, "q"), numberOf(Pages.queryValue(request, "from"))),
                        BrakeDust.ofWeek(desk.book(), date),
                        Told.reader().at(desk.clock().getZone())));
    }

    /** Of the cars that a page showed with old verdicts, the rows of those that have been judged since. */
    public void showJudged(ServerRequest request, ServerResponse response) {
        var ids = request.query().all("car", List::of).stream()
                .limit(CARS_ON_A_PAGE)
                .toList();
        pages.send(
                response,
                200,
                "desk/today/judged",
                new JudgedRows(
                        desk.book().search().list(ids).stream()
                                .filter(car -> !car.verdict().isOld())
                                .toList(),
                        Told.reader().at(desk.clock().getZone())));
    }

    private OfDay visits(LocalDate date, int from) {
        var visits = desk.book().visits();
        return new OfDay(
                desk.book().appointments().list(date, date).stream()
                        .filter(appointment -> appointment.state().isOpen())
                        .toList(),
                new Slice<>(visits.list(date, from, VISITS_ON_A_PAGE), from, visits.count(date), VISITS_ON_A_PAGE));
    }

    private Slice<Again> retorques(int from) {
        var open = desk.book().retorques().listToCall(from, RETORQUES_ON_A_PAGE);
        var reach = desk.reach();
        return new Slice<>(
                open.list().stream().map(each -> again(each, reach)).toList(), from, open.all(), RETORQUES_ON_A_PAGE);
    }

    /** As the book has them; those whose verdict is old are judged when they have been shown. */
    private Cars cars(String query, int from) {
        var found = desk.book().search().find(query, from, CARS_ON_A_PAGE);
        desk.lists()
                .ask(found.cars().stream()
                        .filter(car -> car.verdict().isOld())
                        .map(VehicleSummary::id)
                        .toList());
        return new Cars(
                query,
                new Slice<>(found.cars(), from, found.all(), CARS_ON_A_PAGE),
                found.near(),
                desk.book().search().findWithoutCar(query, CARS_ON_A_PAGE));
    }

    private Again again(OpenRetorque open, Reach reach) {
        var last = open.contact().last();
        return new Again(
                open,
                reach.mayCall(open.contact().customerId(), Purpose.SAFETY),
                last == null ? null : desk.dayOf(last.at()));
    }

    /** Somebody says what came of asking a customer to come back. */
    public void saveAnswer(ServerRequest request, ServerResponse response) {
        var visitId = Pages.pathValue(request, "id");
        var typed = Form.read(request);
        var answer = Calls.answer(typed, desk);
        desk.getVisit(visitId);
        try {
            desk.book().retorques().answer(typed.identity("id"), visitId, answer);
        } catch (BookException e) {
            throw new PageException(409, e.said());
        }
        Pages.redirect(response, VisitLinks.retorques(numberOf(typed.get(AGAIN))));
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
        Pages.redirect(response, VisitLinks.retorques(numberOf(typed.get(AGAIN))));
    }

    /** An address that was cut or typed shows the first page. */
    private static int numberOf(String text) {
        return text.matches("\\d{1,7}") ? Integer.parseInt(text) : 0;
    }
}
