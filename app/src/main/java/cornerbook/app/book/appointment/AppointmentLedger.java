package cornerbook.app.book.appointment;

import cornerbook.app.book.appointment.Appointment.Because;
import cornerbook.app.book.car.CarSaid;
import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.Transactions;
import cornerbook.core.days.PlannedWork;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Which cars are to come when. An appointment is moved and called off by what is added to it; nothing of it goes. */
public final class AppointmentLedger {
    /** Further ahead nobody plans. Common practice, no source. */
    private static final int MOST_YEARS_AHEAD = 2;

    private static final String LATEST =
            " agreed.turn = (select max(turn) from appointment as later where later.appointment_id = agreed.appointment_id)";

    /** Whether the row holds: what stood before it was never kept by the car. */
    private static final String HOLDS = " case when" + LATEST + " then 1 else 0 end as holds";

    private static final String SELECT =
            "select agreed.*, vehicle.name, vehicle.plate, vehicle.electric, vehicle.hybrid,"
                    + " customer.id as customer_id, customer.name as customer_name, customer.phone,"
                    + " (select min(visit.id) from visit where visit.vehicle_id = agreed.vehicle_id and visit.visit_date = agreed.day and visit.cancelled = 0) as visit_id,"
                    + HOLDS
                    + " from appointment as agreed join vehicle on vehicle.id = agreed.vehicle_id join customer on customer.id = vehicle.customer_id where ";

    private final Transactions store;

    public AppointmentLedger(Transactions store) {
        this.store = store;
    }

    /** Those of some days as they stand, by day and time; a car that comes at any time stands first. */
    public List<Appointment> list(LocalDate first, LocalDate last) {
        return store.read(handle -> handle.select(
                        SELECT + "agreed.day between ? and ? and" + LATEST
                                + " order by agreed.day, coalesce(agreed.starts, ''), vehicle.name, agreed.appointment_id",
                        first.toString(),
                        last.toString())
                .map((row, context) -> read(row))
                .list());
    }

    /** Those of a car as they stand, the latest day first. */
    public List<Appointment> listOf(String vehicleId) {
        return store.read(handle -> handle.select(
                        SELECT + "agreed.vehicle_id = ? and" + LATEST
                                + " order by agreed.day desc, coalesce(agreed.starts, ''), agreed.appointment_id",
                        vehicleId)
                .map((row, context) -> read(row))
                .list());
    }

    /** An appointment as it stands. */
    public Optional<Appointment> find(String id) {
        return store.read(handle -> find(handle, id));
    }

    /** How an appointment stood, earliest first; empty when there is none. */
    public List<Appointment> listTurns(String id) {
        return store.read(handle -> handle.select(SELECT + "agreed.appointment_id = ? order by agreed.turn", id)
                .map((row, context) -> read(row))
                .list());
    }

    /**
     * A new appointment; sent again it counts once.
     *
     * @param state asked or booked
     * @param today no day before it is taken
     * @throws BookException when there is no such car, it is to come on that day already, or the day is past or too far
     */
    public Arrival make(
            String id, String vehicleId, AppointmentState state, Plan plan, Because because, LocalDate today) {
        refuseDay(plan.day(), today);
        return store.write(handle -> make(handle, id, vehicleId, state, plan, because));
    }

    private static Arrival make(
            Handle handle, String id, String vehicleId, AppointmentState state, Plan plan, Because because) {
        if (find(handle, id).isPresent()) {
            return Arrival.ALREADY;
        }
        if (handle.select("select 1 from vehicle where id = ?", vehicleId)
                .mapTo(Integer.class)
                .findFirst()
                .isEmpty()) {
            throw new BookException(new CarSaid.NoCar(vehicleId));
        }
        refuseSecond(handle, id, vehicleId, plan.day());
        row(id, id, 0, vehicleId, state, plan, because).insert(handle);
        return Arrival.STORED;
    }

    /**
     * Another plan; what was called off or missed is booked anew by it.
     *
     * @param entryId of what is changed; sent again it counts once
     * @param seenTurn that the person saw
     * @throws BookException when the reason is missing, somebody has changed it since, the car has come, or the day cannot be
     */
    public Arrival change(String entryId, String id, int seenTurn, Plan plan, Because because, LocalDate today) {
        requireReason(because);
        return store.write(handle -> change(handle, entryId, id, seenTurn, plan, because, today));
    }

    private static Arrival change(
            Handle handle, String entryId, String id, int seenTurn, Plan plan, Because because, LocalDate today) {
        return add(handle, entryId, id, seenTurn, because, before -> {
            if (!plan.day().equals(before.plan().day())) {
                refuseDay(plan.day(), today);
            }
            refuseSecond(handle, id, before.car().id(), plan.day());
            var state = before.state() == AppointmentState.ASKED ? AppointmentState.ASKED : AppointmentState.BOOKED;
            return new Stands(state, plan);
        });
    }

    /**
     * A whole plan of many appointments: all of it or nothing.
     *
     * @throws BookException when one of them was changed since it was seen, its car has come, or its day cannot be
     */
    public void accept(List<PlannedTurn> planned, LocalDate today) {
        store.write(handle -> {
            for (var each : planned) {
                if (each.isNew()) {
                    refuseDay(each.plan().day(), today);
                    make(handle, each.id(), each.vehicleId(), AppointmentState.ASKED, each.plan(), each.because());
                } else {
                    change(handle, each.entryId(), each.id(), each.seenTurn(), each.plan(), each.because(), today);
                }
            }
            return planned.size();
        });
    }

    /** The day that was asked for is confirmed. */
    public Arrival confirm(String entryId, String id, int seenTurn, Because because) {
        return store.write(handle -> add(
                handle, entryId, id, seenTurn, because, before -> new Stands(AppointmentState.BOOKED, before.plan())));
    }

