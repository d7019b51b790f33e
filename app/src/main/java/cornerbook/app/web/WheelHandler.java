package cornerbook.app.web;

import cornerbook.app.handover.LabelPaper;
import cornerbook.app.handover.LabelPlace;
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
        Pages.sendPdf(
                response,
                "shelf-labels",
                ShelfLabels.render(desk.book().listHistories(), place(Form.ofQuery(request))));
    }

    private static LabelPlace place(Form asked) {
        try {
            var paper = LabelPaper.find(asked.get("paper"))
                    .orElseThrow(() -> new IllegalArgumentException(
                            "There is no label paper \"%s\", expected one of the list.".formatted(asked.get("paper"))));
            return new LabelPlace(
                    paper, (int) number(asked, "first", 1), number(asked, "right", 0), number(asked, "down", 0));
        } catch (IllegalArgumentException e) {
            throw new PageException(422, String.valueOf(e.getMessage()));
        }
    }

    private static double number(Form asked, String name, double otherwise) {
        if (asked.get(name).isEmpty()) {
            return otherwise;
        }
        try {
            return Double.parseDouble(asked.get(name).replace(',', '.'));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(
                    "\"%s\" is no number, expected one as 1.5.".formatted(asked.get(name)), e);
        }
    }
}
