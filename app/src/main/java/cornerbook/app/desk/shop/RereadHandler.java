package cornerbook.app.desk.shop;

import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Pages;
import cornerbook.core.reread.ReadingStudy;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;

/** How well the people of the shop read tread depths, from what they read twice anyway. */
public final class RereadHandler {
    public static final String PAGE = "/shop/reread";
    private final Desk desk;
    private final Pages pages;

    public RereadHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        var study = ReadingStudy.find(desk.book().knowledge().readTwice());
        pages.send(response, 200, "desk/shop/reread", RereadPage.of(study));
    }
}
