package cornerbook.app.book.tool;

import cornerbook.app.book.store.TableRow;
import cornerbook.core.lift.Hoist;
import cornerbook.core.lift.HoistRating;
import cornerbook.core.tool.ShopTool;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The columns of a tool, as the shop keeps it and as a visit was worked with it. */
public final class ToolRows {
    private ToolRows() {}

    public static ShopTool tool(ResultSet row) throws SQLException {
        return new ShopTool(
                row.getString("tool_id"),
                ShopTool.Kind.valueOf(row.getString("kind")),
                row.getString("name"),
                row.getDouble("lowest"),
                row.getDouble("highest"),
                row.getDouble("amount_too_much"),
                LocalDate.parse(row.getString("calibration_due")),
                hoist(row));
    }

    private static @Nullable Hoist hoist(ResultSet row) throws SQLException {
        int arms = row.getInt("arm_count");
        return row.wasNull()
                ? null
                : new Hoist(
                        arms,
                        new HoistRating(
                                row.getDouble("hoist_rating_kg"),
                                known(row, "front_arm_rating_kg"),
                                known(row, "rear_arm_rating_kg")),
                        heights(row.getString("adapter_heights_mm")),
                        known(row, "adapter_rating_kg"),
                        heights(row.getString("block_heights_mm")),
                        known(row, "drive_over_mm"),
                        known(row, "ceiling_mm"));
    }

    private static @Nullable Double known(ResultSet row, String column) throws SQLException {
        double value = row.getDouble(column);
        return row.wasNull() ? null : value;
    }

    /** All but its mark. */
    public static TableRow put(TableRow row, ShopTool tool) {
        row.set("kind", tool.kind())
                .set("name", tool.name())
                .set("lowest", tool.lowest())
                .set("highest", tool.highest())
                .set("amount_too_much", tool.offset())
                .set("calibration_due", tool.calibrationDue());
        tool.findHoist()
                .ifPresent(hoist -> row.set("arm_count", hoist.armCount())
                        .set("hoist_rating_kg", hoist.rating().hoistKg())
                        .set("front_arm_rating_kg", hoist.rating().frontArmKg())
                        .set("rear_arm_rating_kg", hoist.rating().rearArmKg())
                        .set("adapter_heights_mm", written(hoist.adapterHeightsMm()))
                        .set("adapter_rating_kg", hoist.adapterRatingKg())
                        .set("block_heights_mm", written(hoist.blockHeightsMm()))
                        .set("drive_over_mm", hoist.driveOverMm())
                        .set("ceiling_mm", hoist.ceilingMm()));
        return row;
    }

    private static String written(List<Double> heightsMm) {
        return heightsMm.stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    private static List<Double> heights(String written) {
        return Arrays.stream(written.split(" "))
                .filter(height -> !height.isEmpty())
                .map(Double::valueOf)
                .toList();
    }
}
