package cornerbook.app.desk.shop;

import cornerbook.app.book.shop.SheetStep;
import cornerbook.app.book.shop.StepOrder;
import cornerbook.app.book.shop.StepOrders;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.link.ShopLinks;
import cornerbook.app.request.PageException;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Vehicle;
import cornerbook.core.say.Refused;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** The order of the steps of a visit, for the shop or for cars of one kind. */
public final class OrderHandler {
    private static final String CAR = "car";
    private static final String UP = "up";
    private static final String DOWN = "down";

    private final Desk desk;
    private final Pages pages;

    public OrderHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        var car = car(request.query().first(CAR).orElse(""));
        pages.send(response, 200, "desk/shop/order", page(car));
    }

    public void save(ServerRequest request, ServerResponse response) {
        var form = Form.read(request);
        var car = car(form.get(CAR));
        var address = car == null ? ShopLinks.stepOrder() : ShopLinks.stepOrder(car.id());
        if (form.has("usual")) {
            orders().remove(car);
            Pages.redirect(response, address);
            return;
        }
        boolean up = form.has(UP);
        var step = step(form.get(up ? UP : DOWN));
        try {
            var moved = page(car).order().moved(step, up, car);
            orders().put(car, moved);
            // The finger goes on: the button that was used, or the other one where it has no further to go.
            boolean further = new OrderPage(moved, car, true).mayMove(step, up);
            Pages.redirect(response, address + "#" + OrderPage.buttonId(step, further == up));
        } catch (Refused e) {
            throw new PageException(409, Refused.said(e));
        }
    }

    private OrderPage page(@Nullable Vehicle car) {
        if (car == null) {
            var order = orders().ofShop();
            return new OrderPage(order, null, !order.equals(StepOrder.USUAL));
        }
        return new OrderPage(orders().of(car), car, orders().findOfKind(car).isPresent());
    }

    private StepOrders orders() {
        return desk.book().stepOrders();
    }

    private @Nullable Vehicle car(String vehicleId) {
        return vehicleId.isEmpty()
                ? null
                : desk.book()
                        .cars()
                        .find(vehicleId)
                        .map(CarHistory::vehicle)
                        .orElseThrow(() -> new PageException(404, new ShopSaid.NoSuchCar(vehicleId)));
    }

    private static SheetStep step(String name) {
        return Arrays.stream(SheetStep.values())
                .filter(step -> step.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new PageException(400, new ShopSaid.StepNotUnderstood()));
    }
}
