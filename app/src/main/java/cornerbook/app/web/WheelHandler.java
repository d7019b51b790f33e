package cornerbook.app.web;

import cornerbook.app.handover.ShelfLabels;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;

/** The page of one wheel, as its tag opens it, and labels for the shelves that sets lie on. */
final class WheelHandler {
    private final Desk desk;
    private final Pages pages;

    WheelHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /** What was scanned or typed into the field. */
    void find(ServerRequest request, ServerResponse response) {
        Pages.redirect(response, Links.wheel(Pages.queryValue(request, "tag")));
    }

    void show(ServerRequest request, ServerResponse response) {
        var tag = Pages.pathValue(request, "tag");
        var history = desk.book()
                .findHistoryOfWheel(tag)
                .orElseThrow(() -> new PageException(404, "The book has no wheel with the tag %s.".formatted(tag)));
        pages.send(response, 200, "wheel", WheelPage.of(history, tag, desk.assessor()));
    }

    void sendLabels(ServerRequest request, ServerResponse response) {
        var paper =
                Pages.queryValue(request, "paper").equals("a4") ? ShelfLabels.Paper.A4_3_BY_8 : ShelfLabels.Paper.ROLL;
        Pages.sendPdf(response, "shelf-labels", ShelfLabels.render(desk.book().listHistories(), paper));
    }
}
