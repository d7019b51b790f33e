package cornerbook.app.desk.days;

import cornerbook.app.book.appointment.Appointment.Because;
import cornerbook.app.book.appointment.DayAsking.Wish;
import cornerbook.app.book.people.Secret;
import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.DeskSaid;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Links;
import cornerbook.app.desk.Pages;
import cornerbook.app.request.PageException;
import cornerbook.core.car.CarHistory;
import cornerbook.core.coming.Channel;
import cornerbook.core.coming.Purpose;
import cornerbook.core.days.PlannedWork;
import cornerbook.core.days.plan.Openings.Opening;
import cornerbook.core.say.Saying;
import io.helidon.http.HeaderNames;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.IntFunction;

/** Asks customers for a day by an address, and answers what they would like. */
public final class AskDayHandler {
    /** How long a customer has to choose from: common practice, no source. */
    private static final int WEEKS = 4;

    private final Desk desk;
    private final Pages pages;
    private final IntFunction<String> publicAddress;

    /** @param publicAddress of the server, by the port that it was asked at */
    public AskDayHandler(Desk desk, Pages pages, IntFunction<String> publicAddress) {
        this.desk = desk;
        this.pages = pages;
        this.publicAddress = publicAddress;
    }

    /** A new address for the customer of a car. It is shown in this answer and never again. */
    public void ask(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        var history = desk.getHistory(typed.get("car"));
        var work = typed.choice("work", List.of(PlannedWork.values()))
                .orElseThrow(() -> new PageException(400, new DeskSaid.FormNotUnderstood()));
        var until = desk.today().plusWeeks(WEEKS);
        var secret = Secret.make();
        desk.book()
                .dayWishes()
                .ask(
                        UUID.randomUUID().toString(),
                        history.vehicle().id(),
                        Secret.hash(secret),
                        work,
                        DayPlanner.minutes(work, desk.book().clockedTimes().expected()),
                        until,
                        desk.customerReader(history).language().tag(),
                        typed.person(),
                        desk.now());
        response.header(HeaderNames.CACHE_CONTROL, "no-store");
        pages.send(
                response,
                200,
                "desk/days/asked",
                asked(
                        history,
                        work,
                        until,
                        publicAddress.apply(request.localPeer().port()) + Links.PICK + secret));
    }

    private AskedPage asked(CarHistory history, PlannedWork work, LocalDate until, String address) {
        var customer = history.customer();
        var car = history.vehicle().name();
        var labels = desk.customerReader(history).labels("app/desk/days");
        var text = labels.of("pick-message", "car", car, "work", work, "address", address);
        var reach = desk.reach();
        var phone = customer.phone();
        var email = customer.email();
        return new AskedPage(
                AppointmentHandler.carOf(history),
                work,
                until,
                address,
                phone != null && reach.permits(customer.id(), Purpose.SEASON, Channel.MESSAGE)
                        ? Links.message(phone, text)
                        : null,
                email != null && reach.permits(customer.id(), Purpose.SEASON, Channel.E_MAIL)
                        ? Links.mail(email, labels.of("pick-title", "car", car), text)
                        : null);
    }

    /** What a customer would like becomes an appointment, or is set aside. */
    public void answer(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        var id = typed.identity("wish");
        var because = new Because(null, typed.person(), desk.now());
        var ledger = desk.book().dayWishes();
        try {
            var wish = ledger.listWaiting().stream()
                    .filter(each -> each.id().equals(id))
                    .findFirst();
            if (typed.get("answer").equals("BOOK")) {
                var opening = wish.flatMap(this::opening);
                ledger.book(
                        id,
                        opening.map(each -> each.station().hoist()).orElse(null),
                        opening.map(each -> each.station().person()).orElse(null),
                        because,
                        desk.today());
            } else {
                ledger.setAside(id, because);
            }
            var day = wish.map(Wish::day).orElse(null);
            Pages.redirect(
                    response, typed.get("answer").equals("BOOK") && day != null ? Links.days(day) : Links.days());
        } catch (BookException e) {
            if (e.isFailure()) {
                throw e;
            }
            throw new PageException(409, Saying.of(e));
        }
    }

    /** Who has the time that was picked. */
    private Optional<Opening> opening(Wish wish) {
        var day = wish.day();
        var time = wish.time();
        if (day == null || time == null || day.isBefore(desk.today())) {
            return Optional.empty();
        }
        return DayOffers.of(desk.book(), desk.localNow(), day, wish.asking().id()).later(wish.asking()).stream()
                .filter(offered -> offered.day().equals(day))
                .flatMap(offered -> offered.openings().stream())
                .filter(opening -> DayFacts.timeOf(opening.start()).equals(time))
                .findFirst();
    }
}
