package cornerbook.app.book.visit;

import static cornerbook.app.book.store.Transactions.within;

import cornerbook.app.book.car.CarLedger;
import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.Transactions;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Mileage;
import cornerbook.core.car.Visit;
import cornerbook.core.say.Amount;
import cornerbook.core.torque.TorqueSaid;
import cornerbook.core.torque.judge.Retorque;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Keeps the re-torques: open until recorded, or until the wheels are touched again and a new one supersedes them. */
public final class RetorqueLedger {
    private static final double MOST_TORQUE_NM = 1000;

    /** What a customer is called about. */
    private static final String RETORQUE = "RETORQUE";

    private static final String ABOUT = "'" + RETORQUE + "'";
    private static final String ABOUT_VISIT = "retorque.visit_id";

    private static final String IS_OPEN =
            " where visit.cancelled = 0 and retorque.recorded_date is null and retorque.superseded_by is null";

    private static final String OPEN = """
            select retorque.visit_id, retorque.due_odometer_km, retorque.due_date,
                vehicle.name, vehicle.plate, vehicle.fastener_torque_nm,
                customer.id as customer_id, customer.name as customer_name, customer.phone,
                %s
            from retorque
                join visit on visit.id = retorque.visit_id
                join vehicle on vehicle.id = visit.vehicle_id
                join customer on customer.id = vehicle.customer_id""".formatted(CallAnswers.columns(ABOUT_VISIT, ABOUT)) + IS_OPEN;

    private static final String NOT_DECLINED =
            " and coalesce(" + CallAnswers.latest("answer", ABOUT_VISIT, ABOUT) + ", '') <> 'DECLINED'";

    private static final String SOONEST_FIRST = " order by retorque.due_date, retorque.visit_id";

    private final Transactions store;

    public RetorqueLedger(Transactions store) {
        this.store = store;
    }

    /**
     * The wheels or torques of a visit are new or others.
     *
     * @param history the car with this visit as it now is
     */
    public void change(CarHistory history, Visit visit) {
        store.write(handle -> {
            change(handle, history, visit);
            return visit;
        });
    }

    private static void change(Handle handle, CarHistory history, Visit visit) {
        handle.execute("update retorque set superseded_by = null where superseded_by = ?", visit.id());
        var due = Retorque.after(history, visit);
        if (due.isEmpty()) {
            handle.execute("delete from retorque where visit_id = ? and recorded_date is null", visit.id());
            return;
        }
        handle.execute(
                "insert into retorque (visit_id, due_odometer_km, due_date) values (?, ?, ?) on conflict (visit_id) do nothing",
                visit.id(),
                due.get().dueOdometerKm(),
                due.get().dueDate().toString());
        int place = history.visits().indexOf(visit);
        history.visits().subList(0, place).forEach(earlier -> supersede(handle, earlier, visit));
        history.visits().stream()
                .skip(place + 1L)
                .filter(later -> Retorque.after(history, later).isPresent())
                .findFirst()
                .ifPresent(later -> supersede(handle, visit, later));
    }

    private static void supersede(Handle handle, Visit visit, Visit by) {
        handle.execute(
                "update retorque set superseded_by = ? where visit_id = ? and recorded_date is null and superseded_by is null",
                by.id(),
                visit.id());
    }

    /** Days or odometers of visits are others: what is not recorded yet follows. */
    void rewrite(CarHistory history) {
        store.write(handle -> {
            rewrite(handle, history);
            return history;
        });
    }

    private static void rewrite(Handle handle, CarHistory history) {
        var visits = history.visits();
        for (int i = 0; i < visits.size(); i++) {
            var due = Retorque.after(history, visits.get(i));
            if (due.isEmpty()) {
                continue;
            }
            var later = visits.stream()
                    .skip(i + 1L)
                    .filter(other -> Retorque.after(history, other).isPresent())
                    .map(Visit::id)
                    .findFirst();
            handle.execute(
                    "update retorque set due_odometer_km = ?, due_date = ?, superseded_by = ? where visit_id = ? and recorded_date is null",
                    due.get().dueOdometerKm(),
                    due.get().dueDate().toString(),
                    later.orElse(null),
                    visits.get(i).id());
        }
    }

