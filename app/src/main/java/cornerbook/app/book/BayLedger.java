package cornerbook.app.book;

import cornerbook.core.visit.Reading;
import cornerbook.core.visit.Visit;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/**
 * What arrives from tablets in the bay. Each entry is one transaction and bears an id that was born at the tablet, so that
 * sending it twice stores it once.
 */
public final class BayLedger {
    private static final double SAME = 1e-9;

    private final BookStore store;

    BayLedger(BookStore store) {
        this.store = store;
    }

    /**
     * A reading from a tablet. Where another stands than the one that the tablet showed, it is kept beside it as a rival.
     *
     * @param reading corrects nothing when the tablet showed nothing
     * @throws BookException when it cannot stand
     */
    public Arrival addReading(String visitId, Reading reading, String person, Instant madeAt) {
        return store.write(handle -> {
            var readings = new ReadingLedger(handle);
            if (readings.find(reading.id()).isEmpty()
                    && findRival(handle, reading.id()).isPresent()) {
                return isAnswered(handle, reading.id()) ? Arrival.ALREADY : Arrival.CONFLICT;
            }
            var history = Book.getOfVisit(handle, visitId);
            var standing = standing(history.getVisit(visitId), reading);
            if (readings.find(reading.id()).isPresent()
                    || standing.isEmpty()
                    || standing.get().id().equals(reading.corrects())) {
                return readings.add(history, visitId, List.of(reading)).isEmpty() ? Arrival.ALREADY : Arrival.STORED;
            }
            var rival = new RivalReading(reading, standing.get().id(), person, madeAt);
            refuseUnsound(handle, visitId, rival);
            write(handle, visitId, rival);
            if (Math.abs(standing.get().value() - reading.value()) > SAME) {
                return Arrival.CONFLICT;
            }
            answer(handle, reading.id(), "AGREED", person, madeAt);
            return Arrival.STORED;
        });
    }

    /** All that was entered beside readings. */
    public BayNotes read(String visitId) {
        return store.read(handle -> new BayNotes(
                listRivals(handle, visitId),
                listTicks(handle, visitId),
                PhotoLedger.list(handle, visitId),
                findDeparture(handle, visitId)));
    }

    private static List<RivalReading> listRivals(Handle handle, String visitId) {
        return handle.select(
                        "select * from rival_reading where visit_id = ? and not exists (select 1 from rival_answer where rival_id = rival_reading.id) order by made_at, id",
                        visitId)
                .map((row, context) -> rival(row))
                .list();
    }

    /**
     * A person's answer to a rival reading.
     *
     * @param id of the answer; it becomes the id of the correction
     * @param take whether the rival counts; it then corrects what stands
     */
    public Arrival answerRival(String id, String rivalId, boolean take, String person, Instant madeAt) {
        return store.write(handle -> {
            if (isAnswered(handle, rivalId)) {
                return Arrival.ALREADY;
            }
            var visitId = handle.select("select visit_id from rival_reading where id = ?", rivalId)
                    .mapTo(String.class)
                    .findFirst()
                    .orElseThrow(() -> new BookException(
                            "No reading %s waits for an answer, expected one of two at one place".formatted(rivalId)));
            var rival = findRival(handle, rivalId).orElseThrow();
            if (take) {
                var history = Book.getOfVisit(handle, visitId);
                var standing = standing(history.getVisit(visitId), rival.reading());
                var correction = correcting(
                        rival.reading(),
                        id,
                        standing.map(Reading::id).orElse(rival.standingId()),
                        "Two readings were taken; this one by %s, chosen by %s.".formatted(rival.person(), person));
                new ReadingLedger(handle).add(history, visitId, List.of(correction));
            }
            answer(handle, rivalId, take ? "TAKEN" : "KEPT", person, madeAt);
            return Arrival.STORED;
        });
    }

    public Arrival addTick(String visitId, WorkTick tick) {
        return store.write(handle -> {
            Book.getOfVisit(handle, visitId);
            int added = handle.execute(
                    "insert into work_tick (id, visit_id, tick, done, person, made_at) values (?, ?, ?, ?, ?, ?) on conflict (id) do nothing",
                    tick.id(),
                    visitId,
                    tick.tick(),
                    tick.done() ? 1 : 0,
                    tick.person(),
                    tick.madeAt().toString());
            return added == 0 ? Arrival.ALREADY : Arrival.STORED;
        });
    }

    private static List<WorkTick> listTicks(Handle handle, String visitId) {
        return handle.select("select * from work_tick where visit_id = ? order by made_at, id", visitId)
                .map((row, context) -> new WorkTick(
                        row.getString("id"),
                        row.getString("tick"),
                        row.getInt("done") == 1,
                        row.getString("person"),
                        Instant.parse(row.getString("made_at"))))
                .list();
    }

