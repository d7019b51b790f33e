package cornerbook.app.book.coming;

import static cornerbook.app.book.store.Transactions.within;

import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.appointment.AppointmentLedger;
import cornerbook.app.book.appointment.AppointmentState;
import cornerbook.app.book.appointment.ClockedTimes;
import cornerbook.app.book.appointment.Plan;
import cornerbook.app.book.car.CarReader;
import cornerbook.app.book.coming.ComingCar.Due;
import cornerbook.app.book.coming.ComingCar.Missed;
import cornerbook.app.book.rack.StoredSets;
import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.Transactions;
import cornerbook.app.book.visit.CallAnswer;
import cornerbook.app.book.visit.CallAnswers;
import cornerbook.core.car.Customer;
import cornerbook.core.coming.Matter;
import cornerbook.core.days.PlannedWork;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/**
 * Tells who is to be asked to come back, and keeps what came of it. What is due is read from what the book keeps of each car's last
 * judgement; no car is judged for it. Who declined a matter is not asked again about it, a car with an appointment for it neither, and
 * nobody whose data were erased.
 */
public final class ComingLedger {
    private static final String LATEST_TURN =
            "agreed.turn = (select max(turn) from appointment as later where later.appointment_id = agreed.appointment_id)";

    /**
     * Asks for the first and the last day of each of the four kinds of matters, and today with the last days of appointments. Of one
     * customer, the customer is asked for behind each last day: what is found by its cars needs no look at all others.
     */
    private static String matters(Days days, boolean ofCustomer) {
        var ofCar = ofCustomer ? " and vehicle_id in (select id from vehicle where customer_id = ?)" : "";
        var ofVisit = ofCustomer ? " and visit.vehicle_id in (select id from vehicle where customer_id = ?)" : "";
        // What begins with "with" the driver of SQLite searches for an insert behind it, for longer than the database
        // takes to answer.
        return """
            /* who comes back */ with season (starts, ends) as (%s), guarantee (place, starts, ends) as (%s), matter as (
                select vehicle_id, visit_id, matter, due, due_from from car_due where due >= ? and due <= ?%s
                union all
                select visit.vehicle_id, retorque.visit_id, 'RETORQUE', retorque.due_date, visit.visit_date
                    from retorque join visit on visit.id = retorque.visit_id
                    where visit.cancelled = 0 and retorque.recorded_date is null and retorque.superseded_by is null
                        and retorque.due_date >= ? and retorque.due_date <= ?%s
                union all
                select vehicle_id, visit_id, 'STORED_SET', min(due), min(due_from) from (
                    select stored.vehicle_id, stored.visit_id, coalesce(stored.stored_until, season.ends) as due,
                        coalesce(stored.off_since, '') as due_from
                    from (%s) as stored left join season on season.starts = stored.off_since
                ) as stored_set where due >= ? and due <= ? group by vehicle_id, visit_id
                union all
                select visit.vehicle_id, bill.visit_id, 'WARRANTY', min(guarantee.ends), min(bill.day)
                    from bill join guarantee on guarantee.place = bill.place and guarantee.starts = bill.day
                        join visit on visit.id = bill.visit_id
                    where %s and visit.cancelled = 0 and guarantee.ends >= ? and guarantee.ends <= ?%s
                    group by visit.vehicle_id, bill.visit_id
            ), asked as (
                select matter.*, vehicle.customer_id, vehicle.name, vehicle.plate
                from matter join vehicle on vehicle.id = matter.vehicle_id
                where coalesce(%s, '') <> 'DECLINED'
                    and not exists (select 1 from customer_erased where customer_erased.customer_id = vehicle.customer_id)
                    and not exists (select 1 from appointment as agreed
                        where agreed.vehicle_id = matter.vehicle_id and agreed.day >= ? and agreed.day >= matter.due_from
                            and (agreed.day <= ? or agreed.day <= matter.due)
                            and (agreed.day <= ? or agreed.day <= matter.due or matter.matter <> 'RETORQUE')
                            and (agreed.day <= matter.due or matter.matter <> 'WARRANTY')
                            and agreed.state in ('ASKED', 'BOOKED') and %s
                            and (agreed.work <> 'RETORQUE' or matter.matter = 'RETORQUE'))
            )
            """.formatted(
                        Spans.ofSeason(days),
                        Spans.ofGuarantees(days),
                        ofCar,
                        ofVisit,
                        StoredSets.select(ofCustomer),
                        BILL_COUNTS,
                        ofVisit,
                        CallAnswers.latest("answer", "matter.visit_id", "matter.matter"),
                        LATEST_TURN);
    }

    private static final String BILL_COUNTS =
            "bill.credits is null and not exists (select 1 from bill as back where back.credits = bill.number)";

    private static final String OF_CAR = """
            select asked.*, %s,
                (select max(visit_date) from visit where visit.vehicle_id = asked.vehicle_id and visit.cancelled = 0) as last_visit
            from asked order by asked.due, asked.name, asked.vehicle_id, asked.matter
            """.formatted(CallAnswers.columns("asked.visit_id", "asked.matter"));

