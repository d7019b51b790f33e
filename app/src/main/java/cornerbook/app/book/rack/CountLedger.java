package cornerbook.app.book.rack;

import cornerbook.app.book.car.WheelChanges;
import cornerbook.app.book.rack.StockDifference.Answer;
import cornerbook.app.book.rack.StockDifference.Kind;
import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.Transactions;
import cornerbook.core.store.StoreMap;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Counts of what lies in the store: what was scanned where, what was otherwise than in the book, and what was done about it. */
public final class CountLedger {
    private static final int LONGEST_CODE = 60;

    private static final String COUNTS = """
            select stock_count.*, stock_count_end.person as ended_by, stock_count_end.ended_at,
                (select count(distinct place) from stock_scan where stock_scan.count_id = stock_count.id) as places,
                (select count(*) from (select distinct vehicle_id, set_id from stock_scan where stock_scan.count_id = stock_count.id and vehicle_id is not null) as scanned) as sets,
                (select count(*) from stock_difference where stock_difference.count_id = stock_count.id) as differences,
                (select count(*) from stock_difference where stock_difference.count_id = stock_count.id
                    and not exists (select 1 from stock_answer where stock_answer.difference_id = stock_difference.id)) as open
            from stock_count left join stock_count_end on stock_count_end.count_id = stock_count.id
            """;

    private static final String DIFFERENCES =
            "select stock_difference.*, stock_answer.answer from stock_difference left join stock_answer on stock_answer.difference_id = stock_difference.id";

    private final Transactions store;

    public CountLedger(Transactions store) {
        this.store = store;
    }

    /** All counts, the latest first. */
    public List<StockCount> list() {
        return store.read(handle -> handle.select(COUNTS + " order by stock_count.begun_at desc, stock_count.id")
                .map((row, context) -> count(row))
                .list());
    }

    public Optional<StockCount> find(String id) {
        return store.read(handle -> find(handle, id));
    }

    private static Optional<StockCount> find(Handle handle, String id) {
        return handle.select(COUNTS + " where stock_count.id = ?", id)
                .map((row, context) -> count(row))
                .findFirst();
    }

    /** What was scanned, the latest first. */
    public List<StockScan> listScans(String countId) {
        return store.read(handle -> scans(handle, countId).reversed());
    }

    /** What was otherwise than in the book, by place. */
    public List<StockDifference> listDifferences(String countId) {
        return store.read(handle -> handle.select(
                        DIFFERENCES + " where stock_difference.count_id = ? order by stock_difference.place_in_list",
                        countId)
                .map((row, context) -> difference(row))
                .list());
    }

    /**
     * A count begins; sent again it counts once.
     *
     * @throws BookException while another one goes on
     */
    public Arrival begin(String id, By by) {
        return store.write(handle -> {
            if (find(handle, id).isPresent()) {
                return Arrival.ALREADY;
            }
            if (handle.select("select 1 from stock_count where id not in (select count_id from stock_count_end)")
                    .mapTo(Integer.class)
                    .findFirst()
                    .isPresent()) {
                throw new BookException(new RackSaid.CountGoesOn());
            }
            new TableRow("stock_count")
                    .set("id", id)
                    .set("person", by.person())
                    .set("begun_at", by.at())
                    .insert(handle);
            return Arrival.STORED;
        });
    }

    /**
     * A wheel was scanned at a place, or a place was looked at; sent again it counts once.
     *
     * @param code of a wheel, which the book need not know; empty for the place alone
     * @throws BookException when there is no such place, or the count is none or has ended
     */
    public Arrival scan(String id, String countId, String placeName, String code, By by) {
        return store.write(handle -> {
            requireOpen(handle, countId);
            if (code.length() > LONGEST_CODE) {
                throw new BookException(new RackSaid.NoWheel(code.substring(0, LONGEST_CODE)));
            }
            var place = RackLedger.map(handle)
                    .find(placeName)
                    .orElseThrow(() -> new BookException(new RackSaid.NoPlace(placeName)));
            var key = StockRows.find(handle, code).map(KeptSet::key);
            boolean stored = new TableRow("stock_scan")
                    .set("id", id)
                    .set("count_id", countId)
                    .set("place_in_list", TableRow.count(handle, "stock_scan where count_id = ?", countId))
                    .set("place", place.name())
                    .set("code", code)
                    .set("vehicle_id", key.map(KeptSet.Key::vehicleId).orElse(null))
                    .set("set_id", key.map(KeptSet.Key::setId).orElse(null))
                    .set("person", by.person())
                    .set("made_at", by.at())
                    .insertOnce(handle);
            return stored ? Arrival.STORED : Arrival.ALREADY;
        });
    }

    /**
     * The count ends: what is otherwise than the book has it now is written down.
     *
     * @throws BookException when it is none or has ended
     */
    public void end(String countId, By by) {
        store.write(handle -> {
            requireOpen(handle, countId);
            new TableRow("stock_count_end")
                    .set("count_id", countId)
                    .set("person", by.person())
                    .set("ended_at", by.at())
                    .insert(handle);
            var found = compare(StockRows.all(handle), scans(handle, countId));
            for (int i = 0; i < found.size(); i++) {
                var each = found.get(i);
                var key = Optional.ofNullable(each.key());
                new TableRow("stock_difference")
                        .set("id", countId + "/" + i)
                        .set("count_id", countId)
                        .set("place_in_list", i)
                        .set("kind", each.kind())
                        .set("code", each.code())
                        .set("vehicle_id", key.map(KeptSet.Key::vehicleId).orElse(null))
                        .set("set_id", key.map(KeptSet.Key::setId).orElse(null))
                        .set("book_place", each.bookPlace())
                        .set("found_place", each.foundPlace())
                        .insert(handle);
            }
            return found;
        });
    }

