package cornerbook.app.book.visit;

import static cornerbook.app.book.store.Transactions.within;

import cornerbook.app.book.car.CarLedger;
import cornerbook.app.book.car.CarReader;
import cornerbook.app.book.car.CarSaid;
import cornerbook.app.book.car.CarWriter;
import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.TakenIds;
import cornerbook.app.book.store.Transactions;
import cornerbook.app.book.visit.VisitValue.Standing;
import cornerbook.core.assess.VisitRules;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.JobCard;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Problem;
import cornerbook.core.say.Said;
import cornerbook.core.tread.judge.StoredWheelCheck;
import cornerbook.core.tread.judge.StoredWheelCheck.Identity;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** When cars were here, on which wheels they came and left, and what was put right of that. */
public final class VisitLedger {
    private final Transactions store;

    public VisitLedger(Transactions store) {
        this.store = store;
    }

    /** One visit without the rest of its car's history. */
    public Optional<Visit> find(String visitId) {
        return store.read(handle -> new CarReader(handle).findVisit(visitId));
    }

    /** The visit of the latest day; one of them where that day has several, none in a book without visits. */
    public Optional<String> findLatest() {
        return store.read(
                handle -> handle.select("select id from visit where cancelled = 0 order by visit_date desc limit 1")
                        .mapTo(String.class)
                        .findOne());
    }

    /** The visits of a day. */
    public List<VisitSummary> list(LocalDate date) {
        return list(date, 0, Integer.MAX_VALUE);
    }

    /**
     * A page of the visits of a day.
     *
     * @param from how many are passed over, 0 and more
     * @param most how many are told
     */
    public List<VisitSummary> list(LocalDate date, int from, int most) {
        return store.read(handle -> handle.select(
                        "select visit.id as visit_id, vehicle.id as vehicle_id, vehicle.name, vehicle.plate, customer.name as customer_name, visit.visit_date, (select count(*) from reading where reading.visit_id = visit.id and "
                                + CarReader.STANDS + ") as readings, "
                                + VisitStates.COLUMNS
                                + " from visit join vehicle on vehicle.id = visit.vehicle_id join customer on customer.id = vehicle.customer_id where visit.visit_date = ? and visit.cancelled = 0 order by vehicle.name, visit.id limit ? offset ?",
                        date.toString(),
                        most,
                        from)
                .map((row, context) -> new VisitSummary(
                        row.getString("visit_id"),
                        row.getString("vehicle_id"),
                        row.getString("name"),
                        row.getString("plate"),
                        row.getString("customer_name"),
                        LocalDate.parse(row.getString("visit_date")),
                        row.getInt("readings"),
                        VisitStates.read(row)))
                .list());
    }

    /** How many visits a day has. */
    public int count(LocalDate date) {
        return store.read(handle -> handle.select(
                        "select count(*) from visit where visit_date = ? and cancelled = 0", date.toString())
                .mapTo(Integer.class)
                .one());
    }

    /** Where the car of a visit is. */
    public VisitState getState(String visitId) {
        return store.read(handle -> new VisitStates(handle).get(visitId));
    }

    /**
     * A person says where the car of a visit is.
     *
     * @param id of what is said; said again it counts once
     * @param person may be empty at the desk, where nobody is known
     * @throws BookException when there is no such visit, or it is said to be gone: that is its hand-over
     */
    public Arrival say(String id, String visitId, VisitState state, String person, Instant madeAt) {
        if (!VisitState.byHand().contains(state)) {
            throw new BookException(new VisitSaid.GoneByHandOver());
        }
        return store.write(handle -> {
            new CarLedger(within(handle)).requireVisit(visitId);
            return new VisitStates(handle).say(id, visitId, state, person, madeAt);
        });
    }

    /** What was put right of a car's visits, earliest first. */
    public List<VisitChange> listChanges(String vehicleId) {
        return store.read(handle -> new VisitChanges(handle, vehicleId).list());
    }

