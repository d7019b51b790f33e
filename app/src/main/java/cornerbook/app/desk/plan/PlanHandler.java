package cornerbook.app.desk.plan;

import cornerbook.app.desk.Desk;
import cornerbook.app.desk.FreePlaces;
import cornerbook.app.desk.OpenVisit;
import cornerbook.app.desk.Pages;
import cornerbook.app.request.Told;
import cornerbook.app.sheet.label.StorePlace;
import cornerbook.app.sheet.label.WheelTags;
import cornerbook.app.sheet.label.WheelTags.Paper;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The wheel plan of one visit, as a page and as tags for the wheels. */
public final class PlanHandler {
    private final Desk desk;
    private final Pages pages;

    public PlanHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        var visitId = Pages.pathValue(request, "id");
        var open = desk.getOpenVisit(visitId);
        var without = PlanRules.rules(Pages.queryValue(request, "without"));
        pages.sendJudged(response, open.unjudged(), () -> {
            var planned = desk.assessor().planWithout(open.history(), visitId, without);
            return new Pages.View(
                    200,
                    "desk/plan/plan",
                    new PlanPage(
                            open.history(),
                            open.visit(),
                            planned.map(PlannedSet::new).orElse(null)));
        });
    }

    public void sendTags(ServerRequest request, ServerResponse response) {
        var visitId = Pages.pathValue(request, "id");
        var open = desk.getOpenVisit(visitId);
        var paper = Pages.queryValue(request, "paper").equals("a4") ? Paper.A4 : Paper.ROLL;
        pages.sendJudgedPdf(
                response,
                open.unjudged(),
                "wheel-tags-" + open.visit().date(),
                () -> tags(open, paper),
                Told.labels("app/desk/plan").of("no-tags"));
    }

    /** Where the sets of the car lie or are to be laid. */
    private Map<String, StorePlace> places(OpenVisit open) {
        var car = open.history().vehicle().id();
        return FreePlaces.of(desk).forLabels(set -> set.key().vehicleId().equals(car)).entrySet().stream()
                .collect(Collectors.toMap(each -> each.getKey().setId(), Map.Entry::getValue));
    }

    private Optional<byte[]> tags(OpenVisit open, Paper paper) {
        var visit = open.visit();
        var goingOn = desk.assessor().plan(open.history(), visit.id());
        var stored = desk.assessor().planStored(open.history(), visit.id());
        return goingOn.isEmpty() && stored.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        WheelTags.render(open.history(), visit, goingOn, stored, places(open), paper, Told.reader()));
    }
}
