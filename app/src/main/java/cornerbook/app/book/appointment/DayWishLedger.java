package cornerbook.app.book.appointment;

import static cornerbook.app.book.store.Transactions.within;

import cornerbook.app.book.appointment.Appointment.Because;
import cornerbook.app.book.appointment.DayAsking.Wish;
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

/** Which customers were asked for a day, what they would like, and what became of it. Nobody whose data were erased is among them. */
public final class DayWishLedger {
    private static final String ASKING =
            "select asking.id as asking_id, asking.vehicle_id, asking.work, asking.minutes, asking.until, asking.language,"
                    + " asking.person as asked_by, asking.made_at as asked_at, vehicle.name, vehicle.plate, vehicle.electric, vehicle.hybrid,"
                    + " customer.id as customer_id, customer.name as customer_name, customer.phone%s"
                    + " from day_asking as asking join vehicle on vehicle.id = asking.vehicle_id join customer on customer.id = vehicle.customer_id%s"
                    + " where not exists (select 1 from customer_erased where customer_erased.customer_id = customer.id) and ";

    private static final String OF_ASKING = ASKING.formatted("", "");

    private static final String OF_WISH = ASKING.formatted(
                    ", wish.id as wish_id, wish.day, wish.starts, wish.made_at as wished_at,"
                            + " case when exists (select 1 from day_wish_answer where day_wish_answer.wish_id = wish.id) then 1 else 0 end as answered",
                    " join day_wish as wish on wish.asking_id = asking.id")
            + " wish.place_in_list = (select max(place_in_list) from day_wish as later where later.asking_id = asking.id) and ";

    private final Transactions store;

    public DayWishLedger(Transactions store) {
        this.store = store;
    }

    /** A customer is asked; the book keeps the hash of the secret alone. */
    public void ask(
            String id,
            String vehicleId,
            String secretHash,
            PlannedWork work,
            int minutes,
            LocalDate until,
            String language,
            @Nullable String person,
            Instant at) {
        store.write(handle -> {
            new TableRow("day_asking")
                    .set("id", id)
                    .set("vehicle_id", vehicleId)
                    .set("secret_hash", secretHash)
                    .set("work", work)
                    .set("minutes", minutes)
                    .set("until", until)
                    .set("language", language)
                    .set("person", person)
                    .set("made_at", at)
                    .insert(handle);
            return id;
        });
    }

    /** What was asked under a secret. */
    public Optional<DayAsking> findBySecret(String secretHash) {
        return store.read(handle -> handle.select(OF_ASKING + "asking.secret_hash = ?", secretHash)
                .map((row, context) -> asking(row))
                .findFirst());
    }

    /** What a customer answered last. */
    public Optional<Wish> findWish(String askingId) {
        return store.read(handle -> handle.select(OF_WISH + "asking.id = ?", askingId)
                .map((row, context) -> wish(row))
                .findFirst());
    }

    /** Those that wait for the shop, those that came first before the others. */
    public List<Wish> listWaiting() {
        return store.read(handle -> handle.select(
                        OF_WISH
                                + "not exists (select 1 from day_wish_answer where day_wish_answer.wish_id = wish.id) order by wish.made_at, wish.id")
                .map((row, context) -> wish(row))
                .list());
    }

    /**
     * A customer would like this; the same again, by its id, counts once.
     *
     * @param day null to be called
     * @throws BookException when the shop has answered already
     */
    public Arrival wish(String id, DayAsking asking, @Nullable LocalDate day, @Nullable LocalTime time, Instant at) {
        return store.write(handle -> {
            if (TableRow.count(handle, "day_wish where id = ?", id) > 0) {
                return Arrival.ALREADY;
            }
            if (TableRow.count(
                            handle,
                            "day_wish_answer join day_wish on day_wish.id = day_wish_answer.wish_id where day_wish.asking_id = ?",
                            asking.id())
                    > 0) {
                throw new BookException(new AppointmentSaid.WishIsAnswered());
            }
            new TableRow("day_wish")
                    .set("id", id)
                    .set("asking_id", asking.id())
                    .set("place_in_list", TableRow.count(handle, "day_wish where asking_id = ?", asking.id()))
                    .set("day", day)
                    .set("starts", time)
                    .set("made_at", at)
                    .insert(handle);
            return Arrival.STORED;
        });
    }

    /**
     * A wish becomes an appointment, of the same id.
     *
     * @throws BookException when it was answered or changed meanwhile, names no day, or the day cannot be
     */
    public void book(String wishId, @Nullable String hoist, @Nullable String worker, Because because, LocalDate today) {
        store.write(handle -> {
            var wish = waiting(handle, wishId);
            var day = wish.day();
            if (day == null) {
                throw new BookException(new AppointmentSaid.WishIsAnswered());
            }
            new AppointmentLedger(within(handle))
                    .make(
                            wish.id(),
                            wish.asking().car().id(),
                            AppointmentState.BOOKED,
                            new Plan(
                                    day,
                                    wish.time(),
                                    wish.asking().work(),
                                    wish.asking().minutes(),
                                    hoist,
                                    worker,
                                    ""),
                            because,
                            today);
            answer(handle, wishId, "BOOKED", because);
            return wishId;
        });
    }

    /**
     * The shop has spoken with the customer, or agreed another day.
     *
     * @throws BookException when it was answered or changed meanwhile
     */
    public void setAside(String wishId, Because because) {
        store.write(handle -> {
            waiting(handle, wishId);
            answer(handle, wishId, "SET_ASIDE", because);
            return wishId;
        });
    }

    private static Wish waiting(Handle handle, String wishId) {
        return handle.select(OF_WISH + "wish.id = ?", wishId)
                .map((row, context) -> wish(row))
                .findFirst()
                .filter(wish -> !wish.answered())
                .orElseThrow(() -> new BookException(new AppointmentSaid.WishIsAnswered()));
    }

    private static void answer(Handle handle, String wishId, String answer, Because because) {
        new TableRow("day_wish_answer")
                .set("wish_id", wishId)
                .set("answer", answer)
                .set("person", because.person())
                .set("made_at", because.madeAt())
                .insert(handle);
    }

    private static DayAsking asking(ResultSet row) throws SQLException {
        return new DayAsking(
                row.getString("asking_id"),
                AppointmentLedger.car(row),
                PlannedWork.valueOf(row.getString("work")),
                row.getInt("minutes"),
                LocalDate.parse(row.getString("until")),
                row.getString("language"),
                row.getString("asked_by"),
                Instant.parse(row.getString("asked_at")));
    }

    private static Wish wish(ResultSet row) throws SQLException {
        var day = row.getString("day");
        var time = row.getString("starts");
        return new Wish(
                row.getString("wish_id"),
                asking(row),
                day == null ? null : LocalDate.parse(day),
                time == null ? null : LocalTime.parse(time),
                Instant.parse(row.getString("wished_at")),
                row.getInt("answered") == 1);
    }
}
