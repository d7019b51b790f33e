package cornerbook.app.desk.tools;

import cornerbook.core.say.Saying;
import cornerbook.app.request.Told;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;

/** The torque wrenches, pressure gauges and hoists of the shop, with the day of their calibration or inspection. */
public final class ToolsHandler {
    private static final String PAGE = "/shop/tools";
    private final Desk desk;
    private final Pages pages;

    public ToolsHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        send(response, 200, Form.EMPTY, "");
    }

    public void save(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        try {
            desk.book().tools().put(ToolForm.of(typed).tool());
            Pages.redirect(response, PAGE);
        } catch (IllegalArgumentException e) {
            send(response, 422, typed, Typed.sentence(e));
        }
    }

    public void remove(ServerRequest request, ServerResponse response) {
        desk.book().tools().remove(Form.read(request).get("id"));
        Pages.redirect(response, PAGE);
    }

    private void send(ServerResponse response, int status, Form typed, String error) {
        pages.send(
                response,
                status,
                "desk/tools/tools",
                new ToolsPage(desk.book().tools().list(), desk.today(), typed, error));
    }
}
