package cornerbook.app.book.car;

import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.tool.ToolRows;
import cornerbook.app.book.tool.ToolTable;
import cornerbook.core.tool.ShopTool;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Keeps which tools a visit was worked with, each as it was on the day. Rows are only added. */
public final class UsedTools {
    private static final String LAST =
            "not exists (select 1 from visit_tool as later where later.visit_id = visit_tool.visit_id and later.kind = visit_tool.kind and later.place_in_list > visit_tool.place_in_list)";

    private final Handle handle;

    public UsedTools(Handle handle) {
        this.handle = handle;
    }

    /**
     * The tool that counts now; the same id again changes nothing.
     *
     * @param id born where it was chosen
     * @param toolId mark of a tool of the shop; empty to take the choice back
     */
    public Arrival choose(String id, String visitId, ShopTool.Kind kind, String toolId) {
        if (handle.select("select 1 from visit_tool where id = ?", id)
                .mapTo(Integer.class)
                .findFirst()
                .isPresent()) {
            return Arrival.ALREADY;
        }
        int place = handle.select("select count(*) from visit_tool where visit_id = ?", visitId)
                .mapTo(Integer.class)
                .one();
        if (toolId.isEmpty()) {
            row(id, visitId, place).set("kind", kind).insert(handle);
        } else {
            var tool = new ToolTable(handle)
                    .find(toolId)
                    .filter(found -> found.kind() == kind)
                    .orElseThrow(() -> new BookException(new CarSaid.NoTool(kind, toolId)));
            write(id, visitId, place, tool);
        }
        new CarWriter(handle).countChange(visitId);
        return Arrival.STORED;
    }

    /** The tools that a new visit came with. */
    void write(String visitId, List<ShopTool> tools) {
        for (int i = 0; i < tools.size(); i++) {
            var tool = tools.get(i);
            write(visitId + "-" + tool.kind(), visitId, i, tool);
        }
    }

    private void write(String id, String visitId, int place, ShopTool tool) {
        ToolRows.put(row(id, visitId, place).set("tool_id", tool.id()), tool).insert(handle);
    }

    private static TableRow row(String id, String visitId, int place) {
        return new TableRow("visit_tool").set("id", id).set("visit_id", visitId).set("place_in_list", place);
    }

    /** The query of what counts, for the reader of visits. */
    static String query(String column) {
        return "select visit_tool.* from visit_tool join visit on visit.id = visit_tool.visit_id where " + column
                + " = ? and visit_tool.tool_id is not null and " + LAST + " order by visit_tool.place_in_list";
    }

    /** Mark of the tool of a kind that was used last, at whatever visit. */
    public Optional<String> findLast(ShopTool.Kind kind) {
        return handle.select(
                        "select visit_tool.tool_id from visit_tool join visit on visit.id = visit_tool.visit_id where visit_tool.kind = ? and visit_tool.tool_id is not null and "
                                + LAST + " order by visit.visit_date desc, visit.odometer_km desc limit 1",
                        kind.name())
                .mapTo(String.class)
                .findFirst();
    }
}
