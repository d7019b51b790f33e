package cornerbook.app.web;

import cornerbook.app.book.BookException;
import cornerbook.app.handover.HandoverSheet;
import cornerbook.core.visit.Assessment;
import cornerbook.core.visit.Subject;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;

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
        pages.send(response, 200, "findings", page(assess(request)));
    }

    void sendSheet(ServerRequest request, ServerResponse response) {
        var assessment = assess(request);
        Pages.sendPdf(
                response,
                "handover-" + assessment.visit().date(),
                HandoverSheet.render(
                        assessment,
                        shopName,
                        desk.now(),
                        desk.book().notes(assessment.visit().id()),
                        UnitChoice.current()));
    }

    /** What a photo belongs to, and whether the sheet shows it. */
    void choosePhoto(ServerRequest request, ServerResponse response) {
        var visitId = Pages.pathValue(request, "id");
        desk.getVisit(visitId);
        var form = Form.read(request);
        try {
            var part = form.get("part").isEmpty() ? null : Subject.Part.valueOf(form.get("part"));
            desk.book().photos().choose(visitId, Pages.pathValue(request, "photo"), part, form.has("onSheet"));
        } catch (BookException e) {
            if (e.isFailure()) {
                throw e;
            }
            throw new PageException(404, "The visit has no photo with this address.");
        } catch (IllegalArgumentException e) {
            throw new PageException(422, "The photo belongs to something unknown, expected a part of the list.");
        }
        Pages.redirect(response, Links.findings(visitId) + "#photos");
    }

    private FindingsPage page(Assessment assessment) {
        return new FindingsPage(
                assessment, desk.book().photos().list(assessment.visit().id()));
    }

    private Assessment assess(ServerRequest request) {
        var visitId = Pages.pathValue(request, "id");
        return desk.assessor().assess(desk.getHistoryOfVisit(visitId), visitId);
    }
}
