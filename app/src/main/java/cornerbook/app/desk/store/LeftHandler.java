package cornerbook.app.desk.store;

import static java.nio.charset.StandardCharsets.UTF_8;

import cornerbook.app.desk.Calls;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.link.StoreLinks;
import cornerbook.app.request.PageException;
import cornerbook.app.request.Told;
import io.helidon.http.HeaderNames;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;

/** Sets that nobody fetched, who is called about them, and the stock as a file. */
public final class LeftHandler {
    private static final int MOST_MONTHS = 240;

    private final Desk desk;
    private final Pages pages;

    public LeftHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        pages.send(
                response,
                200,
                "desk/store/left",
                new LeftPage(
                        Shelves.of(desk),
                        desk.book().stock().listCalls(),
                        desk.reach(),
                        desk.today(),
                        months(Pages.queryValue(request, "months"))));
    }

    private static int months(String text) {
        if (text.isEmpty()) {
            return LeftPage.USUAL_MONTHS;
        }
        int months = text.matches("\\d{1,3}") ? Integer.parseInt(text) : 0;
        if (months < 1 || months > MOST_MONTHS) {
            throw new PageException(400, new StoreSaid.NoMonths(1, MOST_MONTHS));
        }
        return months;
    }

    /** Somebody says what came of calling a customer. */
    public void answer(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        int months = months(typed.get("months"));
        desk.book().stock().answer(typed.identity("id"), typed.get("visit"), Calls.answer(typed, desk));
        Pages.redirect(response, StoreLinks.left() + "?months=" + months);
    }

    /** All sets that are off their cars. */
    public void sendCsv(ServerRequest request, ServerResponse response) {
        response.header(HeaderNames.CONTENT_DISPOSITION, "attachment; filename=\"store.csv\"");
        Pages.sendPacked(
                response,
                "text/csv; charset=utf-8; header=present",
                StockCsv.of(Shelves.of(desk), desk.reach(), Told.reader()).getBytes(UTF_8));
    }
}