    /** A new visit of a car that is in the book. */
    public void add(String vehicleId, Visit visit) {
        store.write(handle -> {
            var history = new CarReader(handle)
                    .find(vehicleId)
                    .orElseThrow(() -> new BookException(new CarSaid.NoCar(vehicleId)));
            var visits = new ArrayList<>(history.visits());
            visits.add(visit);
            var longer = with(history, visits);
            refuseProblems(longer);
            new TakenIds(handle).refuse(vehicleId, visit);
            new CarWriter(handle).writeVisits(vehicleId, List.of(visit));
            new RetorqueLedger(within(handle)).change(longer, visit);
            return visit;
        });
    }

    /**
     * Which wheels the car leaves on, and readings that were typed with them, all or none. Opens the re-torque. Where others
     * stood recorded, the book keeps them.
     *
     * @param identities what was read off wheels that came out of the store
     * @param because why others are recorded, and by whom
     * @throws BookException when a stored wheel differs from its take-off, a wheel is at two corners, or a reading cannot stand
     */
    public void recordLeaving(
            String visitId,
            Map<Corner, String> leftOn,
            List<Identity> identities,
            List<Reading> readings,
            Because because) {
        store.write(handle -> {
            var history = new CarLedger(within(handle)).getOfVisit(visitId);
            var visit = history.getVisit(visitId);
            var placed = new PlacedReadings(visit, leftOn);
            var left = placed.visit().withLeftOn(leftOn);
            var changed = replaced(history, left);
            refuseProblems(changed);
            refuseOtherWheels(history, visit, leftOn, identities);
            new CarWriter(handle).replaceWheels(left);
            if (!visit.leftOn().isEmpty()) {
                new VisitChanges(handle, history.vehicle().id()).keepChanged(visit, left, because);
            }
            new RetorqueLedger(within(handle)).change(changed, left);
            placed.write(handle);
            return new ReadingLedger(within(handle)).add(changed, visitId, readings);
        });
    }

    private static void refuseOtherWheels(
            CarHistory history, Visit visit, Map<Corner, String> leftOn, List<Identity> identities) {
        for (var tag : leftOn.values()) {
            if (!visit.arrivedOn().containsValue(tag)) {
                StoredWheelCheck.compareDepths(history, visit, tag).ifPresent(VisitLedger::refuse);
                identities.stream()
                        .filter(identity -> identity.wheelTag().equals(tag))
                        .flatMap(identity -> history.findWheel(tag).stream()
                                .flatMap(wheel -> StoredWheelCheck.compareIdentity(wheel, identity).stream()))
                        .forEach(VisitLedger::refuse);
            }
        }
    }

    /**
     * Puts right what the book has of a visit, all but its readings: day, odometer, technician, notes, and the wheels that the
     * car came and left on. The book keeps what stood there, with reason and name. Readings of a wheel that was not there go to
     * the one that was.
     *
     * @param seen the visit as the person saw it
     * @param after the visit as it is to stand
     * @throws BookException when somebody else has put it right since, or the visits could not stand so
     */
    public Arrival putRight(Visit seen, Visit after, Because because) {
        return store.write(handle -> {
            var history = new CarLedger(within(handle)).getOfVisit(seen.id());
            var before = history.getVisit(seen.id());
            var changes = new VisitChanges(handle, history.vehicle().id());
            if (changes.has(because) || valuesOf(after).equals(valuesOf(before))) {
                return Arrival.ALREADY;
            }
            if (!valuesOf(seen).equals(valuesOf(before))) {
                throw new BookException(new VisitSaid.PutRightMeanwhile());
            }
            changes.apply(history, before, righted(before, after), because);
            return Arrival.STORED;
        });
    }

    /** A visit that was opened by mistake counts nowhere from now on; all that was entered at it is kept. */
    public void cancel(String visitId, Because because) {
        store.write(handle -> {
            var history = new CarLedger(within(handle)).getOfVisit(visitId);
            setCancelled(handle, history.vehicle().id(), visitId, true, because);
            handle.execute("update retorque set superseded_by = null where superseded_by = ?", visitId);
            new RetorqueLedger(within(handle))
                    .rewrite(new CarReader(handle).find(history.vehicle().id()).orElseThrow());
            return visitId;
        });
    }

