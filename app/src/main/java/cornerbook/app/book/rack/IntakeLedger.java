package cornerbook.app.book.rack;

import cornerbook.app.book.rack.KeptSet.Key;
import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.Transactions;
import cornerbook.core.store.Lying;
import java.time.Instant;
import java.util.Optional;

/** How sets were when they were taken into the store. What was said of a set last counts; what was said before stays. */
public final class IntakeLedger {
    private static final double MOST_KPA = 1000;

    private final Transactions store;

    public IntakeLedger(Transactions store) {
        this.store = store;
    }

    /** What was said of a set last. */
    public Optional<Intake> find(Key key) {
        return store.read(handle -> handle.select(
                        "select * from set_intake where vehicle_id = ? and set_id = ? order by place_in_list desc limit 1",
                        key.vehicleId(),
                        key.setId())
                .map((row, context) -> {
                    double pressureKpa = row.getDouble("pressure_kpa");
                    boolean hasNone = row.wasNull();
                    return new Intake(
                            Lying.valueOf(row.getString("lies")),
                            row.getInt("on_rims") == 1,
                            hasNone ? null : pressureKpa,
                            new By(row.getString("person"), Instant.parse(row.getString("made_at"))));
                })
                .findFirst());
    }

    /**
     * How a set is; sent again it counts once.
     *
     * @throws BookException when there is no such set, or no tyre has such a pressure
     */
    public Arrival add(String id, Key key, Intake intake) {
        var pressureKpa = intake.pressureKpa();
        if (pressureKpa != null && !(pressureKpa > 0 && pressureKpa <= MOST_KPA)) {
            throw new BookException(new RackSaid.NoPressure());
        }
        return store.write(handle -> {
            if (StockRows.find(handle, key).isEmpty()) {
                throw new BookException(new RackSaid.NoSet());
            }
            int next = handle.select(
                            "select count(*) from set_intake where vehicle_id = ? and set_id = ?",
                            key.vehicleId(),
                            key.setId())
                    .mapTo(Integer.class)
                    .one();
            boolean stored = new TableRow("set_intake")
                    .set("id", id)
                    .set("vehicle_id", key.vehicleId())
                    .set("set_id", key.setId())
                    .set("place_in_list", next)
                    .set("lies", intake.lies())
                    .set("on_rims", intake.onRims())
                    .set("pressure_kpa", pressureKpa)
                    .set("person", intake.by().person())
                    .set("made_at", intake.by().at())
                    .insertOnce(handle);
            return stored ? Arrival.STORED : Arrival.ALREADY;
        });
    }
}
