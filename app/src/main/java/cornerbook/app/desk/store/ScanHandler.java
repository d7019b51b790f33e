package cornerbook.app.desk.store;

import cornerbook.app.book.rack.KeptSet;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.visit.VisitSummary;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.link.StoreLinks;
import cornerbook.app.request.PageException;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Sets in and out by scan: a wheel, then the place where its set is laid; or wheels that are fetched for the car of a visit. */
public final class ScanHandler {
    private static final int REFUSED = 409;

    private final Desk desk;
    private final Pages pages;

    public ScanHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        send(response, 200, Form.ofQuery(request), "");
    }

    private void send(ServerResponse response, int status, Form asked, String error) {
        var visits = new ArrayList<>(desk.book().visits().list(desk.today()));
        var visit = visit(asked.get("visit"), visits);
        var hand = set(asked.get("tag"));
        var shelves = visit == null && hand == null ? Shelves.withoutSets(desk) : Shelves.of(desk);
        var place = shelves.map().find(asked.get("place")).orElse(null);
        pages.send(
                response,
                status,
                "desk/store/scan",
                new ScanPage(
                        shelves,
                        visits,
                        visit,
                        hand,
                        set(asked.get("was")),
                        place,
                        place == null ? List.of() : desk.book().stock().listLyingAt(place),
                        error));
    }

    private @Nullable KeptSet set(String tag) {
        return tag.isEmpty() ? null : desk.book().stock().find(tag).orElse(null);
    }

    /** Of today, or of another day where its page led here. */
    private @Nullable VisitSummary visit(String visitId, List<VisitSummary> today) {
        if (visitId.isEmpty()) {
            return null;
        }
        return today.stream()
                .filter(each -> each.visitId().equals(visitId))
                .findFirst()
                .or(() -> desk.book().visits().list(desk.getVisit(visitId).date()).stream()
                        .filter(each -> each.visitId().equals(visitId))
                        .findFirst())
                .orElse(null);
    }

    /** What was scanned or typed, or a button that stands for it. */
    public void scan(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        String next;
        try {
            next = next(typed);
        } catch (BookException e) {
            send(response, REFUSED, typed, Typed.sentence(e));
            return;
        } catch (PageException e) {
            if (e.status() != REFUSED) {
                throw e;
            }
            send(response, REFUSED, typed, Typed.sentence(e));
            return;
        }
        Pages.redirect(response, next);
    }

    private String next(Form typed) {
        var code = typed.get("code");
        var tag = typed.get("tag");
        var by = StoreHandler.by(typed, desk);
        var stock = desk.book().stock();
        if (typed.has("hand-out")) {
            stock.handOut(typed.identity("id"), tag, by, desk.today());
            return StoreLinks.scanned(tag, "");
        }
        var wheel = Codes.findTag(desk, code);
        var place = desk.book().racks().map().find(code);
        if (!typed.get("visit").isEmpty()) {
            if (wheel.isEmpty() && place.isPresent()) {
                throw new PageException(REFUSED, new StoreSaid.PlaceNotWheel(code));
            }
            stock.takeToCar(typed.identity("id"), known(wheel, code), typed.get("visit"), by, desk.today());
            return StoreLinks.scanned(known(wheel, code), typed.get("visit"));
        }
        if (!tag.isEmpty() && place.isPresent()) {
            stock.put(typed.identity("id"), tag, code, by, desk.today());
            return StoreLinks.scanned(tag, "");
        }
        if (wheel.isPresent()) {
            return StoreLinks.scanOf(wheel.get());
        }
        return StoreLinks.scanAt(place.orElseThrow(() -> unknown(code)).name());
    }

    private static String known(Optional<String> wheel, String code) {
        return wheel.orElseThrow(() -> unknown(code));
    }

    private static PageException unknown(String code) {
        return new PageException(REFUSED, new StoreSaid.UnknownCode(code));
    }
}
