package cornerbook.app.desk.days;

import cornerbook.app.book.appointment.DayAsking;
import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.core.say.Saying;
import cornerbook.words.Reader;
import io.helidon.webserver.http.ServerResponse;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;

/** Lets a customer pick a day and a time from what is free, or ask to be called. */
public final class Picking {
    private static final int UNFIT = 422;

    private final Desk desk;
    private final Pages pages;
    private final String shop;

    /** @param shop name on top of the page */
    public Picking(Desk desk, Pages pages, String shop) {
        this.desk = desk;
        this.pages = pages;
        this.shop = shop;
    }

    public void show(ServerResponse response, DayAsking asking, String action) {
        send(response, 200, asking, action, "");
    }

    /** One customer after the other, so that no two are given the same. */
    public synchronized void take(ServerResponse response, DayAsking asking, String action, Form typed) {
        try {
            var id = typed.identity("id");
            if (typed.get("pick").equals("call")) {
                desk.book().dayWishes().wish(id, asking, null, null, desk.now());
            } else {
                var picked = picked(typed.get("pick"));
                if (offers(asking).stream()
                        .filter(offered -> offered.day().equals(picked.toLocalDate()))
                        .flatMap(offered -> offered.openings().stream())
                        .noneMatch(opening -> DayFacts.timeOf(opening.start()).equals(picked.toLocalTime()))) {
                    throw new BookException(new DaysSaid.NotFree());
                }
                desk.book().dayWishes().wish(id, asking, picked.toLocalDate(), picked.toLocalTime(), desk.now());
            }
            send(response, 200, asking, action, "");
        } catch (BookException e) {
            if (e.isFailure()) {
                throw e;
            }
            send(response, UNFIT, asking, action, Typed.sentence(reader(asking).say(Saying.of(e))));
        }
    }

    private static LocalDateTime picked(String text) {
        try {
            return LocalDateTime.parse(text);
        } catch (DateTimeParseException e) {
            throw new BookException(new DaysSaid.NotFree());
        }
    }

    private List<DayOffers.OfferedDay> offers(DayAsking asking) {
        var today = desk.today();
        if (asking.until().isBefore(today)) {
            return List.of();
        }
        return DayOffers.of(desk.book(), desk.localNow(), latest(today, asking.until()), asking.id())
                .later(asking);
    }

    private static LocalDate latest(LocalDate today, LocalDate until) {
        return until.isBefore(today) ? today : until;
    }

    /** In the customer's language where the book has it; else in that of the browser, for whoever asked may speak another. */
    private Reader reader(DayAsking asking) {
        return desk.customerReader(desk.getHistory(asking.car().id()));
    }

    private void send(ServerResponse response, int status, DayAsking asking, String action, String error) {
        var wish = desk.book().dayWishes().findWish(asking.id()).orElse(null);
        pages.send(
                response,
                status,
                "desk/days/pick",
                new PickPage(
                        action,
                        asking,
                        wish,
                        wish != null && wish.answered() ? List.of() : offers(asking),
                        reader(asking),
                        shop,
                        error));
    }
}
