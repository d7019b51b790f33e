package cornerbook.app.desk.tools;

import cornerbook.app.desk.EntryUnits;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Typed;
import cornerbook.core.lift.Hoist;
import cornerbook.core.lift.HoistRating;
import cornerbook.core.say.Refused;
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
        var kind = typed.choice("kind", List.of(ShopTool.Kind.values())).orElse(ShopTool.Kind.TORQUE_WRENCH);
        return new ShopTool(
                typed.get("id"),
                kind,
                typed.get("name"),
                value(ToolField.LOWEST, kind.unit()),
                value(ToolField.HIGHEST, kind.unit()),
                typed.get("offset").isEmpty() ? 0 : value(ToolField.OFFSET, kind.unit()),
                day(typed.get("due")),
                kind == ShopTool.Kind.HOIST ? hoist() : null);
    }

    private @Nullable Hoist hoist() {
        double ratingKg = value(ToolField.RATING, "kg");
        var arms = typed.get("arms").isEmpty() ? USUAL_ARMS : typed.get("arms");
        if (!arms.matches("[0-9]")) {
            throw new Refused(new ToolsSaid.NotSoManyArms(arms));
        }
        return new Hoist(
                Integer.parseInt(arms),
                new HoistRating(ratingKg, known("front-arm", "kg"), known("rear-arm", "kg")),
                heights("adapters"),
                known("adapter-rating", "kg"),
                heights("blocks"),
                known("drive-over", "mm"),
                known("ceiling", "mm"));
    }

    private List<Double> heights(String field) {
        return Arrays.stream(typed.get(field).split(";"))
                .map(String::strip)
                .filter(height -> !height.isEmpty())
                .map(height -> Typed.valueOf(height, "mm", system))
                .toList();
    }

    private double value(ToolField field, String unit) {
        var text = typed.get(field.key());
        if (text.isEmpty()) {
            throw new Refused(new ToolsSaid.MissingValue(field));
        }
        return Typed.valueOf(text, unit, system);
    }

    private @Nullable Double known(String field, String unit) {
        var text = typed.get(field);
        return text.isEmpty() ? null : Typed.valueOf(text, unit, system);
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new Refused(new ToolsSaid.NoCalibrationDay("2027-01-31"));
        }
    }
}
