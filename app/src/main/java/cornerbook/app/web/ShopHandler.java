package cornerbook.app.web;

import cornerbook.app.book.ShopRules;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;

/** The rules of the shop. */
final class ShopHandler {
    private final ShopRules rules;
    private final Pages pages;

    ShopHandler(Desk desk, Pages pages) {
        this.rules = desk.book().rules();
        this.pages = pages;
    }

    void show(ServerRequest request, ServerResponse response) {
        pages.send(response, 200, "shop", new ShopPage(rules.asksSecondCheck()));
    }

    void save(ServerRequest request, ServerResponse response) {
        var asked = Form.read(request).get("second-check");
        if (!asked.equals("yes") && !asked.equals("no")) {
            throw new PageException(400, "The second check is not understood, expected yes or no.");
        }
        rules.askSecondCheck(asked.equals("yes"));
        Pages.redirect(response, "/shop");
    }
}
