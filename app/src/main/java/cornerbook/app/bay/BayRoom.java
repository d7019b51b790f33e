package cornerbook.app.bay;

import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Room;
import cornerbook.app.desk.link.MoneyLinks;
import io.helidon.http.Method;
import io.helidon.webserver.http.HttpRouting;
import io.helidon.webserver.http.RoutingRequest;
import io.helidon.webserver.http.RoutingResponse;
import java.util.regex.Pattern;

/** The addresses of the bay sheet. */
public final class BayRoom implements Room {
    /** Also where a customer answers without pairing. */
    private static final Pattern DESK_VISIT = Pattern.compile("(?:" + MoneyLinks.AGREE + "[^/]+)?/visits/([^/]+)");

    private final Watch watch = new Watch();

    @Override
    public void open(HttpRouting.Builder routing, Desk desk, Pages pages) {
        var handler = new BayHandler(desk, pages, watch);
        var photos = new PhotoHandler(desk, watch);
        var shelf = new ShelfHandler(desk);
        routing.addFilter((chain, request, response) -> {
                    chain.proceed();
                    tellOfTheDesk(request, response);
                })
                .get("/bay/visits", handler::showShell)
                .get("/bay/worker.mjs", pages::sendWorker)
                .get("/bay/shell", handler::showShell)
                .get("/bay/today.json", handler::sendToday)
                .get("/bay/me.json", handler::sendMe)
                .get("/bay/visits/{id}", handler::showSheet)
                .get("/bay/visits/{id}/sheet.json", handler::sendSheet)
                .get("/bay/visits/{id}/state.json", handler::sendState)
                .get("/bay/visits/{id}/events", handler::sendEvents)
                .get("/bay/visits/{id}/shelf.json", shelf::show)
                .post("/bay/visits/{id}/shelf", shelf::put)
                .get("/bay/photos/{photo}", photos::show)
                .put("/bay/visits/{id}/photos/{photo}", photos::take)
                .post("/bay/visits/{id}/entries", handler::takeEntries)
                .post("/visits/{id}/state", handler::sayState);
    }

    /** What is written or put right at the desk, open sheets see at once. */
    private void tellOfTheDesk(RoutingRequest request, RoutingResponse response) {
        var path = DESK_VISIT.matcher(request.path().path());
        if (Method.POST.equals(request.prologue().method()) && response.status().code() < 400 && path.lookingAt()) {
            watch.tell(path.group(1));
        }
    }

    @Override
    public void unpaired(String deviceId) {
        watch.endOf(deviceId);
    }

    @Override
    public void close() {
        watch.close();
    }
}
