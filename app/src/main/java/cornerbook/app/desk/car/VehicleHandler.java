package cornerbook.app.desk.car;

import cornerbook.app.book.people.TabletAtWork;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Pages;
import cornerbook.app.request.Caller;
import cornerbook.core.assess.Assessment;
import cornerbook.core.car.CarHistory;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import org.jspecify.annotations.Nullable;

/** The page of one car. */
public final class VehicleHandler {
    private final Desk desk;
    private final Pages pages;

    public VehicleHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        var history = desk.getHistory(Pages.pathValue(request, "id"));
        pages.sendJudged(
                response,
                "car " + history.vehicle().id(),
                () -> view(history, desk.assessLatest(history).orElse(null), null),
                faultId -> view(history, null, faultId));
    }

    private Pages.View view(CarHistory history, @Nullable Assessment assessment, @Nullable String faultId) {
        return new Pages.View(
                200,
                "desk/car/vehicle",
                new VehiclePage(
                        history,
                        desk.book().visits().listCancelled(history.vehicle().id()),
                        desk.book().appointments().listOf(history.vehicle().id()),
                        Caller.current().tablet().map(TabletAtWork::person).orElse(null),
                        assessment,
                        faultId));
    }
}
