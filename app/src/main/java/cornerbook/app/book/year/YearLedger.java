package cornerbook.app.book.year;

import cornerbook.app.book.store.Transactions;
import cornerbook.app.book.visit.CallAnswer;
import cornerbook.core.order.OrderPart;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.util.List;

/** Counts what a year of the book comes to. Each question is one statement that an index answers, but that of the pads. */
public final class YearLedger {
    private static final String LATEST = """
            select vehicle.id, vehicle.name, vehicle.plate, customer.name as customer, customer.phone,
                (select max(visit_date) from visit where visit.vehicle_id = vehicle.id and visit.cancelled = 0) as latest
            from vehicle join customer on customer.id = vehicle.customer_id
            """;

    private final Transactions store;

    public YearLedger(Transactions store) {
        this.store = store;
    }

    /** Visits that count, by month, from the first to the last of these days; a month without any is left out. */
    public List<MonthCount> visits(LocalDate first, LocalDate last) {
        return months(
                "select substr(visit_date, 1, 7) as of_month, count(*) as amount from visit"
                        + " where cancelled = 0 and visit_date between ? and ? group by 1 order by 1",
                first,
                last);
    }

    /** Calls that came to this, by month. */
    public List<MonthCount> calls(CallAnswer.Kind answer, LocalDate first, LocalDate last) {
        // Moments begin with their day, and the last day has some.
        return months(
                "select substr(made_at, 1, 7) as of_month, count(*) as amount from call_answer where answer = '"
                        + answer.name() + "' and made_at >= ? and made_at < ? group by 1 order by 1",
                first,
                last.plusDays(1));
    }

    /** How many cars are expected not to hold their stored tyres, by the month in which they are due. */
    public List<MonthCount> setsAtRisk(LocalDate first, LocalDate last) {
        return months(
                "select substr(due, 1, 7) as of_month, sum(chance_once + chance_twice) as amount from car_need where part = '"
                        + OrderPart.TYRE.name() + "' and due between ? and ? group by 1 order by 1",
                first,
                last);
    }

    private List<MonthCount> months(String query, LocalDate first, LocalDate last) {
        return store.read(handle -> handle.select(query, first.toString(), last.toString())
                .map((row, context) ->
                        new MonthCount(YearMonth.parse(row.getString("of_month")), row.getDouble("amount")))
                .list());
    }

    /**
     * Pads by the month in which they were tried, of all visits from a day on: what stands at each pad of each visit. It reads every
     * reading of those visits.
     */
    public List<PadsOfMonth> pads(LocalDate first) {
        return store.read(handle -> handle.select("""
                select substr(visit.visit_date, 6, 2) as of_month, count(*) as tried,
                    sum(case when reading.as_written = 'seized' then 1 else 0 end) as stuck
                from visit join reading on reading.visit_id = visit.id
                where visit.cancelled = 0 and visit.visit_date >= ? and reading.measure = 'PAD_MOVEMENT'
                    and not exists (select 1 from reading later where later.visit_id = reading.visit_id
                        and later.measure = reading.measure and later.corner = reading.corner
                        and later.spot = reading.spot and later.place_in_list > reading.place_in_list)
                group by 1 order by 1
                """, first.toString())
                .map((row, context) -> new PadsOfMonth(
                        Month.of(Integer.parseInt(row.getString("of_month"))),
                        row.getInt("tried"),
                        row.getInt("stuck")))
                .list());
    }

    /** Cars that were not here since before a day, those longest gone last; a car that never was here is none. */
    public List<CarNotSeen> notSeen(LocalDate since) {
        return store.read(handle -> handle.select(
                        "select * from (" + LATEST + ") seen where latest < ? order by latest desc, name, id",
                        since.toString())
                .map((row, context) -> new CarNotSeen(
                        row.getString("id"),
                        row.getString("name"),
                        row.getString("plate"),
                        row.getString("customer"),
                        row.getString("phone"),
                        LocalDate.parse(row.getString("latest"))))
                .list());
    }
}
