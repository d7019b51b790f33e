package cornerbook.app.desk.days;

import cornerbook.app.book.appointment.Appointment.Because;
import cornerbook.app.book.appointment.DayAsking.Wish;
import cornerbook.app.book.mail.Letter;
import cornerbook.app.book.people.Secret;
import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.DeskSaid;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.ShopMailer;
import cornerbook.app.desk.link.CallLinks;
import cornerbook.app.desk.link.CustomerLinks;
import cornerbook.app.desk.link.DayLinks;
import cornerbook.app.mail.Mail;
import cornerbook.app.request.PageException;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import cornerbook.core.coming.Channel;
import cornerbook.core.coming.Purpose;
import cornerbook.core.days.PlannedWork;
import cornerbook.core.days.plan.Openings.Opening;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Saying;
import io.helidon.http.HeaderNames;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.IntFunction;

/** Asks customers for a day by an address, and answers what they would like. */
public final class AskDayHandler {
    /** How long a customer has to choose from: common practice, no source. */
    private static final int WEEKS = 4;

    private final Desk desk;
    private final Pages pages;
    private final Letterhead letterhead;
    private final IntFunction<String> publicAddress;

    /** @param publicAddress of the server, by the port that it was asked at */
    public AskDayHandler(Desk desk, Pages pages, Letterhead letterhead, IntFunction<String> publicAddress) {
        this.desk = desk;
        this.pages = pages;
        this.letterhead = letterhead;
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
        pages.send(response, 200, "desk/days/asked", asked(history, work, until, address(request), secret));
    }

    /** What stands before the secret. */
    private String address(ServerRequest request) {
        return publicAddress.apply(request.localPeer().port()) + DayLinks.PICK;
    }

    /** The shop's own server sends the address to the customer, once. What is kept of the e-mail has no secret. */
    public void send(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        var id = typed.identity("mail");
        var secret = typed.get("secret");
        var asking = desk.book()
                .dayWishes()
                .findBySecret(Secret.hash(secret))
                .orElseThrow(() -> new PageException(404, new DeskSaid.FormNotUnderstood()));
        var history = desk.getHistory(asking.car().id());
        try {
            var mailer = ShopMailer.find(desk, letterhead.shopName());
            var text = text(history, asking.work(), address(request) + secret);
            var mail = mayMail(history.customer())
                    .map(to -> new Mail(id, to, asking.language(), text.subject(), text.body(), text.stopWord()));
            if (mailer.isEmpty() || mail.isEmpty()) {
                throw new PageException(409, new DaysSaid.NoMailToCustomer());
            }
            var kept = new Letter(
                    id,
                    history.customer().id(),
                    mail.get().address(),
                    asking.language(),
                    text.subject(),
                    text(history, asking.work(), address(request) + "…").body(),
                    List.of());
            if (desk.book().mails().begin(kept, Objects.requireNonNullElse(typed.person(), ""), desk.now())) {
                desk.book().mails().end(id, mailer.get().send(mail.get(), desk.now()), desk.now());
            }
            Pages.redirect(response, CustomerLinks.sentMail());
        } catch (Refused e) {
            throw new PageException(409, Saying.of(e));
        }
    }

    /** An e-mail in the customer's language. */
    private record Written(String subject, String body, String stopWord) {}

    private Written text(CarHistory history, PlannedWork work, String address) {
        var labels = desk.customerReader(history).labels("app/desk/days");
        var car = history.vehicle().name();
        var stopWord = labels.of("pick-stop-word");
        return new Written(
                labels.of("pick-title", "car", car),
                labels.of(
                        "pick-mail",
                        "name",
                        history.customer().name(),
                        "message",
                        labels.of("pick-message", "car", car, "work", work, "address", address),
                        "telephone",
                        letterhead.telephone().isBlank() ? null : letterhead.telephone(),
                        "shop",
                        letterhead.shopName().isBlank() ? null : letterhead.shopName(),
                        "stop",
                        stopWord),
                stopWord);
    }

    /** The address of a customer who may be written to about the season. */
    private Optional<String> mayMail(Customer customer) {
        return Optional.ofNullable(customer.email())
                .filter(to -> desk.reach().permits(customer.id(), Purpose.SEASON, Channel.E_MAIL));
    }

    private AskedPage asked(CarHistory history, PlannedWork work, LocalDate until, String before, String secret) {
        var address = before + secret;
        var customer = history.customer();
        var car = history.vehicle().name();
        var labels = desk.customerReader(history).labels("app/desk/days");
        var text = labels.of("pick-message", "car", car, "work", work, "address", address);
        var reach = desk.reach();
        var phone = customer.phone();
        var email = mayMail(customer).orElse(null);
        return new AskedPage(
                AppointmentHandler.carOf(history),
                work,
                until,
                address,
                phone != null && reach.permits(customer.id(), Purpose.SEASON, Channel.MESSAGE)
                        ? CallLinks.message(phone, text)
                        : null,
                email == null ? null : CallLinks.mail(email, labels.of("pick-title", "car", car), text),
                email == null || desk.book().mails().findServer().isEmpty() ? null : secret);
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
                    response, typed.get("answer").equals("BOOK") && day != null ? DayLinks.days(day) : DayLinks.days());
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