    /** Those that are due or will be, soonest first. */
    public List<OpenRetorque> listOpen() {
        return store.read(handle -> handle.select(OPEN + SOONEST_FIRST)
                .map((row, context) -> open(row))
                .list());
    }

    /** That of a visit. */
    public Optional<OpenRetorque> findOpen(String visitId) {
        return store.read(handle -> handle.select(OPEN + " and retorque.visit_id = ?", visitId)
                .map((row, context) -> open(row))
                .findFirst());
    }

    /**
     * A page of those that customers are to be called for.
     *
     * @param all how many there are on all pages
     */
    public record ToCall(List<OpenRetorque> list, int all) {
        public ToCall {
            list = List.copyOf(list);
        }
    }

    /**
     * Those that are due or will be and whose customer has not declined, soonest first.
     *
     * @param from how many are passed over, 0 and more
     * @param most how many are told
     */
    public ToCall listToCall(int from, int most) {
        return store.read(handle -> new ToCall(
                handle.select(OPEN + NOT_DECLINED + SOONEST_FIRST + " limit ? offset ?", most, from)
                        .map((row, context) -> open(row))
                        .list(),
                handle.select("select count(*) from retorque join visit on visit.id = retorque.visit_id" + IS_OPEN
                                + NOT_DECLINED)
                        .mapTo(Integer.class)
                        .one()));
    }

    private static OpenRetorque open(ResultSet row) throws SQLException {
        var torqueNm = (Double) row.getObject("fastener_torque_nm");
        return new OpenRetorque(
                row.getString("visit_id"),
                row.getString("name"),
                row.getString("plate"),
                row.getDouble("due_odometer_km"),
                LocalDate.parse(row.getString("due_date")),
                torqueNm,
                new TorqueSaid.TightenedTo(torqueNm == null ? null : Amount.of(torqueNm, "N·m")),
                new OpenRetorque.Contact(
                        row.getString("customer_id"),
                        row.getString("customer_name"),
                        row.getString("phone"),
                        CallAnswers.last(row)));
    }

    /**
     * What came of asking a customer to come back; what was said already, by its id, counts once.
     *
     * @throws BookException when no re-torque of the visit is open
     */
    public Arrival answer(String id, String visitId, CallAnswer answer) {
        if (!isOpen(visitId)) {
            throw new BookException(new VisitSaid.NoOpenRetorque(visitId));
        }
        return store.write(handle -> CallAnswers.add(handle, id, visitId, RETORQUE, answer));
    }

    /** The visit that fitted the wheels on which a car came in though they were due to be tightened again, and nobody recorded it. */
    public Optional<String> findMissed(CarHistory history, Visit visit) {
        return Retorque.dueOnArrival(history, visit).map(Retorque::visitId).filter(this::isOpen);
    }

    private boolean isOpen(String visitId) {
        return store.read(handle -> handle.select(
                        "select 1 from retorque where visit_id = ? and recorded_date is null and superseded_by is null",
                        visitId)
                .mapTo(Integer.class)
                .findFirst()
                .isPresent());
    }

    /**
     * The wheels were tightened again.
     *
     * @param person who did it; null where nobody is named
     * @throws BookException when none is open, or date, odometer or torque cannot be
     */
    public void record(String visitId, LocalDate date, double odometerKm, double torqueNm, @Nullable String person) {
        store.write(handle -> record(handle, visitId, new RecordedRetorque(date, odometerKm, torqueNm, person)));
    }

