package cornerbook.app.door;

import cornerbook.app.book.appointment.DayAsking;
import cornerbook.app.book.people.Secret;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.days.Picking;
import cornerbook.app.desk.link.DayLinks;
import cornerbook.app.request.PageException;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;

/** Lets a customer pick a day without pairing: who knows the secret in the address may, and nothing else. */
final class PickHandler {
    private final Desk desk;
    private final Refusals refusals;
    private final Picking picking;

    PickHandler(Desk desk, Pages pages, Refusals refusals, String shop) {
        this.desk = desk;
        this.refusals = refusals;
        this.picking = new Picking(desk, pages, shop);
    }

    void show(ServerRequest request, ServerResponse response) {
        picking.show(response, find(request), action(request));
    }

    void take(ServerRequest request, ServerResponse response) {
        picking.take(response, find(request), action(request), Form.read(request));
    }

    private static String action(ServerRequest request) {
        return DayLinks.PICK + Pages.pathValue(request, "secret");
    }

    /** The book is asked for the hash of the secret, whose bits tell nothing of those of another. */
    private DayAsking find(ServerRequest request) {
        return desk.book()
                .dayWishes()
                .findBySecret(Secret.hash(Pages.pathValue(request, "secret")))
                .orElseThrow(() -> {
                    refusals.count(Refusals.Reason.UNKNOWN_ASKING);
                    return new PageException(404, new DoorSaid.NoPage());
                });
    }
}
