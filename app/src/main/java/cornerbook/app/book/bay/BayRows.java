package cornerbook.app.book.bay;

import cornerbook.app.book.bay.RivalAnswer.Kind;
import cornerbook.app.book.car.CarReader;
import cornerbook.app.book.store.EntryRow;
import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.work.Declined;
import cornerbook.app.book.work.Remark;
import cornerbook.app.book.work.TickRow;
import cornerbook.app.book.work.WorkTick;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/** Rows of what tablets enter beside readings; a row that is there already, by its id, is written once. */
public final class BayRows {
    private final Handle handle;

    public BayRows(Handle handle) {
        this.handle = handle;
    }

    public boolean add(String visitId, WorkTick tick) {
        boolean added = arrived("work_tick", tick.id(), visitId, tick.person(), tick.madeAt())
                .set("tick", tick.tick())
                .set("wheel_tag", tick.wheelTag())
                .set("done", tick.done())
                .set("counts", tick.counts())
                .set("reason", tick.reason())
                .insertOnce(handle);
        if (added) {
            tick.seen().stream()
                    .distinct()
                    .forEach(seenId -> new TableRow("work_tick_seen")
                            .set("tick_id", tick.id())
                            .set("seen_id", seenId)
                            .insert(handle));
        }
        return added;
    }

    /** The ticks of a visit in the order in which they arrived. */
    public List<WorkTick> listTicks(String visitId) {
        var seen = new HashMap<String, List<String>>();
        handle.select(
                        "select work_tick_seen.* from work_tick_seen join work_tick on work_tick.id = tick_id where visit_id = ? order by seen_id",
                        visitId)
                .map((row, context) -> Map.entry(row.getString("tick_id"), row.getString("seen_id")))
                .list()
                .forEach(row -> seen.computeIfAbsent(row.getKey(), id -> new ArrayList<>())
                        .add(row.getValue()));
        return handle.select("select * from work_tick where visit_id = ? order by place_in_list", visitId)
                .map((row, context) -> TickRow.read(row, seen.getOrDefault(row.getString("id"), List.of())))
                .list();
    }

    public boolean add(String visitId, Remark remark) {
        return arrived("visit_remark", remark.id(), visitId, remark.person(), remark.madeAt())
                .set("topic", remark.topic().name())
                .set("words", remark.words())
                .insertOnce(handle);
    }

    /** The remarks of a visit in the order in which they arrived. */
    public List<Remark> listRemarks(String visitId) {
        return handle.select("select * from visit_remark where visit_id = ? order by place_in_list", visitId)
                .map((row, context) -> new Remark(
                        row.getString("id"),
                        Remark.Topic.valueOf(row.getString("topic")),
                        row.getString("words"),
                        row.getString("person"),
                        EntryRow.madeAt(row)))
                .list();
    }

    public boolean add(String visitId, Declined declined) {
        return arrived("declined_work", declined.id(), visitId, declined.person(), declined.madeAt())
                .set("advice", declined.advice())
                .set("sentence", declined.sentence())
                .set("declined", declined.declined())
                .set("said_by", declined.saidBy())
                .insertOnce(handle);
    }

    /** What was declined at a visit, or wanted after all, in the order in which it arrived. */
    public List<Declined> listDeclined(String visitId) {
        return handle.select("select * from declined_work where visit_id = ? order by place_in_list", visitId)
                .map((row, context) -> new Declined(
                        row.getString("id"),
                        row.getString("advice"),
                        row.getString("sentence"),
                        row.getInt("declined") == 1,
                        row.getString("said_by"),
                        row.getString("person"),
                        EntryRow.madeAt(row)))
                .list();
    }

    public boolean add(String visitId, Departure departure) {
        boolean added = arrived("departure", departure.id(), visitId, departure.person(), departure.madeAt())
                .set("acknowledged_by", departure.acknowledgedBy())
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

    /** The hand-overs of a visit in the order in which they arrived. */
    public List<Departure> listDepartures(String visitId) {
        return handle.select("select * from departure where visit_id = ? order by place_in_list", visitId)
                .map((row, context) -> new Departure(
                        row.getString("id"),
                        row.getString("person"),
                        EntryRow.madeAt(row),
                        listReasons(row.getString("id")),
                        row.getString("acknowledged_by")))
                .list();
    }

    private List<Departure.Reason> listReasons(String departureId) {
        return handle.select("select * from departure_reason where departure_id = ? order by caution", departureId)
                .map((row, context) -> new Departure.Reason(
                        row.getString("caution"), row.getString("sentence"), row.getString("reason")))
                .list();
    }

    public void add(ReadingAuthor author) {
        new TableRow("reading_author")
                .set("reading_id", author.readingId())
                .set("person", author.person())
                .set("made_at", author.madeAt())
                .insert(handle);
    }

    /** The authors of a visit's readings, earliest first. */
    public List<ReadingAuthor> listAuthors(String visitId) {
        return handle.select(
                        "select reading_author.* from reading_author join reading on reading.id = reading_id where visit_id = ? order by made_at, reading_id",
                        visitId)
                .map((row, context) ->
                        new ReadingAuthor(row.getString("reading_id"), row.getString("person"), EntryRow.madeAt(row)))
                .list();
    }

    /** Who took the readings of a car at a tablet, by the reading's id. */
    public Map<String, String> personsOfCar(String vehicleId) {
        return handle.select(
                        "select reading_id, person from reading_author join reading on reading.id = reading_id join visit on visit.id = visit_id where vehicle_id = ?",
                        vehicleId)
                .map((row, context) -> Map.entry(row.getString("reading_id"), row.getString("person")))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    public boolean add(String visitId, RivalReading rival) {
        var reading = rival.reading();
        return EntryRow.of("rival_reading", reading.id(), visitId, rival.person(), rival.madeAt())
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
    public List<RivalReading> listRivals(String visitId) {
        return handle.select("select * from rival_reading where visit_id = ? order by made_at, id", visitId)
                .map((row, context) -> rival(row))
                .list();
    }

    public void add(RivalAnswer answer) {
        new TableRow("rival_answer")
                .set("rival_id", answer.rivalId())
                .set("id", answer.id())
                .set("answer", answer.kind())
                .set("person", answer.person())
                .set("made_at", answer.madeAt())
                .insert(handle);
    }

    public Optional<RivalAnswer> findAnswer(String rivalId) {
        return handle.select("select * from rival_answer where rival_id = ?", rivalId)
                .map((row, context) -> new RivalAnswer(
                        row.getString("id"),
                        rivalId,
                        Kind.valueOf(row.getString("answer")),
                        row.getString("person"),
                        EntryRow.madeAt(row)))
                .findFirst();
    }

    private static RivalReading rival(ResultSet row) throws SQLException {
        return new RivalReading(
                CarReader.measured(row, null, null),
                row.getString("standing_id"),
                row.getString("person"),
                EntryRow.madeAt(row));
    }

    /** The same with its place among those of its visit that are there already. */
    private TableRow arrived(String table, String id, String visitId, String person, Instant madeAt) {
        int place = handle.select("select count(*) from " + table + " where visit_id = ?", visitId)
                .mapTo(Integer.class)
                .one();
        return EntryRow.of(table, id, visitId, person, madeAt).set("place_in_list", place);
    }
}
