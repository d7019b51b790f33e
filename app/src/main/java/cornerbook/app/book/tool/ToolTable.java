package cornerbook.app.book.tool;

import cornerbook.app.book.store.TableRow;
import cornerbook.core.tool.ShopTool;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Keeps the tools of the shop. A tool is no reading: its line may be changed. */
public final class ToolTable {
    private final Handle handle;

    public ToolTable(Handle handle) {
        this.handle = handle;
    }

    public List<ShopTool> list() {
        return handle.select("select shop_tool.*, id as tool_id from shop_tool order by kind desc, id")
                .map((row, context) -> ToolRows.tool(row))
                .list();
    }

    public Optional<ShopTool> find(String id) {
        return list().stream().filter(tool -> tool.id().equals(id)).findFirst();
    }

    /** Adds the tool, or changes the one of the same mark. */
    public void put(ShopTool tool) {
        remove(tool.id());
        ToolRows.put(new TableRow("shop_tool").set("id", tool.id()), tool).insert(handle);
    }

    public void remove(String id) {
        handle.execute("delete from shop_tool where id = ?", id);
    }
}
