package cornerbook.app.desk.shop;

import cornerbook.app.book.shop.SheetStep;
import cornerbook.app.book.shop.StepOrder;
import cornerbook.app.book.shop.StepRule;
import cornerbook.app.request.Told;
import cornerbook.core.car.Vehicle;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The order of the work.
 *
 * @param car one of the kind that it is for; null for the shop
 * @param own whether it was set for this kind, or by this shop
 */
public record OrderPage(StepOrder order, @Nullable Vehicle car, boolean own) {
    public String title(SheetStep step) {
        return step == SheetStep.BRAKES
                ? Told.labels("app/desk/shop").of("step-brakes")
                : Told.labels("app/bay").of("step", "step", step);
    }

    /** What has to come before a step. */
    public List<StepRule> rules(SheetStep step) {
        return Arrays.stream(StepRule.values())
                .filter(rule -> rule.then() == step && rule.isAskedOf(car))
                .toList();
    }

    public boolean mayMove(SheetStep step, boolean up) {
        return order.canBeBeside(step, up) && order.refusal(step, up, car).isEmpty();
    }

    /** The button that moves a step. */
    static String buttonId(SheetStep step, boolean up) {
        return (up ? "up." : "down.") + step;
    }

    public String button(SheetStep step, boolean up) {
        return buttonId(step, up);
    }
}