    /**
     * A cancelled visit counts again.
     *
     * @throws BookException when it is not cancelled, or the visits could not stand so
     */
    public void restore(String visitId, Because because) {
        store.write(handle -> {
            var cancelled = findCancelled(handle, "visit.id", visitId).stream()
                    .findFirst()
                    .orElseThrow(() -> new BookException(new CarSaid.NoVisit(visitId)));
            setCancelled(handle, cancelled.vehicleId(), visitId, false, because);
            var history = new CarLedger(within(handle)).getOfVisit(visitId);
            refuseProblems(history);
            var retorques = new RetorqueLedger(within(handle));
            retorques.change(history, history.getVisit(visitId));
            retorques.rewrite(history);
            return visitId;
        });
    }

    private static void setCancelled(
            Handle handle, String vehicleId, String visitId, boolean cancelled, Because because) {
        new VisitChanges(handle, vehicleId)
                .keepChanged(
                        visitId,
                        VisitValue.STANDING,
                        (cancelled ? Standing.COUNTS : Standing.CANCELLED).written(),
                        (cancelled ? Standing.CANCELLED : Standing.COUNTS).written(),
                        because);
        new TableRow("visit").set("id", visitId).set("cancelled", cancelled).update(handle, List.of("id"));
        new CarWriter(handle).countChange(visitId);
    }

    /** The cancelled visits of a car, earliest first. */
    public List<CancelledVisit> listCancelled(String vehicleId) {
        return store.read(handle -> findCancelled(handle, "visit.vehicle_id", vehicleId));
    }

    /** A visit that was cancelled; empty for one that counts, or is not in the book. */
    public Optional<CancelledVisit> findCancelled(String visitId) {
        return store.read(
                handle -> findCancelled(handle, "visit.id", visitId).stream().findFirst());
    }

    private static List<CancelledVisit> findCancelled(Handle handle, String column, String id) {
        return handle.select(
                        "select visit.*, (select count(*) from reading where reading.visit_id = visit.id) as readings from visit where cancelled = 1 and "
                                + column + " = ? order by visit_date, odometer_km",
                        id)
                .map((row, context) -> new CancelledVisit(
                        row.getString("id"),
                        row.getString("vehicle_id"),
                        LocalDate.parse(row.getString("visit_date")),
                        row.getDouble("odometer_km"),
                        row.getInt("readings"),
                        new VisitChanges(handle, row.getString("vehicle_id"))
                                .getLast(row.getString("id"), VisitValue.STANDING)))
                .list();
    }

    private static Visit righted(Visit before, Visit after) {
        var card = before.card();
        return before.withOdometer(after.date(), after.odometerKm())
                .withArrivedOn(after.arrivedOn())
                .withLeftOn(after.leftOn())
                .withCard(new JobCard(
                        after.card().technician(),
                        card.workDone(),
                        after.card().notes(),
                        card.nextVisitDue(),
                        card.tools()));
    }

    private static List<String> valuesOf(Visit visit) {
        return Arrays.stream(VisitValue.values())
                .map(value -> value.write(visit))
                .toList();
    }

    public static void refuseProblems(CarHistory history) {
        refuse(VisitRules.check(history, LocalDate.MAX));
    }

    public static CarHistory replaced(CarHistory history, Visit visit) {
        return with(
                history,
                history.visits().stream()
                        .map(other -> other.id().equals(visit.id()) ? visit : other)
                        .toList());
    }

    private static CarHistory with(CarHistory history, List<Visit> visits) {
        return new CarHistory(history.vehicle(), history.customer(), history.sets(), visits);
    }

    public static void refuse(List<Problem> problems) {
        problems.stream().findFirst().ifPresent(problem -> refuse(problem.message()));
    }

    private static void refuse(Said sentence) {
        throw new BookException(sentence);
    }
}
