package cornerbook.app.book.visit;

import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.EntryRow;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** The one way in which it is kept what came of calling customers: by visit and by what was asked. */
public final class CallAnswers {
    private CallAnswers() {}

    /**
     * Selects the last answer of each row as the columns that {@link #last} reads.
     *
     * @param visit the column with the visit's id
     * @param about the column, or the quoted word, for what was asked
     */
    public static String columns(String visit, String about) {
        return Arrays.stream(new String[] {"answer", "person", "made_at"})
                .map(column -> latest(column, visit, about) + " as call_" + column)
                .collect(Collectors.joining(", "));
    }

    /** The last answer itself, within a condition; null before anybody called. */
    public static String latest(String column, String visit, String about) {
        return "(select " + column + " from call_answer where call_answer.visit_id = " + visit
                + " and call_answer.about = " + about + " order by call_answer.place_in_list desc limit 1)";
    }

    /** What {@link #columns} selected; null before anybody called. */
    public static @Nullable CallAnswer last(ResultSet row) throws SQLException {
        var answer = row.getString("call_answer");
        return answer == null
                ? null
                : new CallAnswer(
                        CallAnswer.Kind.valueOf(answer),
                        row.getString("call_person"),
                        Instant.parse(row.getString("call_made_at")));
    }

    /** Adds what came of a call; what was said already, by its id, counts once. */
    public static Arrival add(Handle handle, String id, String visitId, String about, CallAnswer answer) {
        int place = handle.select("select count(*) from call_answer where visit_id = ? and about = ?", visitId, about)
                .mapTo(Integer.class)
                .one();
        return EntryRow.of("call_answer", id, visitId, answer.person(), answer.at())
                        .set("about", about)
                        .set("place_in_list", place)
                        .set("answer", answer.kind())
                        .insertOnce(handle)
                ? Arrival.STORED
                : Arrival.ALREADY;
    }
}
