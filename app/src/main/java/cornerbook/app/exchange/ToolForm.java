package cornerbook.app.exchange;

import static cornerbook.app.exchange.DetailsWriter.putQuantity;
import static cornerbook.app.exchange.HistoryWriter.quantity;

import cornerbook.core.lift.Hoist;
import cornerbook.core.lift.HoistRating;
import cornerbook.core.tool.ShopTool;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Reads and writes a tool that a visit was worked with, as the visit file has it. */
final class ToolForm {
    private ToolForm() {}

    static ShopTool read(JsonObject json) {
        var kind = json.constant("kind", ShopTool.Kind.class);
        return json.build(() -> new ShopTool(
                json.text("id"),
                kind,
                json.text("name"),
                json.quantity("lowest", kind.unit()),
                json.quantity("highest", kind.unit()),
                json.has("showsTooMuch") ? json.quantity("showsTooMuch", kind.unit()) : 0,
                json.date("calibrationDue"),
                json.has("hoist") ? hoist(json.child("hoist")) : null));
    }

    private static Hoist hoist(JsonObject json) {
        return json.build(() -> new Hoist(
                json.whole("arms"),
                new HoistRating(
                        json.quantity("rating", "kg"),
                        json.optionalQuantity("frontArmRating", "kg"),
                        json.optionalQuantity("rearArmRating", "kg")),
                json.quantities("adapterHeights", "mm"),
                json.optionalQuantity("adapterRating", "kg"),
                json.quantities("blockHeights", "mm"),
                json.optionalQuantity("driveOver", "mm"),
                json.optionalQuantity("ceiling", "mm")));
    }

    static void write(ShopTool tool, ObjectNode json) {
        var unit = tool.kind().unit();
        json.put("id", tool.id())
                .put("kind", Spelling.of(tool.kind()))
                .put("name", tool.name())
                .set("lowest", quantity(tool.lowest(), unit))
                .set("highest", quantity(tool.highest(), unit));
        if (tool.offset() != 0) {
            json.set("showsTooMuch", quantity(tool.offset(), unit));
        }
        json.put("calibrationDue", tool.calibrationDue().toString());
        tool.findHoist().ifPresent(hoist -> write(hoist, json.putObject("hoist")));
    }

    private static void write(Hoist hoist, ObjectNode json) {
        json.put("arms", hoist.armCount()).set("rating", quantity(hoist.rating().hoistKg(), "kg"));
        putQuantity(json, "frontArmRating", hoist.rating().frontArmKg(), "kg");
        putQuantity(json, "rearArmRating", hoist.rating().rearArmKg(), "kg");
        write(hoist.adapterHeightsMm(), json.putArray("adapterHeights"));
        putQuantity(json, "adapterRating", hoist.adapterRatingKg(), "kg");
        write(hoist.blockHeightsMm(), json.putArray("blockHeights"));
        putQuantity(json, "driveOver", hoist.driveOverMm(), "mm");
        putQuantity(json, "ceiling", hoist.ceilingMm(), "mm");
    }

    private static void write(List<Double> heightsMm, ArrayNode array) {
        heightsMm.forEach(heightMm -> array.add(quantity(heightMm, "mm")));
    }
}
