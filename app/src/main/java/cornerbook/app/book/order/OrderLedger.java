package cornerbook.app.book.order;

import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.Transactions;
import cornerbook.app.book.verdict.ArticleColumns;
import cornerbook.app.book.visit.CallAnswer;
import cornerbook.app.book.visit.CallAnswers;
import cornerbook.app.book.visit.OpenRetorque;
import cornerbook.core.order.Article;
import cornerbook.core.order.Need;
import cornerbook.core.order.OrderPart;
import cornerbook.core.order.judge.CarNeed;
import cornerbook.core.say.Said;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Keeps what cars may need, what was ordered, and what became of it. */
public final class OrderLedger {
    /** Of one line. */
    public static final int MOST_PIECES = 10_000;

    private static final int LONGEST_TEXT = 200;

    private static final String SUM_OF =
            "coalesce((select sum(quantity) from order_event where order_event.line_id = order_line.id and event = '%s'), 0) as %s";

    private static final String LINES = "select order_line.*, "
            + String.join(
                    ", ",
                    SUM_OF.formatted("CAME_IN", "came_in"),
                    SUM_OF.formatted("CALLED_OFF", "called_off"),
                    SUM_OF.formatted("GIVEN", "given"))
            + " from order_line";

    private static final String OLDEST_FIRST = " order by order_line.made_at, order_line.id";

    private static final String NEEDS = """
            select car_need.*, vehicle.name, vehicle.plate, customer.id as customer_id, customer.name as customer_name, customer.phone,
                %s,
                coalesce((select sum(order_event.quantity) from order_event
                    join order_line on order_line.id = order_event.line_id
                    where order_event.visit_id = car_need.visit_id and order_line.part = car_need.part
                        and order_line.kind = car_need.kind and order_line.article = car_need.article), 0) as given
            from car_need
                join vehicle on vehicle.id = car_need.vehicle_id
                join customer on customer.id = vehicle.customer_id
            """.formatted(CallAnswers.columns("car_need.visit_id", "car_need.part"));

    private static final String IN_ORDER = " order by car_need.part, car_need.article, car_need.kind,"
            + " car_need.chance_once + car_need.chance_twice desc, vehicle.name, vehicle.id";

    private final Transactions store;

    public OrderLedger(Transactions store) {
        this.store = store;
    }

    /** What becomes of pieces that were ordered. */
    public enum Event {
        CAME_IN,
        CALLED_OFF,
        /** Went to a car. */
        GIVEN
    }

    /** What cars may need whose coming visit is due in these days, both included; by article, the likeliest first. */
    public List<NeedOfCar> listNeeds(LocalDate from, LocalDate until) {
        return store.read(handle -> handle.select(
                        NEEDS + " where car_need.due >= ? and car_need.due <= ?" + IN_ORDER,
                        from.toString(),
                        until.toString())
                .map((row, context) -> need(row))
                .list());
    }

    /** How many cars are not judged yet as they are now: of them it is not known what they need, or only what they needed. */
    public int countNotJudged() {
        return store.read(handle -> handle.select("""
            select count(*) from vehicle left join car_verdict on car_verdict.vehicle_id = vehicle.id cross join judged_by
            where car_verdict.vehicle_id is null or car_verdict.revision <> vehicle.revision
                or car_verdict.judged_by <> judged_by.number
            """).mapTo(Integer.class).one());
    }

    private static NeedOfCar need(ResultSet row) throws SQLException {
        return new NeedOfCar(
                row.getString("vehicle_id"),
                row.getString("visit_id"),
                row.getString("name"),
                row.getString("plate"),
                new OpenRetorque.Contact(
                        row.getString("customer_id"),
                        row.getString("customer_name"),
                        row.getString("phone"),
                        CallAnswers.last(row)),
                new CarNeed(
                        ArticleColumns.of(row),
                        new Need(row.getInt("pieces"), row.getDouble("chance_once"), row.getDouble("chance_twice")),
                        LocalDate.parse(row.getString("due"))),
                row.getInt("given"));
    }

    /** All that was ever ordered, oldest first. */
    public List<OrderLine> listLines() {
        return store.read(handle -> handle.select(LINES + OLDEST_FIRST)
                .map((row, context) -> line(row))
                .list());
    }

    private static OrderLine line(ResultSet row) throws SQLException {
        return new OrderLine(
                row.getString("id"),
                ArticleColumns.of(row),
                row.getInt("quantity"),
                new OrderLine.Became(row.getInt("came_in"), row.getInt("called_off"), row.getInt("given")),
                row.getString("supplier"),
                row.getString("person"),
                Instant.parse(row.getString("made_at")));
    }

    /**
     * So many were ordered; what was said already, by its id, counts once.
     *
     * @throws BookException when nobody orders so many, the supplier's name is too long, or no car needs it and
     *     nobody ordered it before
     */
    public Arrival order(String id, Article article, int pieces, String supplier, String person, Instant madeAt) {
        check(pieces);
        if (supplier.length() > LONGEST_TEXT) {
            throw new BookException(new OrderBookSaid.TextTooLong(LONGEST_TEXT));
        }
        return store.write(handle -> {
            if (!isKnown(handle, article)) {
                throw new BookException(new OrderBookSaid.NoSuchArticle());
            }
            return Arrival.of(ArticleColumns.set(new TableRow("order_line").set("id", id), article)
                    .set("quantity", pieces)
                    .set("supplier", supplier)
                    .set("person", person)
                    .set("made_at", madeAt)
                    .insertOnce(handle));
        });
    }

