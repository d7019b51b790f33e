package cornerbook.app.desk.tools;

import cornerbook.app.desk.Form;
import cornerbook.app.request.Told;
import cornerbook.core.lift.Hoist;
import cornerbook.core.say.Amount;
import cornerbook.core.tool.ShopTool;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The tools of the shop, and a form for one of them.
 *
 * @param typed what stands in the form
 * @param error one sentence, empty when nothing was refused
 */
public record ToolsPage(List<ShopTool> tools, LocalDate today, Form typed, String error) {
    public ToolsPage {
        tools = List.copyOf(tools);
    }

    /** What a hoist may carry, in words. */
    public String carries(Hoist hoist) {
        var rating = hoist.rating();
        return Told.say(new ToolsSaid.Carries(
                Amount.of(rating.hoistKg(), "kg"),
                known(rating.frontArmKg(), "kg"),
                known(rating.rearArmKg(), "kg"),
                known(hoist.adapterRatingKg(), "kg"),
                known(hoist.ceilingMm(), "mm")));
    }

    private static @Nullable Amount known(@Nullable Double value, String unit) {
        return value == null ? null : new Amount(value, unit, 0);
    }

    public String at(String field) {
        return typed.get(field);
    }
}