    private static final String MISSED = """
            select agreed.day, agreed.reason from appointment as agreed
            where agreed.vehicle_id = ? and agreed.day > ? and agreed.state = 'MISSED' and %s
            order by agreed.day desc, agreed.turn desc limit 1
            """.formatted(LATEST_TURN);

    private final Transactions store;

    public ComingLedger(Transactions store) {
        this.store = store;
    }

    /**
     * The time that is looked at.
     *
     * @param from first day by which something is due that counts
     * @param until last such day
     * @param today from which on appointments count
     */
    public record Days(LocalDate from, LocalDate until, LocalDate today) {
        /** A car that is overdue by more comes for another season, or not at all. Common practice, no source. */
        private static final int DAYS_OVERDUE = 120;

        /** What is asked for when nobody names a day. A change-over is agreed two or three weeks before. Common practice, no source. */
        private static final int DAYS_AHEAD = 21;

        /** An appointment that is later by more is for something else. Common practice, no source. */
        private static final int DAYS_LATER = 30;

        /** Wheels to be tightened again wait for an appointment no longer than this. Common practice, no source. */
        private static final int DAYS_OF_RETORQUE = 7;

        public static Days until(LocalDate until, LocalDate today) {
            return new Days(today.minusDays(DAYS_OVERDUE), until, today);
        }

        public static LocalDate usualUntil(LocalDate today) {
            return today.plusDays(DAYS_AHEAD);
        }

        private Object[] all(Object... more) {
            return bound(List.of(), more);
        }

        private Object[] of(String customerId) {
            return bound(List.of(customerId));
        }

        private Object[] bound(List<String> customer, Object... more) {
            var bound = new ArrayList<Object>();
            bind(bound, customer, false);
            bind(bound, customer, false);
            // The sets of a customer are found before their days are known.
            bind(bound, customer, true);
            bind(bound, customer, false);
            bound.add(today.toString());
            bound.add(until.plusDays(DAYS_LATER).toString());
            bound.add(today.plusDays(DAYS_OF_RETORQUE).toString());
            bound.addAll(List.of(more));
            return bound.toArray();
        }

        private void bind(List<Object> bound, List<String> customer, boolean customerFirst) {
            bound.addAll(customerFirst ? customer : List.of());
            bound.add(from.toString());
            bound.add(until.toString());
            bound.addAll(customerFirst ? List.of() : customer);
        }
    }

    /**
     * A page of customers, those of whom something is due first before the others.
     *
     * @param all how many there are on all pages
     */
    public record ToAsk(List<ComingCustomer> list, int all) {
        public ToAsk {
            list = List.copyOf(list);
        }
    }

    /**
     * Who is to be asked.
     *
     * @param passed how many are passed over, 0 and more
     * @param most how many are told
     */
    public ToAsk list(Days days, int passed, int most) {
        return store.read(handle -> new ToAsk(
                handle
                        .select(
                                matters(days, false)
                                        + " select customer_id from asked group by customer_id order by min(due), customer_id limit ? offset ?",
                                days.all(most, passed))
                        .mapTo(String.class)
                        .list()
                        .stream()
                        .map(id -> customer(handle, id, days))
                        .toList(),
                handle.select(matters(days, false) + " select count(distinct customer_id) from asked", days.all())
                        .mapTo(Integer.class)
                        .one()));
    }

    /** What one customer is to be asked; of nobody else and of nothing that is not due. */
    public ComingCustomer find(String customerId, Days days) {
        return store.read(handle -> customer(handle, customerId, days));
    }

    private static ComingCustomer customer(Handle handle, String customerId, Days days) {
        Customer customer = handle.select("select * from customer where id = ?", customerId)
                .map((row, context) -> CarReader.customer(row))
                .findFirst()
                .orElseThrow(() -> new BookException(new ComingBookSaid.NotDue()));
        var rows = handle.select(matters(days, true) + OF_CAR, days.of(customerId))
                .map((row, context) -> row(row))
                .list();
        var cars = new LinkedHashMap<String, List<Row>>();
        rows.forEach(row ->
                cars.computeIfAbsent(row.vehicleId(), id -> new ArrayList<>()).add(row));
        return new ComingCustomer(
                customer,
                rows.isEmpty() ? days.until() : rows.getFirst().due().day(),
                cars.values().stream().map(of -> car(handle, of)).toList());
    }

    private record Row(String vehicleId, String name, String plate, LocalDate lastVisit, Due due) {}

    private static Row row(ResultSet row) throws SQLException {
        return new Row(
                row.getString("vehicle_id"),
                row.getString("name"),
                row.getString("plate"),
                LocalDate.parse(row.getString("last_visit")),
                new Due(
                        row.getString("visit_id"),
                        Matter.valueOf(row.getString("matter")),
                        LocalDate.parse(row.getString("due")),
                        CallAnswers.last(row)));
    }