    /** How the wheels of a visit were tightened again; empty while nobody recorded it. */
    public Optional<RecordedRetorque> findRecorded(String visitId) {
        return store.read(handle -> handle.select("""
            select recorded_date, recorded_odometer_km, recorded_torque_nm, recorded_by
            from retorque where visit_id = ? and recorded_date is not null
            """, visitId)
                .map((row, context) -> new RecordedRetorque(
                        LocalDate.parse(row.getString("recorded_date")),
                        (Double) row.getObject("recorded_odometer_km"),
                        (Double) row.getObject("recorded_torque_nm"),
                        row.getString("recorded_by")))
                .findFirst());
    }

    /**
     * The wheels were tightened again to the torque that is asked for; the odometer is not known.
     *
     * @param person who did it; null where nobody is named
     * @throws BookException when none is open, or the day is before that of the visit
     */
    public void confirm(String visitId, LocalDate date, @Nullable String person) {
        store.write(handle -> {
            var visit = new CarLedger(within(handle)).getOfVisit(visitId).getVisit(visitId);
            if (date.isBefore(visit.date())) {
                throw tooEarly(date, visit.odometerKm(), visit);
            }
            return keep(handle, visitId, new RecordedRetorque(date, null, null, person));
        });
    }

    /** Those that were confirmed on a day without figures, by the visit. */
    public List<ConfirmedRetorque> listConfirmed(LocalDate date) {
        return store.read(handle -> handle.select("""
            select retorque.visit_id, vehicle.name, vehicle.plate, recorded_by
            from retorque
                join visit on visit.id = retorque.visit_id
                join vehicle on vehicle.id = visit.vehicle_id
            where visit.cancelled = 0 and recorded_date = ? and recorded_torque_nm is null
            order by vehicle.name
            """, date.toString())
                .map((row, context) -> new ConfirmedRetorque(
                        row.getString("visit_id"),
                        row.getString("name"),
                        row.getString("plate"),
                        row.getString("recorded_by")))
                .list());
    }

    /** It was confirmed by mistake on that day, and is due as before. */
    public void takeBack(String visitId, LocalDate date) {
        store.write(handle -> handle.execute(
                "update retorque set recorded_date = null, recorded_by = null where visit_id = ? and recorded_date = ? and recorded_torque_nm is null",
                visitId,
                date.toString()));
    }

    private static int record(Handle handle, String visitId, RecordedRetorque again) {
        double odometerKm = Objects.requireNonNull(again.odometerKm());
        double torqueNm = Objects.requireNonNull(again.torqueNm());
        var date = again.date();
        var history = new CarLedger(within(handle)).getOfVisit(visitId);
        var visit = history.getVisit(visitId);
        boolean replaced = history.visits().stream()
                .filter(later -> later.date().isAfter(visit.date()))
                .anyMatch(later -> Mileage.replacedOdometerKm(later).isPresent());
        if (date.isBefore(visit.date()) || (odometerKm < visit.odometerKm() && !replaced)) {
            throw tooEarly(date, odometerKm, visit);
        }
        if (!(torqueNm > 0 && torqueNm <= MOST_TORQUE_NM)) {
            throw new BookException(new VisitSaid.RetorqueOutOfRange(
                    Amount.exact(torqueNm, "N·m"), Amount.of(0, "N·m"), Amount.of(MOST_TORQUE_NM, "N·m")));
        }
        return keep(handle, visitId, again);
    }

    private static BookException tooEarly(LocalDate date, double odometerKm, Visit visit) {
        return new BookException(new VisitSaid.RetorqueTooEarly(
                date, Amount.of(odometerKm, "km"), visit.date(), Amount.of(visit.odometerKm(), "km")));
    }

    private static int keep(Handle handle, String visitId, RecordedRetorque again) {
        int changed = handle.execute(
                "update retorque set recorded_date = ?, recorded_odometer_km = ?, recorded_torque_nm = ?, recorded_by = ? where visit_id = ? and recorded_date is null and superseded_by is null",
                again.date().toString(),
                again.odometerKm(),
                again.torqueNm(),
                again.person(),
                visitId);
        if (changed == 0) {
            throw new BookException(new VisitSaid.NoOpenRetorque(visitId));
        }
        return changed;
    }
}
