package cornerbook.app.book.car;

import static cornerbook.app.book.store.Transactions.within;

import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.KeptStatements;
import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.Transactions;
import cornerbook.app.book.tool.ToolLedger;
import cornerbook.app.book.tool.ToolRows;
import cornerbook.core.tool.ShopTool;
import java.util.Comparator;
import java.util.List;

/** Keeps which tools a visit was worked with, each as it was on the day. Rows are only added. */
public final class UsedToolLedger {
    private static final String LAST =
            "not exists (select 1 from visit_tool as later where later.visit_id = visit_tool.visit_id and later.kind = visit_tool.kind and later.place_in_list > visit_tool.place_in_list)";

    private final Transactions store;

    public UsedToolLedger(Transactions store) {
        this.store = store;
    }

    /**
     * The tool of a kind that a visit is worked with, as the shop keeps it now.
     *
     * @param id born where it was chosen: the same one again changes nothing
     * @param toolId mark of the tool; empty to take the choice back
     * @throws BookException when the shop keeps no such tool
     */
    public Arrival choose(String id, String visitId, ShopTool.Kind kind, String toolId) {
        return store.write(handle -> {
            new CarLedger(within(handle)).requireVisit(visitId);
            if (handle.select("select 1 from visit_tool where id = ?", id)
                    .mapTo(Integer.class)
                    .findFirst()
                    .isPresent()) {
                return Arrival.ALREADY;
            }
            int place = handle.select("select count(*) from visit_tool where visit_id = ?", visitId)
                    .mapTo(Integer.class)
                    .one();
            var row = row(id, visitId, place);
            if (toolId.isEmpty()) {
                row.set("kind", kind);
            } else {
                put(
                        row,
                        new ToolLedger(within(handle))
                                .list().stream()
                                        .filter(tool -> tool.id().equals(toolId) && tool.kind() == kind)
                                        .findFirst()
                                        .orElseThrow(() -> new BookException(new CarSaid.NoTool(kind, toolId))));
            }
            row.insert(handle);
            new CarWriter(handle).countChange(visitId);
            return Arrival.STORED;
        });
    }

    /** The tools of a kind, the one that was used last, at whatever visit, before all others. */
    public List<ShopTool> offer(ShopTool.Kind kind) {
        return store.read(handle -> {
            var last = handle.select(
                            "select visit_tool.tool_id from visit_tool join visit on visit.id = visit_tool.visit_id where visit_tool.kind = ? and visit.cancelled = 0 and visit_tool.tool_id is not null and "
                                    + LAST + " order by visit.visit_date desc, visit.odometer_km desc limit 1",
                            kind.name())
                    .mapTo(String.class)
                    .findFirst()
                    .orElse("");
            return new ToolLedger(within(handle))
                    .list().stream()
                            .filter(tool -> tool.kind() == kind)
                            .sorted(Comparator.comparing(tool -> !tool.id().equals(last)))
                            .toList();
        });
    }

    /** The tools that a new visit came with. */
    static void write(KeptStatements statements, String visitId, List<ShopTool> tools) {
        for (int i = 0; i < tools.size(); i++) {
            var tool = tools.get(i);
            put(row(visitId + "-" + tool.kind(), visitId, i), tool).insert(statements);
        }
    }

    private static TableRow put(TableRow row, ShopTool tool) {
        return ToolRows.put(row.set("tool_id", tool.id()), tool);
    }

    private static TableRow row(String id, String visitId, int place) {
        return new TableRow("visit_tool").set("id", id).set("visit_id", visitId).set("place_in_list", place);
    }

    /** The query of what counts, for readers of visits. */
    public static String query(String column) {
        return "select visit_tool.* from visit_tool join visit on visit.id = visit_tool.visit_id where " + column
                + " = ? and visit_tool.tool_id is not null and " + LAST + " order by visit_tool.place_in_list";
    }
}
