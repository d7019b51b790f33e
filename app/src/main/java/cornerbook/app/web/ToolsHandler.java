package cornerbook.app.web;

import cornerbook.app.book.ShopTool;
import cornerbook.app.unit.UnitSystem;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.DateTimeException;
import java.time.LocalDate;

/** The torque wrenches and pressure gauges of the shop, with the day of their calibration. */
final class ToolsHandler {
    private static final String PAGE = "/shop/tools";
    private final Desk desk;
    private final Pages pages;

    ToolsHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    void show(ServerRequest request, ServerResponse response) {
        send(response, 200, Form.EMPTY, "");
    }

    void save(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        try {
            desk.book().putTool(tool(typed));
            Pages.redirect(response, PAGE);
        } catch (IllegalArgumentException e) {
            send(response, 422, typed, Typed.sentence(String.valueOf(e.getMessage())));
        }
    }

    void remove(ServerRequest request, ServerResponse response) {
        desk.book().removeTool(Form.read(request).get("id"));
        Pages.redirect(response, PAGE);
    }

    private ShopTool tool(Form typed) {
        var kind = typed.get("kind").equals(ShopTool.Kind.PRESSURE_GAUGE.name())
                ? ShopTool.Kind.PRESSURE_GAUGE
                : ShopTool.Kind.TORQUE_WRENCH;
        var system = EntryUnits.of(typed).system();
        return new ShopTool(
                typed.get("id"),
                kind,
                typed.get("name"),
                value(typed, "lowest", "bottom of the scale", kind, system),
                value(typed, "highest", "top of the scale", kind, system),
                typed.get("offset").isEmpty() ? 0 : value(typed, "offset", "offset of the tool", kind, system),
                day(typed.get("due")));
    }

    private static double value(Form typed, String field, String what, ShopTool.Kind kind, UnitSystem system) {
        if (typed.get(field).isEmpty()) {
            throw new IllegalArgumentException("%s is missing, expected a value with its unit".formatted(what));
        }
        return Typed.valueOf(typed.get(field), kind.unit(), system);
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(
                    "day of the next calibration is missing or no day, expected one as 2027-01-31", e);
        }
    }

    private void send(ServerResponse response, int status, Form typed, String error) {
        pages.send(response, status, "tools", new ToolsPage(desk.book().listTools(), desk.today(), typed, error));
    }
}
