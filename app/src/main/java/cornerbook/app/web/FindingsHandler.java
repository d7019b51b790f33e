package cornerbook.app.web;

import cornerbook.core.visit.Assessment;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.Instant;
import java.util.function.BiFunction;

/** The findings of one visit, as a page and as the hand-over sheet. */
final class FindingsHandler {
    private final Desk desk;
    private final Pages pages;
    private final BiFunction<Assessment, Instant, byte[]> sheet;

    FindingsHandler(Desk desk, Pages pages, BiFunction<Assessment, Instant, byte[]> sheet) {
        this.desk = desk;
        this.pages = pages;
        this.sheet = sheet;
    }

    void show(ServerRequest request, ServerResponse response) {
        var assessment = assess(request);
        var seizing =
                desk.assessor().seizing(assessment.history(), assessment.visit().id());
        pages.send(response, 200, "findings", new FindingsPage(assessment, seizing));
    }

    void sendSheet(ServerRequest request, ServerResponse response) {
        var assessment = assess(request);
        Pages.sendPdf(response, "handover-" + assessment.visit().date(), sheet.apply(assessment, desk.now()));
    }

    private Assessment assess(ServerRequest request) {
        var visitId = Pages.pathValue(request, "id");
        return desk.assessor().assess(desk.getHistoryOfVisit(visitId), visitId);
    }
}
