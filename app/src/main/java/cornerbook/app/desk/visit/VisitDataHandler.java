package cornerbook.app.desk.visit;

import cornerbook.app.book.bay.Misplaced;
import cornerbook.app.book.people.TabletAtWork;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.visit.Because;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.OpenVisit;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.app.request.Caller;
import cornerbook.app.request.PageException;
import cornerbook.core.corner.Corner;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Saying;
import cornerbook.core.season.judge.OdometerRange;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Puts right what the book has of a visit beside its readings. Nothing is judged here, so that a car that cannot be is put right
 * too.
 */
public final class VisitDataHandler {
    private final Desk desk;
    private final Pages pages;

    public VisitDataHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        var open = desk.getOpenVisit(Pages.pathValue(request, "id"));
        send(response, 200, open, VisitForm.fields(open.visit()), "", AskedOdometer.NONE);
    }

    public void save(ServerRequest request, ServerResponse response) {
        var open = desk.getOpenVisit(Pages.pathValue(request, "id"));
        var typed = Form.read(request);
        var form = new VisitForm(open.visit(), typed);
        var error = "";
        var asked = AskedOdometer.NONE;
        try {
            var seen = form.seen();
            var after = form.after(desk.today());
            var doubt = AskedOdometer.of(OdometerRange.of(open.history(), after), after.odometerKm(), typed);
            if (doubt.isEmpty() || after.odometerKm() == seen.odometerKm()) {
                desk.book().visits().putRight(seen, after, because(typed));
                desk.learning().learnSoon();
                Pages.redirect(response, VisitLinks.visit(after.id()));
                return;
            }
            asked = doubt.get();
        } catch (BookException | IllegalArgumentException e) {
            error = Typed.sentence(e);
        }
        var shown = new HashMap<>(VisitForm.fields(open.visit()));
        shown.putAll(typed.fields());
        shown.put("odometer", asked.asks() ? "" : AskedOdometer.of(typed));
        send(response, 422, open, shown, error, asked);
    }

    /** What was entered at the wrong corner or the wrong car. */
    public void move(ServerRequest request, ServerResponse response) {
        var open = desk.getOpenVisit(Pages.pathValue(request, "id"));
        var typed = Form.read(request);
        var to = typed.get("to").isEmpty() ? open.visit().id() : typed.get("to");
        var corner = typed.choice("corner", List.of(Corner.values())).orElse(null);
        try {
            desk.book()
                    .misplaced()
                    .move(
                            open.visit().id(),
                            VisitDataPage.chosen(open.visit(), VisitDataPage.Movable.of(desk.book(), open), typed),
                            new Misplaced.Goal(to, corner, typed.has("instead")),
                            because(typed),
                            desk.now());
            desk.learning().learnSoon();
            Pages.redirect(response, VisitLinks.visit(to));
        } catch (BookException | IllegalArgumentException e) {
            var shown = new HashMap<>(VisitForm.fields(open.visit()));
            shown.putAll(typed.fields());
            send(response, 422, open, shown, Typed.sentence(e), AskedOdometer.NONE);
        }
    }

    /** A visit that was opened by mistake. */
    public void cancel(ServerRequest request, ServerResponse response) {
        var open = desk.getOpenVisit(Pages.pathValue(request, "id"));
        var typed = Form.read(request);
        try {
            desk.book().visits().cancel(open.visit().id(), because(typed));
            desk.learning().learnSoon();
            Pages.redirect(response, CarLinks.car(open.history().vehicle().id()));
        } catch (BookException | IllegalArgumentException e) {
            var shown = new HashMap<>(VisitForm.fields(open.visit()));
            shown.putAll(typed.fields());
            send(response, 422, open, shown, Typed.sentence(e), AskedOdometer.NONE);
        }
    }

    /** It was cancelled by mistake. */
    public void restore(ServerRequest request, ServerResponse response) {
        var visitId = Pages.pathValue(request, "id");
        try {
            desk.book().visits().restore(visitId, because(Form.read(request)));
            desk.learning().learnSoon();
            Pages.redirect(response, VisitLinks.visit(visitId));
        } catch (BookException | IllegalArgumentException e) {
            throw new PageException(422, Saying.of(e));
        }
    }

    private Because because(Form typed) {
        var person = person();
        if (person == null && typed.get("person").isEmpty()) {
            throw new Refused(new VisitSaid.NameMissing());
        }
        return new Because(null, typed.get("reason"), person == null ? typed.get("person") : person, desk.today());
    }

    /** Who works on the tablet that asks; null at this machine, where nobody is known. */
    static @Nullable String person() {
        return Caller.current().tablet().map(TabletAtWork::person).orElse(null);
    }

    private void send(
            ServerResponse response,
            int status,
            OpenVisit open,
            Map<String, String> fields,
            String error,
            AskedOdometer asked) {
        pages.send(
                response,
                status,
                "desk/visit/visit-data",
                new VisitDataPage(
                        open.history(),
                        open.visit(),
                        fields,
                        person(),
                        error,
                        asked,
                        VisitDataPage.changes(desk.book(), open),
                        VisitDataPage.Movable.of(desk.book(), open)));
    }
}
