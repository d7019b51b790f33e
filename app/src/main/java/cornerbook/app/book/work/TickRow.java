package cornerbook.app.book.work;

import cornerbook.app.book.store.EntryRow;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;

/** Reads a tick. */
public final class TickRow {
    private TickRow() {}

    public static WorkTick read(ResultSet row, List<String> seen) throws SQLException {
        return new WorkTick(
                row.getString("id"),
                row.getString("tick"),
                row.getString("wheel_tag"),
                new WorkTick.Answer(row.getInt("done") == 1, row.getString("reason")),
                row.getInt("counts") == 1,
                seen,
                row.getString("person"),
                EntryRow.madeAt(row));
    }
}
