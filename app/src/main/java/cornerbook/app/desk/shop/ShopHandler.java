package cornerbook.app.desk.shop;

import cornerbook.app.book.shop.ShopRules;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.request.PageException;
import cornerbook.app.sheet.Letterhead;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;

/** The rules of the shop. */
public final class ShopHandler {
    private final ShopRules rules;
    private final Pages pages;
    private final Letterhead letterhead;

    public ShopHandler(Desk desk, Pages pages, Letterhead letterhead) {
        this.rules = desk.book().rules();
        this.pages = pages;
        this.letterhead = letterhead;
    }

    public void show(ServerRequest request, ServerResponse response) {
        pages.send(response, 200, "desk/shop/shop", new ShopPage(rules.asksSecondCheck(), letterhead));
    }

    public void save(ServerRequest request, ServerResponse response) {
        rules.askSecondCheck(
                switch (Form.read(request).get("second-check")) {
                    case "yes" -> true;
                    case "no" -> false;
                    default -> throw new PageException(400, new ShopSaid.SecondCheckNotUnderstood());
                });
        Pages.redirect(response, "/shop");
    }
}