    private static boolean isKnown(Handle handle, Article article) {
        var kind = Optional.ofNullable(article.kind()).orElse("");
        return handle.select(
                        """
                select 1 from car_need where part = ? and kind = ? and article = ?
                union all select 1 from order_line where part = ? and kind = ? and article = ?
                """,
                        article.part().name(),
                        kind,
                        article.text(),
                        article.part().name(),
                        kind,
                        article.text())
                .mapTo(Integer.class)
                .findFirst()
                .isPresent();
    }

    /**
     * Pieces of a line came in, or will not come.
     *
     * @throws BookException when there is no such line, or not so many are to come
     */
    public Arrival record(String id, String lineId, Event event, int pieces, String person, Instant madeAt) {
        check(pieces);
        return store.write(handle -> {
            if (isKept(handle, id)) {
                return Arrival.ALREADY;
            }
            var line = handle.select(LINES + " where order_line.id = ?", lineId)
                    .map((row, context) -> line(row))
                    .findFirst()
                    .orElseThrow(() -> new BookException(new OrderBookSaid.NoSuchLine()));
            if (pieces > line.open()) {
                throw new BookException(new OrderBookSaid.MoreThanOpen(line.open()));
            }
            return Arrival.of(event(id, lineId, event, pieces, person, madeAt).insertOnce(handle));
        });
    }

    /**
     * Pieces that came in went to the car that needed them; those that came first go first.
     *
     * @param visitId by which the need is known
     * @throws BookException when the car does not need it, or not so many are there
     */
    public Arrival give(String id, Article article, String visitId, int pieces, String person, Instant madeAt) {
        check(pieces);
        return store.write(handle -> {
            if (isKept(handle, id)) {
                return Arrival.ALREADY;
            }
            if (!isNeeded(handle, article, visitId)) {
                throw new BookException(new OrderBookSaid.NotNeeded());
            }
            var lines = handle.select(
                            LINES + " where part = ? and kind = ? and article = ?" + OLDEST_FIRST,
                            article.part().name(),
                            Optional.ofNullable(article.kind()).orElse(""),
                            article.text())
                    .map((row, context) -> line(row))
                    .list();
            int there = lines.stream().mapToInt(OrderLine::there).sum();
            if (pieces > there) {
                throw new BookException(new OrderBookSaid.MoreThanInStock(there));
            }
            int left = pieces;
            var eventId = id;
            for (var line : lines) {
                int taken = Math.min(left, line.there());
                if (taken > 0) {
                    event(eventId, line.id(), Event.GIVEN, taken, person, madeAt)
                            .set("visit_id", visitId)
                            .insert(handle);
                    left -= taken;
                    eventId = id + "/" + line.id();
                }
            }
            return Arrival.STORED;
        });
    }

    private static boolean isNeeded(Handle handle, Article article, String visitId) {
        return handle.select(
                        "select 1 from car_need where visit_id = ? and part = ? and kind = ? and article = ?",
                        visitId,
                        article.part().name(),
                        Optional.ofNullable(article.kind()).orElse(""),
                        article.text())
                .mapTo(Integer.class)
                .findFirst()
                .isPresent();
    }

    /**
     * What came of calling the customer of a car about a part that it may need.
     *
     * @throws BookException when the car does not need it
     */
    public Arrival answer(String id, String visitId, OrderPart part, CallAnswer answer) {
        return store.write(handle -> {
            boolean needed = handle.select(
                            "select 1 from car_need where visit_id = ? and part = ?", visitId, part.name())
                    .mapTo(Integer.class)
                    .findFirst()
                    .isPresent();
            if (!needed) {
                throw new BookException(new OrderBookSaid.NotNeeded());
            }
            return CallAnswers.add(handle, id, visitId, part.name(), answer);
        });
    }

    /** With which chance pieces are to be enough, as the shop said last. */
    public OrderLevel level() {
        return store.read(handle -> handle.select("select * from order_level order by place_in_list desc limit 1")
                .map((row, context) -> {
                    int percent = row.getInt("percent");
                    boolean byCosts = row.wasNull();
                    return new OrderLevel(
                            byCosts ? null : percent, row.getString("cost_missing"), row.getString("cost_left"));
                })
                .findFirst()
                .orElse(OrderLevel.USUAL));
    }

    /** From now on pieces are to be enough with this chance; what was said already, by its id, counts once. */
    public Arrival keep(String id, OrderLevel level, String person, Instant madeAt) {
        return store.write(handle -> Arrival.of(new TableRow("order_level")
                .set("id", id)
                .set("place_in_list", TableRow.count(handle, "order_level where id <> ?", id))
                .set("percent", level.percent())
                .set("cost_missing", level.missing())
                .set("cost_left", level.left())
                .set("person", person)
                .set("made_at", madeAt)
                .insertOnce(handle)));
    }

    private static boolean isKept(Handle handle, String id) {
        return handle.select("select 1 from order_event where id = ?", id)
                .mapTo(Integer.class)
                .findFirst()
                .isPresent();
    }

    private static TableRow event(String id, String lineId, Event event, int pieces, String person, Instant madeAt) {
        return new TableRow("order_event")
                .set("id", id)
                .set("line_id", lineId)
                .set("event", event)
                .set("quantity", pieces)
                .set("person", person)
                .set("made_at", madeAt);
    }

    private static void check(int pieces) {
        if (pieces < 1 || pieces > MOST_PIECES) {
            Said refusal = new OrderBookSaid.QuantityOutOfRange(1, MOST_PIECES);
            throw new BookException(refusal);
        }
    }
}
