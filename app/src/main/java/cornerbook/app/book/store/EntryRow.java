package cornerbook.app.book.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;

/** What the rows of all that is entered at a visit have in common. */
public final class EntryRow {
    private EntryRow() {}

    /** An entry was born at a tablet, of a person, at a moment. */
    public static TableRow of(String table, String id, String visitId, String person, Instant madeAt) {
        return new TableRow(table)
                .set("id", id)
                .set("visit_id", visitId)
                .set("person", person)
                .set("made_at", madeAt);
    }

    public static Instant madeAt(ResultSet row) throws SQLException {
        return Instant.parse(row.getString("made_at"));
    }
}
