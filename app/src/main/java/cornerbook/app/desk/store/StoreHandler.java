package cornerbook.app.desk.store;

import cornerbook.app.book.rack.By;
import cornerbook.app.book.rack.KeptRack;
import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.LabelFields;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.link.StoreLinks;
import cornerbook.app.request.PageException;
import cornerbook.app.request.Told;
import cornerbook.app.sheet.label.PlaceLabels;
import cornerbook.core.say.Refused;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.Objects;
import java.util.Optional;

/** Shows the store, and names and takes down its racks. */
public final class StoreHandler {
    private static final int UNFIT = 422;
    private static final int REFUSED = 409;

    private final Desk desk;
    private final Pages pages;

    public StoreHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        send(response, 200, RackForm.fresh());
    }

    private void send(ServerResponse response, int status, RackForm form) {
        pages.send(response, status, "desk/store/store", StorePage.of(desk, form));
    }

    /** One rack. */
    public void showRack(ServerRequest request, ServerResponse response) {
        var kept = find(Pages.queryValue(request, "rack"))
                .orElseThrow(() -> new PageException(404, new StoreSaid.NoRack()));
        sendRack(response, 200, kept, RackForm.of(kept));
    }

    private Optional<KeptRack> find(String rackId) {
        return desk.book().racks().list().stream()
                .filter(each -> each.id().equals(rackId))
                .findFirst();
    }

    private void sendRack(ServerResponse response, int status, KeptRack kept, RackForm form) {
        pages.send(response, status, "desk/store/shelf", new RackPage(Shelves.of(desk), kept, form));
    }

    /** Labels of all places of a rack, or of the whole store. */
    public void sendLabels(ServerRequest request, ServerResponse response) {
        var asked = Form.ofQuery(request);
        var places = desk.book().racks().list().stream()
                .filter(each -> asked.get("rack").isEmpty() || each.id().equals(asked.get("rack")))
                .flatMap(each -> each.rack().places().stream())
                .toList();
        if (places.isEmpty()) {
            throw new PageException(404, new StoreSaid.NoPlaces());
        }
        Pages.sendPdf(response, "place-labels", PlaceLabels.render(places, LabelFields.place(asked), Told.reader()));
    }

    /** A rack is named, or named and placed otherwise. */
    public void save(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        change(typed, response, () -> {
            var rack = RackForm.rack(typed);
            if (typed.get("rack").isEmpty()) {
                desk.book().racks().name(typed.identity("id"), rack, by(typed, desk));
            } else {
                desk.book().racks().change(typed.identity("id"), typed.get("rack"), turn(typed), rack, by(typed, desk));
            }
        });
    }

    public void takeDown(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        change(
                typed,
                response,
                () -> desk.book()
                        .racks()
                        .takeDown(typed.identity("id"), typed.get("rack"), turn(typed), by(typed, desk)));
    }

    private void change(Form typed, ServerResponse response, Runnable work) {
        try {
            work.run();
        } catch (BookException e) {
            refuse(response, REFUSED, typed, e);
            return;
        } catch (Refused e) {
            refuse(response, UNFIT, typed, e);
            return;
        }
        Pages.redirect(response, StoreLinks.store());
    }

    private void refuse(ServerResponse response, int status, Form typed, RuntimeException refusal) {
        var form = new RackForm(typed.get("rack"), typed.get("turn"), typed, Typed.sentence(refusal));
        find(form.id())
                .ifPresentOrElse(kept -> sendRack(response, status, kept, form), () -> send(response, status, form));
    }

    /** What is no number is no turn that anybody saw. */
    private static int turn(Form typed) {
        return typed.get("turn").matches("\\d{1,6}") ? Integer.parseInt(typed.get("turn")) : -1;
    }

    /** Who did it: who works at the tablet, else who was named, else nobody. */
    static By by(Form typed, Desk desk) {
        return new By(Objects.requireNonNullElse(typed.person(), ""), desk.now());
    }
}
