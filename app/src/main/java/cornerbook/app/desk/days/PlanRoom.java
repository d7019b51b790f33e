package cornerbook.app.desk.days;

import cornerbook.app.book.Book;
import cornerbook.app.book.appointment.Appointment.Because;
import cornerbook.app.book.appointment.Plan;
import cornerbook.app.book.appointment.PlannedTurn;
import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Room;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.link.DayLinks;
import cornerbook.app.request.Told;
import cornerbook.core.days.WorkHours;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import io.helidon.webserver.http.HttpRouting;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.ZonedDateTime;
import java.util.HashMap;
import java.util.Objects;

/** The page on which a plan of the coming days is proposed, looked at and accepted. Before that nothing is stored. */
public final class PlanRoom implements Room {
    private final PlanWork work;

    public PlanRoom(Book book) {
        work = new PlanWork(book);
    }

    @Override
    public void open(HttpRouting.Builder routing, Desk desk, Pages pages) {
        routing.get(DayLinks.dayPlan(), (request, response) -> send(desk, pages, response, 200, asked(request), ""))
                .post(DayLinks.dayPlan(), (request, response) -> begin(desk, pages, request, response))
                .post(DayLinks.dayPlan() + "/stop", (request, response) -> {
                    work.stop();
                    Pages.redirect(response, DayLinks.dayPlan());
                })
                .post(DayLinks.dayPlan() + "/accept", (request, response) -> accept(desk, pages, request, response));
    }

    private void begin(Desk desk, Pages pages, ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        try {
            work.begin(PlanAsked.read(typed), now(desk));
            Pages.redirect(response, DayLinks.dayPlan());
        } catch (Refused e) {
            send(desk, pages, response, 422, typed, Typed.sentence(e));
        }
    }

    private void accept(Desk desk, Pages pages, ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        try {
            if (!(work.state() instanceof PlanState.Proposed proposed)) {
                throw new BookException(new DaysSaid.NothingProposed());
            }
            refuseOld(desk, proposed);
            var changes = proposed.changes().stream()
                    .map(row -> turn(row, typed, desk))
                    .toList();
            desk.book().appointments().accept(changes, desk.today());
            work.accepted(changes.size());
            Pages.redirect(response, DayLinks.dayPlan());
        } catch (BookException e) {
            if (e.isFailure()) {
                throw e;
            }
            send(desk, pages, response, 409, asTyped(), Typed.sentence(e));
        }
    }

    /**
     * A plan of today begins at its minute, so it is held against what the book has as of then, and counts for as long as nobody would
     * be told another time for it.
     */
    private static void refuseOld(Desk desk, PlanState.Proposed proposed) {
        var made = proposed.from().now();
        if (proposed.isOver(now(desk))) {
            throw new BookException(new DaysSaid.TodayWentOn(
                    WorkHours.clock(CarsHere.moment(made).minute())));
        }
        if (!DayPlanner.gather(desk.book(), proposed.asked(), proposed.asked().withToday() ? made : now(desk))
                .isSame(proposed.from())) {
            throw new BookException(new DaysSaid.DaysHaveChanged());
        }
    }

    private static ZonedDateTime now(Desk desk) {
        return ZonedDateTime.now(desk.clock());
    }

    private static PlannedTurn turn(PlanRow row, Form typed, Desk desk) {
        var plan = Objects.requireNonNull(row.after());
        boolean isNew = row.turn() == PlannedTurn.NEW;
        var note = isNew
                ? Told.labels("app/desk/days")
                        .of("still-to-agree", "beside", row.beside().isEmpty() ? null : Listed.commas(row.beside()))
                : plan.note();
        return new PlannedTurn(
                row.entryId(),
                row.id(),
                row.turn(),
                row.car().carId(),
                new Plan(plan.day(), plan.time(), plan.work(), plan.minutes(), plan.hoist(), plan.worker(), note),
                new Because(say(row.why()), typed.person(), desk.now()));
    }

    private static String say(Said why) {
        return Told.reader().say(why);
    }

    /** The page of today asks for what is left of it. */
    private Form asked(ServerRequest request) {
        var typed = asTyped();
        if (!Form.ofQuery(request).has("today")) {
            return typed;
        }
        var fields = new HashMap<String, String>();
        fields.put("weeks", "0");
        fields.put("free", typed.get("free"));
        fields.put("today", "1");
        return new Form(fields);
    }

    /** What was asked for last stands in the form again. */
    private Form asTyped() {
        var state = work.state();
        var asked = PlanAsked.USUAL;
        if (state instanceof PlanState.Searching searching) {
            asked = searching.asked();
        } else if (state instanceof PlanState.Proposed proposed) {
            asked = proposed.asked();
        }
        var fields = new HashMap<String, String>();
        fields.put("weeks", String.valueOf(asked.weeks()));
        fields.put("free", String.valueOf(asked.freePercent()));
        if (asked.withDue()) {
            fields.put("due", "1");
        }
        if (asked.withToday()) {
            fields.put("today", "1");
        }
        return new Form(fields);
    }

    private void send(Desk desk, Pages pages, ServerResponse response, int status, Form typed, String error) {
        var hasHours = !desk.book().hours().list().isEmpty();
        pages.send(
                response,
                status,
                "desk/days/plan",
                new PlanPage(desk.today(), work.state(), hasHours, desk.reach(), typed, error));
    }

    @Override
    public void unpaired(String deviceId) {
        // Tablets have no such page.
    }

    @Override
    public void close() {
        work.close();
    }
}
