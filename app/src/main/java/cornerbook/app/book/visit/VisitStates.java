package cornerbook.app.book.visit;

import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.EntryRow;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import org.jdbi.v3.core.Handle;

/** Where cars are, from what was entered and what was said by hand. Runs inside the caller's transaction. */
record VisitStates(Handle handle) {
    /** Of each visit that a query reads, for {@link #read}. */
    static final String COLUMNS = """
            (exists (select 1 from reading where reading.visit_id = visit.id and reading.measure <> 'REPLACED_ODOMETER')
             or exists (select 1 from work_tick where work_tick.visit_id = visit.id)
             or exists (select 1 from visit_wheel where visit_wheel.visit_id = visit.id and visit_wheel.moment = 'LEFT')) as begun,
            exists (select 1 from departure where departure.visit_id = visit.id) as handed_over,
            (select state from visit_state where visit_state.visit_id = visit.id order by place_in_list desc limit 1) as said,
            (select happened from visit_state where visit_state.visit_id = visit.id order by place_in_list desc limit 1) as said_when
            """;

    static VisitState read(ResultSet row) throws SQLException {
        var happened = happened(row);
        return happened.name().equals(row.getString("said_when"))
                ? VisitState.valueOf(row.getString("said"))
                : happened;
    }

    private static VisitState happened(ResultSet row) throws SQLException {
        return VisitState.happened(row.getBoolean("begun"), row.getBoolean("handed_over"));
    }

    VisitState get(String visitId) {
        return handle.select("select " + COLUMNS + " from visit where id = ?", visitId)
                .map((row, context) -> read(row))
                .one();
    }

    /** A person says where the car is; what was said already, by its id, counts once. */
    Arrival say(String id, String visitId, VisitState state, String person, Instant madeAt) {
        var happened = handle.select("select " + COLUMNS + " from visit where id = ?", visitId)
                .map((row, context) -> happened(row))
                .one();
        int place = handle.select("select count(*) from visit_state where visit_id = ?", visitId)
                .mapTo(Integer.class)
                .one();
        return EntryRow.of("visit_state", id, visitId, person, madeAt)
                        .set("place_in_list", place)
                        .set("state", state)
                        .set("happened", happened)
                        .insertOnce(handle)
                ? Arrival.STORED
                : Arrival.ALREADY;
    }
}