    public Arrival addDeparture(String visitId, Departure departure) {
        return store.write(handle -> {
            Book.getOfVisit(handle, visitId);
            int added = handle.execute(
                    "insert into departure (id, visit_id, person, made_at) values (?, ?, ?, ?) on conflict (id) do nothing",
                    departure.id(),
                    visitId,
                    departure.person(),
                    departure.madeAt().toString());
            if (added == 0) {
                return Arrival.ALREADY;
            }
            departure
                    .reasons()
                    .forEach(reason -> handle.execute(
                            "insert into departure_reason (departure_id, caution, sentence, reason) values (?, ?, ?, ?)",
                            departure.id(),
                            reason.caution(),
                            reason.sentence(),
                            reason.reason()));
            return Arrival.STORED;
        });
    }

    /** The last hand-over of a visit; empty while the car is in the bay. */
    public Optional<Departure> findDeparture(String visitId) {
        return store.read(handle -> findDeparture(handle, visitId));
    }

    private static Optional<Departure> findDeparture(Handle handle, String visitId) {
        return handle.select(
                        "select * from departure where visit_id = ? order by made_at desc, id desc limit 1", visitId)
                .map((row, context) -> new Departure(
                        row.getString("id"),
                        row.getString("person"),
                        Instant.parse(row.getString("made_at")),
                        List.of()))
                .findFirst()
                .map(departure -> withReasons(handle, departure));
    }

    private static Departure withReasons(Handle handle, Departure departure) {
        var reasons = handle.select(
                        "select * from departure_reason where departure_id = ? order by caution", departure.id())
                .map((row, context) -> new Departure.Reason(
                        row.getString("caution"), row.getString("sentence"), row.getString("reason")))
                .list();
        return new Departure(departure.id(), departure.person(), departure.madeAt(), reasons);
    }

    /** A rival must be a reading that could stand, were the other not there. */
    private static void refuseUnsound(Handle handle, String visitId, RivalReading rival) {
        var history = Book.getOfVisit(handle, visitId);
        var visit = history.getVisit(visitId);
        var readings = new ArrayList<>(visit.readings());
        readings.add(correcting(rival.reading(), rival.reading().id(), rival.standingId(), "rival"));
        Book.refuseProblems(Book.replaced(history, visit.withReadings(readings)));
    }

    private static Optional<Reading> standing(Visit visit, Reading at) {
        var corrected = visit.readings().stream().map(Reading::corrects).toList();
        return visit.readings().stream()
                .filter(at::isAtSamePlaceAs)
                .filter(reading -> !corrected.contains(reading.id()))
                .reduce((first, last) -> last);
    }

    private static Reading correcting(Reading reading, String id, String corrects, String reason) {
        return new Reading(
                id,
                reading.measure(),
                reading.corner(),
                reading.wheelTag(),
                reading.spot(),
                reading.value(),
                reading.asWritten(),
                corrects,
                reason);
    }

    private static void write(Handle handle, String visitId, RivalReading rival) {
        var reading = rival.reading();
        handle.execute(
                "insert into rival_reading (id, visit_id, standing_id, measure, corner, wheel_tag, spot, amount, as_written, person, made_at) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                reading.id(),
                visitId,
                rival.standingId(),
                reading.measure().name(),
                CarWriter.text(reading.corner()),
                reading.wheelTag(),
                CarWriter.text(reading.spot()),
                reading.value(),
                reading.asWritten(),
                rival.person(),
                rival.madeAt().toString());
    }

    private static void answer(Handle handle, String rivalId, String answer, String person, Instant madeAt) {
        handle.execute(
                "insert into rival_answer (rival_id, answer, person, made_at) values (?, ?, ?, ?)",
                rivalId,
                answer,
                person,
                madeAt.toString());
    }

    private static boolean isAnswered(Handle handle, String rivalId) {
        return handle.select("select 1 from rival_answer where rival_id = ?", rivalId)
                .mapTo(Integer.class)
                .findFirst()
                .isPresent();
    }

    private static Optional<RivalReading> findRival(Handle handle, String id) {
        return handle.select("select * from rival_reading where id = ?", id)
                .map((row, context) -> rival(row))
                .findFirst();
    }

    private static RivalReading rival(ResultSet row) throws SQLException {
        return new RivalReading(
                CarReader.measured(row, null, null),
                row.getString("standing_id"),
                row.getString("person"),
                Instant.parse(row.getString("made_at")));
    }
}
