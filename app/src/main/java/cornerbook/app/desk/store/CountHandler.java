package cornerbook.app.desk.store;

import cornerbook.app.book.rack.CountLedger;
import cornerbook.app.book.rack.StockCount;
import cornerbook.app.book.rack.StockDifference.Answer;
import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.DeskSaid;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.link.StoreLinks;
import cornerbook.app.request.PageException;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.List;
import java.util.function.Supplier;

/** The store is counted by scanning: a place, then what lies there; what is otherwise than in the book is settled by a tap. */
public final class CountHandler {
    private static final int REFUSED = 409;

    private final Desk desk;
    private final Pages pages;

    public CountHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        var asked = Form.ofQuery(request);
        send(response, 200, asked.get("count"), asked.get("place"), "");
    }

    private void send(ServerResponse response, int status, String countId, String place, String error) {
        var counts = counts().list();
        var count = counts.stream()
                .filter(each ->
                        countId.isEmpty() ? each.ended() == null : each.id().equals(countId))
                .findFirst();
        if (count.isEmpty() && !countId.isEmpty() && status == 200) {
            throw new PageException(404, new StoreSaid.NoCount());
        }
        var id = count.map(StockCount::id);
        var shelves = Shelves.of(desk);
        pages.send(
                response,
                status,
                "desk/store/count",
                new CountPage(
                        shelves,
                        counts,
                        count.orElse(null),
                        shelves.map().find(place).map(each -> each.name()).orElse(""),
                        id.map(counts()::listScans).orElse(List.of()),
                        id.map(counts()::listDifferences).orElse(List.of()),
                        error));
    }

    private CountLedger counts() {
        return desk.book().counts();
    }

    public void begin(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        change(typed, response, () -> {
            counts().begin(typed.identity("id"), StoreHandler.by(typed, desk));
            return StoreLinks.count(typed.identity("id"), "");
        });
    }

    /** A place, after which what lies there is scanned; or a wheel. */
    public void scan(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        change(typed, response, () -> {
            var code = typed.get("code");
            var countId = typed.get("count");
            var by = StoreHandler.by(typed, desk);
            var tag = Codes.findTag(desk, code);
            var place = desk.book().racks().map().find(code);
            if (tag.isEmpty() && place.isPresent()) {
                counts().scan(typed.identity("id"), countId, code, "", by);
                return StoreLinks.count(countId, place.get().name());
            }
            if (typed.get("place").isEmpty() || code.isEmpty()) {
                throw new PageException(REFUSED, new StoreSaid.PlaceFirst());
            }
            counts().scan(typed.identity("id"), countId, typed.get("place"), tag.orElse(code), by);
            return StoreLinks.count(countId, typed.get("place"));
        });
    }

    public void end(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        change(typed, response, () -> {
            counts().end(typed.get("count"), StoreHandler.by(typed, desk));
            return StoreLinks.count(typed.get("count"), "");
        });
    }

    /** What is done about a difference. */
    public void answer(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        var answer = typed.choice("answer", List.of(Answer.values()))
                .orElseThrow(() -> new PageException(400, new DeskSaid.FormNotUnderstood()));
        change(typed, response, () -> {
            counts().answer(
                            typed.identity("id"),
                            typed.get("difference"),
                            answer,
                            StoreHandler.by(typed, desk),
                            desk.today());
            return StoreLinks.count(typed.get("count"), "");
        });
    }

    private void change(Form typed, ServerResponse response, Supplier<String> work) {
        String next;
        try {
            next = work.get();
        } catch (BookException e) {
            send(response, REFUSED, typed.get("count"), typed.get("place"), Typed.sentence(e));
            return;
        } catch (PageException e) {
            if (e.status() != REFUSED) {
                throw e;
            }
            send(response, REFUSED, typed.get("count"), typed.get("place"), Typed.sentence(e));
            return;
        }
        Pages.redirect(response, next);
    }
}
