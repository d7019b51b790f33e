package cornerbook.app.door;

import cornerbook.app.book.estimate.Agreement;
import cornerbook.app.book.estimate.Estimate;
import cornerbook.app.book.people.Secret;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.estimate.Agreeing;
import cornerbook.app.desk.link.MoneyLinks;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.app.request.PageException;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;

/** Lets a customer answer an estimate without pairing: who knows the secret in the address may, and nothing else. */
final class AgreeHandler {
    private final Desk desk;
    private final Refusals refusals;
    private final Agreeing agreeing;

    AgreeHandler(Desk desk, Pages pages, Refusals refusals, String shop) {
        this.desk = desk;
        this.refusals = refusals;
        this.agreeing = new Agreeing(desk, pages, shop);
    }

    void show(ServerRequest request, ServerResponse response) {
        var estimate = find(request);
        agreeing.show(response, estimate, where(request, estimate));
    }

    void take(ServerRequest request, ServerResponse response) {
        var estimate = find(request);
        agreeing.take(response, estimate, where(request, estimate), Form.read(request));
    }

    /** The address names the visit, so that open bay sheets are told of the answer. */
    private static Agreeing.Where where(ServerRequest request, Estimate estimate) {
        return new Agreeing.Where(
                MoneyLinks.AGREE + Pages.pathValue(request, "secret") + VisitLinks.visit(estimate.visitId()),
                "",
                Agreement.Way.LINK,
                "");
    }

    /** The book is asked for the hash of the secret, whose bits tell nothing of those of another. */
    private Estimate find(ServerRequest request) {
        return desk.book()
                .estimates()
                .findBySecret(Secret.hash(Pages.pathValue(request, "secret")))
                .orElseThrow(() -> {
                    refusals.count(Refusals.Reason.UNKNOWN_ESTIMATE);
                    return new PageException(404, new DoorSaid.NoPage());
                });
    }
}
