package cornerbook.app.desk.tools;

import cornerbook.app.desk.EntryUnits;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Typed;
import cornerbook.core.lift.Hoist;
import cornerbook.core.lift.HoistRating;
import cornerbook.core.tool.ShopTool;
import cornerbook.words.UnitSystem;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A tool of the shop as it was typed. */
record ToolForm(Form typed, UnitSystem system) {
    private static final String USUAL_ARMS = "4";

    static ToolForm of(Form typed) {
        return new ToolForm(typed, EntryUnits.of(typed).system());
    }

    /** Refuses with one sentence what cannot be. */
    ShopTool tool() {
        var kind = Arrays.stream(ShopTool.Kind.values())
                .filter(each -> each.name().equals(typed.get("kind")))
                .findFirst()
                .orElse(ShopTool.Kind.TORQUE_WRENCH);
        return new ShopTool(
                typed.get("id"),
                kind,
                typed.get("name"),
                value("lowest", "bottom of the scale", kind.unit()),
                value("highest", "top of the scale", kind.unit()),
                typed.get("offset").isEmpty() ? 0 : value("offset", "offset of the tool", kind.unit()),
                day(typed.get("due")),
                kind == ShopTool.Kind.HOIST ? hoist() : null);
    }

    private @Nullable Hoist hoist() {
        double ratingKg = value("rating", "rating of the hoist", "kg");
        var arms = typed.get("arms").isEmpty() ? USUAL_ARMS : typed.get("arms");
        if (!arms.matches("[0-9]")) {
            throw new IllegalArgumentException("number of arms is \"%s\", expected 2 to 8".formatted(arms));
        }
        return new Hoist(
                Integer.parseInt(arms),
                new HoistRating(
                        ratingKg,
                        value("front-arm", "rating of a front arm", "kg"),
                        value("rear-arm", "rating of a rear arm", "kg")),
                heights("adapters"),
                heights("blocks"));
    }

    private List<Double> heights(String field) {
        return Arrays.stream(typed.get(field).split(";"))
                .map(String::strip)
                .filter(height -> !height.isEmpty())
                .map(height -> Typed.valueOf(height, "mm", system))
                .toList();
    }

    private double value(String field, String what, String unit) {
        if (typed.get(field).isEmpty()) {
            throw new IllegalArgumentException("%s is missing, expected a value with its unit".formatted(what));
        }
        return Typed.valueOf(typed.get(field), unit, system);
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(
                    "day of the next calibration is missing or no day, expected one as 2027-01-31", e);
        }
    }
}
