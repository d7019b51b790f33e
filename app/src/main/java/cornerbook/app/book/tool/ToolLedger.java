package cornerbook.app.book.tool;

import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.Transactions;
import cornerbook.core.tool.ShopTool;
import java.util.List;

/** The torque wrenches, pressure gauges and hoists of the shop. A tool is no reading: its line may be changed. */
public final class ToolLedger {
    private static final String REMOVAL = "delete from shop_tool where id = ?";

    private final Transactions store;

    public ToolLedger(Transactions store) {
        this.store = store;
    }

    public List<ShopTool> list() {
        return store.read(
                handle -> handle.select("select shop_tool.*, id as tool_id from shop_tool order by kind desc, id")
                        .map((row, context) -> ToolRows.tool(row))
                        .list());
    }

    /** Adds a tool, or changes the one of the same mark. */
    public void put(ShopTool tool) {
        store.write(handle -> {
            handle.execute(REMOVAL, tool.id());
            ToolRows.put(new TableRow("shop_tool").set("id", tool.id()), tool).insert(handle);
            return tool;
        });
    }

    /** The shop has this tool no longer; one that is not there is as good as removed. */
    public void remove(String id) {
        store.write(handle -> handle.execute(REMOVAL, id));
    }
}
