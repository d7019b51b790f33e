package cornerbook.app.book.rack;

import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.Transactions;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/** Until when the storage of sets is agreed or paid for. What was said of a set last counts; what was said before stays. */
public final class TermLedger {
    private static final int MOST_YEARS = 10;

    private final Transactions store;

    public TermLedger(Transactions store) {
        this.store = store;
    }

    /** What was said of a set last. */
    public Optional<StorageTerm> find(KeptSet.Key key) {
        return store.read(handle -> handle.select(
                        "select * from set_term where vehicle_id = ? and set_id = ? order by place_in_list desc limit 1",
                        key.vehicleId(),
                        key.setId())
                .map((row, context) -> new StorageTerm(
                        LocalDate.parse(row.getString("stored_until")),
                        new By(row.getString("person"), Instant.parse(row.getString("made_at")))))
                .findFirst());
    }

    /**
     * Until when a set is stored; sent again it counts once.
     *
     * @param today at the shop
     * @throws BookException when there is no such set, or nobody agrees on such a day
     */
    public Arrival add(String id, KeptSet.Key key, StorageTerm term, LocalDate today) {
        if (term.until().isBefore(today) || term.until().isAfter(today.plusYears(MOST_YEARS))) {
            throw new BookException(new RackSaid.NoTerm(today, today.plusYears(MOST_YEARS)));
        }
        return store.write(handle -> {
            if (StockRows.find(handle, key).isEmpty()) {
                throw new BookException(new RackSaid.NoSet());
            }
            int next = handle.select(
                            "select count(*) from set_term where vehicle_id = ? and set_id = ?",
                            key.vehicleId(),
                            key.setId())
                    .mapTo(Integer.class)
                    .one();
            boolean stored = new TableRow("set_term")
                    .set("id", id)
                    .set("vehicle_id", key.vehicleId())
                    .set("set_id", key.setId())
                    .set("place_in_list", next)
                    .set("stored_until", term.until())
                    .set("person", term.by().person())
                    .set("made_at", term.by().at())
                    .insertOnce(handle);
            return stored ? Arrival.STORED : Arrival.ALREADY;
        });
    }
}
