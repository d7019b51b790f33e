package cornerbook.app.book;

import cornerbook.app.book.RivalAnswer.Kind;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Rows of what tablets enter beside readings; a row that is there already, by its id, is written once. */
final class BayRows {
    private final Handle handle;

    BayRows(Handle handle) {
        this.handle = handle;
    }

    boolean add(String visitId, WorkTick tick) {
        return entry("work_tick", tick.id(), visitId, tick.person(), tick.madeAt())
                .set("tick", tick.tick())
                .set("done", tick.done())
                .insertOnce(handle);
    }

    List<WorkTick> listTicks(String visitId) {
        return handle.select("select * from work_tick where visit_id = ? order by made_at, id", visitId)
                .map((row, context) -> new WorkTick(
                        row.getString("id"),
                        row.getString("tick"),
                        row.getInt("done") == 1,
                        row.getString("person"),
                        madeAt(row)))
                .list();
    }

    boolean add(String visitId, Departure departure) {
        boolean added = entry("departure", departure.id(), visitId, departure.person(), departure.madeAt())
                .insertOnce(handle);
        if (added) {
            departure
                    .reasons()
                    .forEach(reason -> new TableRow("departure_reason")
                            .set("departure_id", departure.id())
                            .set("caution", reason.caution())
                            .set("sentence", reason.sentence())
                            .set("reason", reason.reason())
                            .insert(handle));
        }
        return added;
    }

    /** The hand-overs of a visit, earliest first. */
    List<Departure> listDepartures(String visitId) {
        return handle.select("select * from departure where visit_id = ? order by made_at, id", visitId)
                .map((row, context) -> new Departure(
                        row.getString("id"), row.getString("person"), madeAt(row), listReasons(row.getString("id"))))
                .list();
    }

    private List<Departure.Reason> listReasons(String departureId) {
        return handle.select("select * from departure_reason where departure_id = ? order by caution", departureId)
                .map((row, context) -> new Departure.Reason(
                        row.getString("caution"), row.getString("sentence"), row.getString("reason")))
                .list();
    }

    void add(ReadingAuthor author) {
        new TableRow("reading_author")
                .set("reading_id", author.readingId())
                .set("person", author.person())
                .set("made_at", author.madeAt())
                .insert(handle);
    }

    /** The authors of a visit's readings, earliest first. */
    List<ReadingAuthor> listAuthors(String visitId) {
        return handle.select(
                        "select reading_author.* from reading_author join reading on reading.id = reading_id where visit_id = ? order by made_at, reading_id",
                        visitId)
                .map((row, context) ->
                        new ReadingAuthor(row.getString("reading_id"), row.getString("person"), madeAt(row)))
                .list();
    }

    boolean add(String visitId, RivalReading rival) {
        var reading = rival.reading();
        return entry("rival_reading", reading.id(), visitId, rival.person(), rival.madeAt())
                .set("standing_id", rival.standingId())
                .set("measure", reading.measure())
                .set("corner", reading.corner())
                .set("wheel_tag", reading.wheelTag())
                .set("spot", reading.spot())
                .set("amount", reading.value())
                .set("as_written", reading.asWritten())
                .insertOnce(handle);
    }

    Optional<RivalReading> findRival(String id) {
        return handle.select("select * from rival_reading where id = ?", id)
                .map((row, context) -> rival(row))
                .findFirst();
    }

    Optional<String> findVisitOfRival(String id) {
        return handle.select("select visit_id from rival_reading where id = ?", id)
                .mapTo(String.class)
                .findFirst();
    }

    /** The rivals of a visit, answered or not, earliest first. */
    List<RivalReading> listRivals(String visitId) {
        return handle.select("select * from rival_reading where visit_id = ? order by made_at, id", visitId)
                .map((row, context) -> rival(row))
                .list();
    }

    void add(RivalAnswer answer) {
        new TableRow("rival_answer")
                .set("rival_id", answer.rivalId())
                .set("answer", answer.kind())
                .set("person", answer.person())
                .set("made_at", answer.madeAt())
                .insert(handle);
    }

    Optional<RivalAnswer> findAnswer(String rivalId) {
        return handle.select("select * from rival_answer where rival_id = ?", rivalId)
                .map((row, context) -> new RivalAnswer(
                        rivalId, Kind.valueOf(row.getString("answer")), row.getString("person"), madeAt(row)))
                .findFirst();
    }

    private static RivalReading rival(ResultSet row) throws SQLException {
        return new RivalReading(
                CarReader.measured(row, null, null),
                row.getString("standing_id"),
                row.getString("person"),
                madeAt(row));
    }

    /** What the rows of all tables have: an entry was born at a tablet, of a person, at a moment. */
    static TableRow entry(String table, String id, String visitId, String person, Instant madeAt) {
        return new TableRow(table)
                .set("id", id)
                .set("visit_id", visitId)
                .set("person", person)
                .set("made_at", madeAt);
    }

    static Instant madeAt(ResultSet row) throws SQLException {
        return Instant.parse(row.getString("made_at"));
    }
}