    private static ComingCar car(Handle handle, List<Row> rows) {
        var first = rows.getFirst();
        return new ComingCar(
                first.vehicleId(),
                first.name(),
                first.plate(),
                first.lastVisit(),
                rows.stream().map(Row::due).toList(),
                missed(handle, first));
    }

    private static @Nullable Missed missed(Handle handle, Row car) {
        return handle.select(MISSED, car.vehicleId(), car.lastVisit().toString())
                .map((row, context) -> new Missed(LocalDate.parse(row.getString("day")), row.getString("reason")))
                .findFirst()
                .orElse(null);
    }

    /**
     * What came of asking a customer about these matters; what was said already, by its id, counts once.
     *
     * @throws BookException when one of them is not due, or none was chosen
     */
    public Arrival answer(String id, List<AskedMatter> matters, CallAnswer answer) {
        return store.write(handle -> answer(handle, id, matters, answer));
    }

    private static Arrival answer(Handle handle, String id, List<AskedMatter> matters, CallAnswer answer) {
        if (matters.isEmpty()) {
            throw new BookException(new ComingBookSaid.NothingChosen());
        }
        var arrival = Arrival.ALREADY;
        for (var asked : matters) {
            vehicleOf(handle, asked);
            var entryId = matters.getFirst().equals(asked) ? id : id + "/" + asked;
            if (CallAnswers.add(handle, entryId, asked.visitId(), asked.matter().name(), answer) == Arrival.STORED) {
                arrival = Arrival.STORED;
            }
        }
        return arrival;
    }

    private static String vehicleOf(Handle handle, AskedMatter asked) {
        return handle.select(
                        """
                select vehicle_id from car_due where visit_id = ? and matter = ?
                union all select visit.vehicle_id from retorque join visit on visit.id = retorque.visit_id
                    where retorque.visit_id = ? and ? = 'RETORQUE' and visit.cancelled = 0
                        and retorque.recorded_date is null and retorque.superseded_by is null
                union all select visit.vehicle_id from visit where visit.id = ? and ? = 'STORED_SET' and visit.cancelled = 0
                    and exists (select 1 from wheel_set where wheel_set.vehicle_id = visit.vehicle_id and wheel_set.store_place is not null)
                union all select visit.vehicle_id from bill join visit on visit.id = bill.visit_id
                    where bill.visit_id = ? and ? = 'WARRANTY' and visit.cancelled = 0 and %s
                """.formatted(BILL_COUNTS),
                        Stream.generate(() ->
                                        List.of(asked.visitId(), asked.matter().name()))
                                .limit(4)
                                .flatMap(List::stream)
                                .toArray())
                .mapTo(String.class)
                .findFirst()
                .orElseThrow(() -> new BookException(new ComingBookSaid.NotDue()));
    }

    /**
     * The customer comes on a day: each car whose matters these are has an appointment then, at any time of the day and for as long as
     * such work takes here.
     *
     * @param today no day before it is taken
     * @throws BookException when one of them is not due, none was chosen, the day cannot be, or a car comes on that day already
     */
    public Arrival comes(String id, List<AskedMatter> matters, CallAnswer answer, LocalDate day, LocalDate today) {
        return store.write(handle -> {
            var arrival = answer(handle, id, matters, answer);
            if (arrival == Arrival.ALREADY) {
                return arrival;
            }
            Map<String, Set<Matter>> ofCar = matters.stream()
                    .collect(Collectors.groupingBy(
                            asked -> vehicleOf(handle, asked),
                            TreeMap::new,
                            Collectors.mapping(AskedMatter::matter, Collectors.toSet())));
            var expected = new ClockedTimes(within(handle)).expected();
            var appointments = new AppointmentLedger(within(handle));
            var because =
                    new Appointment.Because(null, answer.person().isEmpty() ? null : answer.person(), answer.at());
            int place = 0;
            for (var car : ofCar.entrySet()) {
                var work = work(car.getValue());
                var usual = expected.get(work);
                int minutes = usual == null ? work.usualMinutes() : (int) Math.round(usual.usual());
                appointments.make(
                        place == 0 ? id : id + "-" + place,
                        car.getKey(),
                        AppointmentState.BOOKED,
                        new Plan(day, null, work, minutes, null, null, ""),
                        because,
                        today);
                place++;
            }
            return arrival;
        });
    }

    /** What a car comes for that comes for these. */
    public static PlannedWork work(Set<Matter> matters) {
        if (matters.contains(Matter.NEXT_VISIT)) {
            return PlannedWork.WHEELS_AND_BRAKES;
        }
        if (matters.contains(Matter.STORED_SET)) {
            return PlannedWork.WHEELS;
        }
        return matters.equals(Set.of(Matter.RETORQUE)) ? PlannedWork.RETORQUE : PlannedWork.OTHER;
    }
}
