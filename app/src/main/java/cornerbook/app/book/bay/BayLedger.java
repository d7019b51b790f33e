package cornerbook.app.book.bay;

import static cornerbook.app.book.store.Transactions.within;

import cornerbook.app.book.car.CarLedger;
import cornerbook.app.book.car.CarReader;
import cornerbook.app.book.car.CarWriter;
import cornerbook.app.book.photo.PhotoLedger;
import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.Transactions;
import cornerbook.app.book.visit.ReadingLedger;
import cornerbook.app.book.visit.RetorqueLedger;
import cornerbook.app.book.visit.VisitLedger;
import cornerbook.app.book.work.Declined;
import cornerbook.app.book.work.Remark;
import cornerbook.app.book.work.StandingTicks;
import cornerbook.app.book.work.WorkTick;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.words.Reader;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/**
 * What arrives from tablets in the bay. Each entry is one transaction and bears an id that was born at the tablet, so that
 * sending it twice stores it once.
 */
public final class BayLedger {
    private static final double SAME = 1e-9;

    private final Transactions store;

    public BayLedger(Transactions store) {
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
            var readings = new ReadingLedger(within(handle));
            var rows = new BayRows(handle);
            if (readings.find(reading.id()).isEmpty()
                    && rows.findRival(reading.id()).isPresent()) {
                return rows.findAnswer(reading.id()).isPresent() ? Arrival.ALREADY : Arrival.CONFLICT;
            }
            var history = new CarLedger(within(handle)).getOfVisit(visitId);
            var standing = new StandingReadings(history.getVisit(visitId)).at(reading);
            if (readings.find(reading.id()).isPresent()
                    || standing.isEmpty()
                    || standing.get().id().equals(reading.corrects())) {
                if (readings.add(history, visitId, List.of(reading)).isEmpty()) {
                    return Arrival.ALREADY;
                }
                rows.add(new ReadingAuthor(reading.id(), person, madeAt));
                return Arrival.STORED;
            }
            var rival = new RivalReading(reading, standing.get().id(), person, madeAt);
            refuseUnsound(history, visitId, rival);
            rows.add(visitId, rival);
            if (Math.abs(standing.get().value() - reading.value()) > SAME) {
                return Arrival.CONFLICT;
            }
            rows.add(new RivalAnswer(null, reading.id(), RivalAnswer.Kind.AGREED, person, madeAt));
            return Arrival.STORED;
        });
    }

    /** All that was entered beside readings and waits or stands. */
    public BayNotes read(String visitId) {
        return store.read(handle -> notes(handle, visitId));
    }

    /** The visit with all that tablets show of it; empty when there is none of that id. */
    public Optional<VisitInBay> findVisit(String visitId) {
        return store.read(handle -> new CarReader(handle)
                .findVisit(visitId)
                .map(visit -> new VisitInBay(
                        visit, notes(handle, visitId), new CarLedger(within(handle)).placardsKpa(visitId))));
    }

    private static BayNotes notes(Handle handle, String visitId) {
        var rows = new BayRows(handle);
        return new BayNotes(
                rows.listRivals(visitId).stream()
                        .filter(rival -> rows.findAnswer(rival.reading().id()).isEmpty())
                        .toList(),
                rows.listTicks(visitId),
                new PhotoLedger(within(handle)).list(visitId),
                rows.listAuthors(visitId).stream()
                        .collect(Collectors.toMap(ReadingAuthor::readingId, Function.identity())),
                last(rows.listDepartures(visitId)),
                Remark.standing(rows.listRemarks(visitId)),
                Declined.standing(rows.listDeclined(visitId)));
    }

    /**
     * A person's answer to a rival reading.
     *
     * @param id of the answer; it becomes the id of the correction
     * @param take whether the rival counts; it then corrects what stands
     * @param reader of that person, in whose words the correction says why it was made
     * @throws BookException when the visit has no such rival, or somebody has decided otherwise
     */
    public Arrival answerRival(
            String id, String visitId, String rivalId, boolean take, String person, Instant madeAt, Reader reader) {
        return store.write(handle -> {
            var rows = new BayRows(handle);
            var rival = rows.findVisitOfRival(rivalId)
                    .filter(visitId::equals)
                    .flatMap(known -> rows.findRival(rivalId))
                    .orElseThrow(() -> new BookException(new BaySaid.NoRival(rivalId)));
            var kind = take ? RivalAnswer.Kind.TAKEN : RivalAnswer.Kind.KEPT;
            var before = rows.findAnswer(rivalId);
            if (before.isPresent()) {
                refuseOther(handle, rival, before.get(), id, kind);
                return Arrival.ALREADY;
            }
            if (take) {
                var history = new CarLedger(within(handle)).getOfVisit(visitId);
                var standing = new StandingReadings(history.getVisit(visitId)).at(rival.reading());
                var correction = correcting(
                        rival.reading(),
                        id,
                        standing.map(Reading::id).orElse(rival.standingId()),
                        reader.say(new BaySaid.Chosen(rival.person(), person)));
                new ReadingLedger(within(handle)).add(history, visitId, List.of(correction));
                rows.add(new ReadingAuthor(id, rival.person(), rival.madeAt()));
            }
            rows.add(new RivalAnswer(id, rivalId, kind, person, madeAt));
            return Arrival.STORED;
        });
    }

    /** The second person who answers is told what the first one decided, unless both say the same. */
    private static void refuseOther(
            Handle handle, RivalReading rival, RivalAnswer before, String id, RivalAnswer.Kind kind) {
        if (id.equals(before.id()) || before.kind() == kind || before.kind() == RivalAnswer.Kind.AGREED) {
            return;
        }
        var stood = new ReadingLedger(within(handle))
                .find(rival.standingId())
                .map(Reading::asWritten)
                .orElse(null);
        throw new BookException(new BaySaid.DecidedOtherwise(
                before.person(),
                before.kind() == RivalAnswer.Kind.TAKEN,
                rival.reading().asWritten(),
                stood));
    }

    /**
     * A step that was ticked or taken back. Where another tick stands than the one that the tablet showed, the careful one
     * wins: it is kept, and "not done" stands.
     *
     * @param shown id of the tick that the tablet showed; null when it showed none
     * @return conflict when "done" does not count, for somebody had taken the step back
     */
    public Arrival addTick(String visitId, WorkTick made, @Nullable String shown) {
        return store.write(handle -> {
            var rows = new BayRows(handle);
            var before = new CarLedger(within(handle)).getOfVisit(visitId).getVisit(visitId);
            var ticks = rows.listTicks(visitId);
            var standing = StandingTicks.of(ticks).find(made.tick(), made.wheelTag());
            boolean takenBack = standing.filter(tick -> !tick.done()).isPresent();
            boolean counts = !made.done() || !takenBack || standing.get().id().equals(shown);
            if (!rows.add(visitId, made.counting(counts))) {
                boolean overruled = ticks.stream().anyMatch(tick -> tick.id().equals(made.id()) && !tick.counts());
                return overruled && takenBack ? Arrival.CONFLICT : Arrival.ALREADY;
            }
            var changed = new CarLedger(within(handle)).getOfVisit(visitId);
            var after = changed.getVisit(visitId);
            if (!after.tightened().equals(before.tightened())) {
                new CarWriter(handle).countChange(visitId);
                new RetorqueLedger(within(handle)).change(changed, after);
            }
            return counts ? Arrival.STORED : Arrival.CONFLICT;
        });
    }

    public Arrival addRemark(String visitId, Remark remark) {
        return store.write(handle -> {
            new CarLedger(within(handle)).requireVisit(visitId);
            return new BayRows(handle).add(visitId, remark) ? Arrival.STORED : Arrival.ALREADY;
        });
    }

    public Arrival addDeclined(String visitId, Declined declined) {
        return store.write(handle -> {
            new CarLedger(within(handle)).requireVisit(visitId);
            return new BayRows(handle).add(visitId, declined) ? Arrival.STORED : Arrival.ALREADY;
        });
    }

    public Arrival addDeparture(String visitId, Departure departure) {
        return store.write(handle -> {
            new CarLedger(within(handle)).requireVisit(visitId);
            return new BayRows(handle).add(visitId, departure) ? Arrival.STORED : Arrival.ALREADY;
        });
    }

    /** The last hand-over of a visit; empty while the car is in the bay. */
    public Optional<Departure> findDeparture(String visitId) {
        return store.read(handle -> last(new BayRows(handle).listDepartures(visitId)));
    }

    private static Optional<Departure> last(List<Departure> departures) {
        return departures.isEmpty() ? Optional.empty() : Optional.of(departures.getLast());
    }

    /** A rival must be a reading that could stand, were the other not there. */
    private static void refuseUnsound(CarHistory history, String visitId, RivalReading rival) {
        var visit = history.getVisit(visitId);
        var readings = new ArrayList<>(visit.readings());
        readings.add(correcting(rival.reading(), rival.reading().id(), rival.standingId(), "rival"));
        VisitLedger.refuseProblems(VisitLedger.replaced(history, visit.withReadings(readings)));
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
}
