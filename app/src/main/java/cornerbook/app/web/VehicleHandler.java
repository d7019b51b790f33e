package cornerbook.app.web;

import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;

/** The page of one car. */
final class VehicleHandler {
    private final Desk desk;
    private final Pages pages;

    VehicleHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    void show(ServerRequest request, ServerResponse response) {
        var history = desk.getHistory(Pages.pathValue(request, "id"));
        pages.send(
                response,
                200,
                "vehicle",
                new VehiclePage(history, desk.assessLatest(history).orElse(null)));
    }
}
