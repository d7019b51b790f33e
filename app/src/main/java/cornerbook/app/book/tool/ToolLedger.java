package cornerbook.app.book.tool;

import cornerbook.app.book.store.BookStore;
import cornerbook.core.tool.ShopTool;
import java.util.List;

/** The torque wrenches, pressure gauges and hoists of the shop. */
public final class ToolLedger {
    private final BookStore store;

    public ToolLedger(BookStore store) {
        this.store = store;
    }

    public List<ShopTool> list() {
        return store.read(handle -> new ToolTable(handle).list());
    }

    /** Adds a tool, or changes the one of the same mark. */
    public void put(ShopTool tool) {
        store.write(handle -> {
            new ToolTable(handle).put(tool);
            return null;
        });
    }

    /** The shop has this tool no longer; one that is not there is as good as removed. */
    public void remove(String id) {
        store.write(handle -> {
            new ToolTable(handle).remove(id);
            return null;
        });
    }
}
