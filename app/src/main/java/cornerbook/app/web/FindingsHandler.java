package cornerbook.app.web;

import cornerbook.app.book.Departure;
import cornerbook.app.handover.HandoverSheet;
import cornerbook.core.visit.Assessment;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.List;

/** The findings of one visit, as a page and as the hand-over sheet. */
final class FindingsHandler {
    private final Desk desk;
    private final Pages pages;
    private final String shopName;

    FindingsHandler(Desk desk, Pages pages, String shopName) {
        this.desk = desk;
        this.pages = pages;
        this.shopName = shopName;
    }

    void show(ServerRequest request, ServerResponse response) {
        pages.send(response, 200, "findings", new FindingsPage(assess(request)));
    }

    void sendSheet(ServerRequest request, ServerResponse response) {
        var assessment = assess(request);
        var leftOpen = desk.book()
                .bay()
                .findDeparture(assessment.visit().id())
                .map(Departure::leftOpen)
                .orElse(List.of());
        Pages.sendPdf(
                response,
                "handover-" + assessment.visit().date(),
                HandoverSheet.render(assessment, shopName, desk.now(), leftOpen));
    }

    private Assessment assess(ServerRequest request) {
        var visitId = Pages.pathValue(request, "id");
        return desk.assessor().assess(desk.getHistoryOfVisit(visitId), visitId);
    }
}