    /** A set that was scanned at several places lies at the last of them. */
    private static List<StockDifference> compare(List<KeptSet> sets, List<StockScan> scans) {
        Map<KeptSet.Key, StockScan> last = new HashMap<>();
        var lookedAt = new HashSet<String>();
        var unknown = new LinkedHashSet<List<String>>();
        for (var scan : scans) {
            lookedAt.add(StoreMap.key(scan.place()));
            if (scan.key() != null) {
                last.put(scan.key(), scan);
            } else if (!scan.code().isEmpty()) {
                unknown.add(List.of(scan.code(), scan.place()));
            }
        }
        var found = new ArrayList<StockDifference>();
        for (var set : sets) {
            var bookPlace = set.lies() ? set.place() : null;
            var scan = last.get(set.key());
            if (scan == null && bookPlace != null && lookedAt.contains(StoreMap.key(bookPlace))) {
                found.add(difference(Kind.MISSING, String.join(" ", set.tags()), set.key(), bookPlace, null));
            } else if (scan != null
                    && (bookPlace == null || !StoreMap.key(bookPlace).equals(StoreMap.key(scan.place())))) {
                found.add(difference(Kind.ELSEWHERE, scan.code(), set.key(), bookPlace, scan.place()));
            }
        }
        unknown.forEach(each -> found.add(difference(Kind.UNKNOWN, each.getFirst(), null, null, each.getLast())));
        return found;
    }

    private static StockDifference difference(
            Kind kind,
            String code,
            KeptSet.@Nullable Key key,
            @Nullable String bookPlace,
            @Nullable String foundPlace) {
        return new StockDifference("", kind, code, key, bookPlace, foundPlace, null);
    }

    /**
     * What is done about a difference; sent again it counts once.
     *
     * @param id of the move, where the book follows
     * @throws BookException when there is no such difference, nothing of the kind can be done about it, or the set was moved since
     */
    public Arrival answer(String id, String differenceId, Answer answer, By by, LocalDate day) {
        return store.write(handle -> {
            var difference = handle.select(DIFFERENCES + " where stock_difference.id = ?", differenceId)
                    .map((row, context) -> difference(row))
                    .findFirst()
                    .filter(each -> each.answers().contains(answer))
                    .orElseThrow(() -> new BookException(new RackSaid.NoAnswer()));
            if (difference.answer() != null) {
                return Arrival.ALREADY;
            }
            if (difference.key() != null) {
                follow(handle, id, difference, difference.key(), answer, by, day);
            }
            new TableRow("stock_answer")
                    .set("difference_id", differenceId)
                    .set("answer", answer)
                    .set("person", by.person())
                    .set("made_at", by.at())
                    .insert(handle);
            return Arrival.STORED;
        });
    }

    private static void follow(
            Handle handle,
            String id,
            StockDifference difference,
            KeptSet.Key key,
            Answer answer,
            By by,
            LocalDate day) {
        if (answer != Answer.BOOK_FOLLOWS && answer != Answer.NOT_HERE) {
            return;
        }
        var set = StockRows.find(handle, key).orElseThrow();
        if (!Objects.equals(set.lies() ? set.place() : null, difference.bookPlace())) {
            throw new BookException(new RackSaid.MovedSince());
        }
        if (answer == Answer.NOT_HERE) {
            new WheelChanges(handle, key.vehicleId()).lay(key.setId(), null, day);
            return;
        }
        var name = String.valueOf(difference.foundPlace());
        var place = RackLedger.map(handle).find(name).orElseThrow(() -> new BookException(new RackSaid.NoPlace(name)));
        StockLedger.put(handle, id, set, place, by, day);
    }

    private static void requireOpen(Handle handle, String countId) {
        var count = find(handle, countId).orElseThrow(() -> new BookException(new RackSaid.NoCount()));
        if (count.ended() != null) {
            throw new BookException(new RackSaid.CountEnded());
        }
    }

    private static List<StockScan> scans(Handle handle, String countId) {
        return handle.select("select * from stock_scan where count_id = ? order by place_in_list", countId)
                .map((row, context) -> new StockScan(
                        row.getString("place"),
                        row.getString("code"),
                        key(row),
                        new By(row.getString("person"), Instant.parse(row.getString("made_at")))))
                .list();
    }

    private static KeptSet.@Nullable Key key(ResultSet row) throws SQLException {
        var vehicleId = row.getString("vehicle_id");
        return vehicleId == null ? null : new KeptSet.Key(vehicleId, row.getString("set_id"));
    }

    private static StockCount count(ResultSet row) throws SQLException {
        var endedAt = row.getString("ended_at");
        return new StockCount(
                row.getString("id"),
                new By(row.getString("person"), Instant.parse(row.getString("begun_at"))),
                endedAt == null ? null : new By(row.getString("ended_by"), Instant.parse(endedAt)),
                row.getInt("places"),
                row.getInt("sets"),
                row.getInt("differences"),
                row.getInt("open"));
    }

    private static StockDifference difference(ResultSet row) throws SQLException {
        var answer = row.getString("answer");
        return new StockDifference(
                row.getString("id"),
                Kind.valueOf(row.getString("kind")),
                row.getString("code"),
                key(row),
                row.getString("book_place"),
                row.getString("found_place"),
                answer == null ? null : Answer.valueOf(answer));
    }
}