    /**
     * The car did not come.
     *
     * @throws BookException when the day has not been
     */
    public Arrival miss(String entryId, String id, int seenTurn, Because because, LocalDate today) {
        return store.write(handle -> add(handle, entryId, id, seenTurn, because, before -> {
            if (before.plan().day().isAfter(today)) {
                throw new BookException(
                        new AppointmentSaid.NotYetMissed(before.plan().day()));
            }
            return new Stands(AppointmentState.MISSED, before.plan());
        }));
    }

    /**
     * It will not come.
     *
     * @throws BookException when the reason is missing
     */
    public Arrival callOff(String entryId, String id, int seenTurn, Because because) {
        requireReason(because);
        return store.write(handle -> add(
                handle,
                entryId,
                id,
                seenTurn,
                because,
                before -> new Stands(AppointmentState.CALLED_OFF, before.plan())));
    }

    private record Stands(AppointmentState state, Plan plan) {}

    private interface Change {
        Stands of(Appointment before);
    }

    private static Arrival add(Handle handle, String entryId, String id, int seenTurn, Because because, Change change) {
        if (handle.select("select 1 from appointment where id = ?", entryId)
                .mapTo(Integer.class)
                .findFirst()
                .isPresent()) {
            return Arrival.ALREADY;
        }
        var before = find(handle, id).orElseThrow(() -> new BookException(new AppointmentSaid.NoAppointment()));
        if (before.turn() != seenTurn) {
            throw new BookException(new AppointmentSaid.ChangedMeanwhile());
        }
        if (before.state() == AppointmentState.CAME) {
            throw new BookException(new AppointmentSaid.HasCome());
        }
        var after = change.of(before);
        row(entryId, id, seenTurn + 1, before.car().id(), after.state(), after.plan(), because)
                .insert(handle);
        return Arrival.STORED;
    }

    private static void requireReason(Because because) {
        if (because.reason() == null || because.reason().isBlank()) {
            throw new BookException(new AppointmentSaid.ReasonMissing());
        }
    }

    private static void refuseDay(LocalDate day, LocalDate today) {
        if (day.isBefore(today)) {
            throw new BookException(new AppointmentSaid.DayIsPast(day, today));
        }
        var last = today.plusYears(MOST_YEARS_AHEAD);
        if (day.isAfter(last)) {
            throw new BookException(new AppointmentSaid.DayTooFar(day, last));
        }
    }

    private static void refuseSecond(Handle handle, String id, String vehicleId, LocalDate day) {
        handle
                .select(SELECT + "agreed.vehicle_id = ? and agreed.day = ? and" + LATEST, vehicleId, day.toString())
                .map((row, context) -> read(row))
                .stream()
                .filter(other -> !other.id().equals(id) && other.state().isOpen())
                .findFirst()
                .ifPresent(other -> {
                    throw new BookException(
                            new AppointmentSaid.AlreadyThatDay(other.car().name(), day));
                });
    }

    private static Optional<Appointment> find(Handle handle, String id) {
        return handle.select(SELECT + "agreed.appointment_id = ? and" + LATEST, id)
                .map((row, context) -> read(row))
                .findFirst();
    }

    private static TableRow row(
            String entryId, String id, int turn, String vehicleId, AppointmentState state, Plan plan, Because because) {
        return new TableRow("appointment")
                .set("id", entryId)
                .set("appointment_id", id)
                .set("turn", turn)
                .set("vehicle_id", vehicleId)
                .set("state", state)
                .set("day", plan.day())
                .set("starts", plan.time())
                .set("work", plan.work())
                .set("minutes", plan.minutes())
                .set("hoist", plan.hoist())
                .set("worker", plan.worker())
                .set("note", plan.note())
                .set("reason", because.reason())
                .set("person", because.person())
                .set("made_at", because.madeAt());
    }

    private static Appointment read(ResultSet row) throws SQLException {
        var visitId = row.getString("visit_id");
        var said = AppointmentState.valueOf(row.getString("state"));
        return new Appointment(
                row.getString("appointment_id"),
                row.getInt("turn"),
                car(row),
                row.getInt("holds") == 1 && said != AppointmentState.CALLED_OFF && visitId != null
                        ? AppointmentState.CAME
                        : said,
                new Plan(
                        LocalDate.parse(row.getString("day")),
                        time(row.getString("starts")),
                        PlannedWork.valueOf(row.getString("work")),
                        row.getInt("minutes"),
                        row.getString("hoist"),
                        row.getString("worker"),
                        row.getString("note")),
                new Because(row.getString("reason"), row.getString("person"), Instant.parse(row.getString("made_at"))),
                visitId);
    }

    static Appointment.Car car(ResultSet row) throws SQLException {
        return new Appointment.Car(
                row.getString("vehicle_id"),
                row.getString("name"),
                row.getString("plate"),
                row.getString("customer_id"),
                row.getString("customer_name"),
                row.getString("phone"),
                mayHaveHighVoltage(row));
    }

    /** As {@code Vehicle.mayHaveHighVoltage} has it. */
    private static boolean mayHaveHighVoltage(ResultSet row) throws SQLException {
        var electric = row.getObject("electric");
        var hybrid = row.getObject("hybrid");
        return isSet(electric) || isSet(hybrid) || (electric == null && hybrid == null);
    }

    private static boolean isSet(@Nullable Object flag) {
        return flag instanceof Number number && number.intValue() == 1;
    }

    private static @Nullable LocalTime time(@Nullable String text) {
        return text == null ? null : LocalTime.parse(text);
    }
}
