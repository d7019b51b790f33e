package cornerbook.app.web;

import cornerbook.app.handover.WheelTags;
import cornerbook.app.handover.WheelTags.Paper;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;

/** The wheel plan of one visit, as a page and as tags for the wheels. */
final class PlanHandler {
    private final Desk desk;
    private final Pages pages;

    PlanHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    void show(ServerRequest request, ServerResponse response) {
        var visitId = Pages.pathValue(request, "id");
        var history = desk.getHistoryOfVisit(visitId);
        var without = Links.rules(Pages.queryValue(request, "without"));
        var planned = desk.assessor().planWithout(history, visitId, without);
        pages.send(
                response,
                200,
                "plan",
                new PlanPage(
                        history,
                        history.getVisit(visitId),
                        planned.map(PlannedSet::new).orElse(null)));
    }

    void sendTags(ServerRequest request, ServerResponse response) {
        var visitId = Pages.pathValue(request, "id");
        var history = desk.getHistoryOfVisit(visitId);
        var goingOn = desk.assessor().plan(history, visitId);
        var stored = desk.assessor().planStored(history, visitId);
        if (goingOn.isEmpty() && stored.isEmpty()) {
            throw new PageException(404, "There is no wheel plan for this visit, so there are no wheel tags.");
        }
        var visit = history.getVisit(visitId);
        var paper = Pages.queryValue(request, "paper").equals("a4") ? Paper.A4 : Paper.ROLL;
        Pages.sendPdf(response, "wheel-tags-" + visit.date(), WheelTags.render(history, visit, goingOn, stored, paper));
    }
}
