package cornerbook.app.book.car;

import cornerbook.app.book.store.TableRow;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;

/** What was put right of a car, line by line in one table. Lines are only added. */
public final class ChangeRows {
    private final Handle handle;
    private final String table;
    private final String vehicleId;

    public ChangeRows(Handle handle, String table, String vehicleId) {
        this.handle = handle;
        this.table = table;
        this.vehicleId = vehicleId;
    }

    /** The line behind those that are kept. */
    public TableRow next() {
        int place = handle.select("select count(*) from %s where vehicle_id = ?".formatted(table), vehicleId)
                .mapTo(Integer.class)
                .one();
        return new TableRow(table).set("vehicle_id", vehicleId).set("place_in_list", place);
    }

    /** All lines, earliest first. */
    public <T> List<T> list(RowMapper<T> mapper) {
        return handle.select("select * from %s where vehicle_id = ? order by place_in_list".formatted(table), vehicleId)
                .map(mapper)
                .list();
    }
}
