package cornerbook.app.book.year;

import cornerbook.app.book.estimate.EstimateLedger;
import cornerbook.app.book.store.Transactions;
import cornerbook.app.book.visit.CallAnswer;
import cornerbook.core.corner.Corner;
import cornerbook.core.order.OrderPart;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Counts what a year of the book comes to. Each question is one statement that an index answers, but those of the pads and of what was declined. */
public final class YearLedger {
    private static final String LATEST = """
        select vehicle.id, vehicle.name, vehicle.plate, customer.id as customer_id, customer.name as customer, customer.phone,
            (select max(visit_date) from visit where visit.vehicle_id = vehicle.id and visit.cancelled = 0) as latest
        from vehicle join customer on customer.id = vehicle.customer_id
        """;

    private static final String VISITS = """
        select visit.id as visit_id, visit.visit_date, vehicle.id as vehicle_id, vehicle.name, vehicle.plate,
            customer.name as customer%s
        from visit join vehicle on vehicle.id = visit.vehicle_id join customer on customer.id = vehicle.customer_id
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

    /** The visits themselves, the latest first. */
    public List<VisitOfYear> listVisits(LocalDate first, LocalDate last) {
        return store.read(handle -> handle.select(
                        VISITS.formatted("") + " where visit.cancelled = 0 and visit.visit_date between ? and ?"
                                + " order by visit.visit_date desc, vehicle.name, visit.id",
                        first.toString(),
                        last.toString())
                .map((row, context) -> visit(row))
                .list());
    }

    /** The brakes of which pads were found seized, of all visits from a day on, the latest first; counted as {@link #pads} counts. */
    public List<SeizedPads> listSeized(LocalDate first) {
        return store.read(handle -> handle.select(
                        VISITS.formatted(", reading.corner, count(*) as tried, sum(case when reading.as_written ="
                                        + " 'seized' then 1 else 0 end) as seized")
                                + """
                                 join reading on reading.visit_id = visit.id
                                where visit.cancelled = 0 and visit.visit_date >= ? and reading.measure = 'PAD_MOVEMENT'
                                    and not exists (select 1 from reading later where later.visit_id = reading.visit_id
                                        and later.measure = reading.measure and later.corner = reading.corner
                                        and later.spot = reading.spot and later.place_in_list > reading.place_in_list)
                                group by visit.id, visit.visit_date, vehicle.id, vehicle.name, vehicle.plate, customer.name, reading.corner
                                having sum(case when reading.as_written = 'seized' then 1 else 0 end) > 0
                                order by visit.visit_date desc, vehicle.name, visit.id, reading.corner
                                """,
                        first.toString())
                .map((row, context) -> new SeizedPads(
                        visit(row), Corner.valueOf(row.getString("corner")), row.getInt("seized"), row.getInt("tried")))
                .list());
    }

    /** The calls themselves, the latest first. */
    public List<CallOfYear> listCalls(LocalDate first, LocalDate last, ZoneId shop) {
        return store.read(handle -> handle.select(
                        VISITS.formatted(", call_answer.made_at, call_answer.about, call_answer.answer")
                                + " join call_answer on call_answer.visit_id = visit.id"
                                + " where call_answer.made_at >= ? and call_answer.made_at < ?"
                                + " order by call_answer.made_at desc, call_answer.id",
                        first.atStartOfDay(shop).toInstant().toString(),
                        last.plusDays(1).atStartOfDay(shop).toInstant().toString())
                .map((row, context) -> new CallOfYear(
                        visit(row, LocalDate.ofInstant(Instant.parse(row.getString("made_at")), shop)),
                        row.getString("about"),
                        CallAnswer.Kind.valueOf(row.getString("answer"))))
                .list());
    }

    /** Calls that came to this, by the month that it was at the shop. */
    public List<MonthCount> calls(CallAnswer.Kind answer, LocalDate first, LocalDate last, ZoneId shop) {
        return store.read(handle -> handle
                .select(
                        "select made_at from call_answer where answer = ? and made_at >= ? and made_at < ?",
                        answer.name(),
                        first.atStartOfDay(shop).toInstant().toString(),
                        last.plusDays(1).atStartOfDay(shop).toInstant().toString())
                .mapTo(String.class)
                .stream()
                .map(at -> YearMonth.from(Instant.parse(at).atZone(shop)))
                .collect(Collectors.groupingBy(month -> month, TreeMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .map(each -> new MonthCount(each.getKey(), each.getValue()))
                .toList());
    }

    /** What customers declined of their estimates from a moment on, the latest first. */
    public List<DeclinedLine> declined(Instant from) {
        return store.read(handle -> {
            var estimates = new EstimateLedger(Transactions.within(handle));
            return handle
                    .select("""
                        select visit.id, vehicle.name, vehicle.plate from visit join vehicle on vehicle.id = visit.vehicle_id
                        where visit.cancelled = 0 and visit.id in (
                            select estimate.visit_id from agreement join estimate on estimate.id = agreement.estimate_id
                                join agreement_answer on agreement_answer.agreement_id = agreement.id
                            where agreement_answer.agreed = 0 and agreement.made_at >= ?)
                        order by visit.id
                        """, from.toString())
                    .map((row, context) ->
                            declined(estimates, row.getString("id"), row.getString("name"), row.getString("plate")))
                    .stream()
                    .flatMap(List::stream)
                    .filter(line -> !line.at().isBefore(from))
                    .sorted(Comparator.comparing(DeclinedLine::at).reversed())
                    .toList();
        });
    }

    private static List<DeclinedLine> declined(EstimateLedger estimates, String visitId, String car, String plate) {
        var byMatter = new LinkedHashMap<String, DeclinedLine>();
        for (var standing : estimates.of(visitId).standing()) {
            var agreement = standing.agreement();
            if (agreement != null && standing.isDeclined() && !standing.isOtherTaken()) {
                var line = standing.line();
                byMatter.putIfAbsent(
                        line.matter(),
                        new DeclinedLine(
                                visitId, car, plate, line.words(), line.safety(), line.amount(), agreement.madeAt()));
            }
        }
        return List.copyOf(byMatter.values());
    }

    /** How many cars are expected not to hold their stored tyres, by the month in which they are due. */
    public List<MonthCount> setsAtRisk(LocalDate first, LocalDate last) {
        return months(
                "select substr(due, 1, 7) as of_month, sum(chance_once + chance_twice) as amount from car_need where"
                        + " part = '"
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
                        row.getString("customer_id"),
                        row.getString("customer"),
                        row.getString("phone"),
                        LocalDate.parse(row.getString("latest"))))
                .list());
    }

    private static VisitOfYear visit(ResultSet row, LocalDate day) throws SQLException {
        return new VisitOfYear(
                day,
                row.getString("visit_id"),
                row.getString("vehicle_id"),
                row.getString("name"),
                row.getString("plate"),
                row.getString("customer"));
    }

    private static VisitOfYear visit(ResultSet row) throws SQLException {
        return visit(row, LocalDate.parse(row.getString("visit_date")));
    }
}
