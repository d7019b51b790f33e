package cornerbook.app.book;

import java.time.LocalDate;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** Keeps the tools of the shop. A tool is no reading: its line may be changed. */
final class ToolTable {
    private final Handle handle;

    ToolTable(Handle handle) {
        this.handle = handle;
    }

    List<ShopTool> list() {
        return handle.select("select * from shop_tool order by kind desc, id")
                .map((row, context) -> new ShopTool(
                        row.getString("id"),
                        ShopTool.Kind.valueOf(row.getString("kind")),
                        row.getString("name"),
                        row.getDouble("lowest"),
                        row.getDouble("highest"),
                        row.getDouble("amount_too_much"),
                        LocalDate.parse(row.getString("calibration_due"))))
                .list();
    }

    /** Adds the tool, or changes the one of the same mark. */
    void put(ShopTool tool) {
        handle.execute(
                "insert into shop_tool (id, kind, name, lowest, highest, amount_too_much, calibration_due) values (?, ?, ?, ?, ?, ?, ?) on conflict (id) do update set kind = excluded.kind, name = excluded.name, lowest = excluded.lowest, highest = excluded.highest, amount_too_much = excluded.amount_too_much, calibration_due = excluded.calibration_due",
                tool.id(),
                tool.kind().name(),
                tool.name(),
                tool.lowest(),
                tool.highest(),
                tool.offset(),
                tool.calibrationDue().toString());
    }

    void remove(String id) {
        handle.execute("delete from shop_tool where id = ?", id);
    }
}
