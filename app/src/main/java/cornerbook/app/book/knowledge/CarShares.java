package cornerbook.app.book.knowledge;

import cornerbook.app.book.bay.BayRows;
import cornerbook.app.book.car.CarReader;
import cornerbook.app.book.store.Transactions;
import cornerbook.app.limits.JudgeCode;
import cornerbook.core.assess.CarShare;
import cornerbook.core.car.CarHistory;
import cornerbook.core.reread.ReadTwice;
import cornerbook.core.reread.judge.UnchangedGrooves;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Gatherers;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;

/**
 * Each car's share in what is learned from all of them, kept as a row. A row is old as soon as the car's revision or the program
 * is another; only then is the car's history read. Whoever is stopped on the way has kept what was taken so far.
 */
final class CarShares {
    /** Histories that are in memory at once, and rows that one transaction writes. */
    private static final int AT_ONCE = 20;
    /** Rows that are asked for at once. */
    private static final int ROWS = 100;

    private final Transactions store;
    private final String program = ShareBytes.FORM + " " + JudgeCode.digest();

    CarShares(Transactions store) {
        this.store = store;
    }

    /**
     * A row.
     *
     * @param revision of the car when its history was read
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Row(String vehicleId, long revision, byte[] learning, byte[] readTwice) {}

    /** What is learned from these cars, in their order; only what has changed since the last time is taken anew. */
    Stream<CarShare> learning(List<String> vehicleIds) {
        return column("learning", vehicleIds).map(ShareBytes::share);
    }

    /** The grooves of these cars that were read twice, in their order. */
    Stream<ReadTwice> readTwice(List<String> vehicleIds) {
        return column("read_twice", vehicleIds).flatMap(bytes -> ShareBytes.readTwice(bytes).stream());
    }

    private Stream<byte[]> column(String name, List<String> vehicleIds) {
        takeAnew(vehicleIds);
        return vehicleIds.stream()
                .gather(Gatherers.windowFixed(ROWS))
                .flatMap(some -> store.read(handle -> rows(handle, name, some)).stream());
    }

    private static List<byte[]> rows(Handle handle, String column, List<String> vehicleIds) {
        var found = new HashMap<String, byte[]>();
        try (var query = handle.createQuery(
                "select vehicle_id, %s as share from car_share where vehicle_id in (<ids>)".formatted(column))) {
            query.bindList("ids", vehicleIds)
                    .map((row, context) -> found.put(row.getString("vehicle_id"), row.getBytes("share")))
                    .list();
        }
        return vehicleIds.stream()
                .flatMap(id -> Optional.ofNullable(found.get(id)).stream())
                .toList();
    }

    private void takeAnew(List<String> vehicleIds) {
        var old = new HashSet<>(store.read(handle -> handle.select(
                        "select vehicle.id from vehicle left join car_share on car_share.vehicle_id = vehicle.id where car_share.vehicle_id is null or car_share.revision <> vehicle.revision or car_share.program <> ?",
                        program)
                .mapTo(String.class)
                .list()));
        vehicleIds.stream()
                .filter(old::contains)
                .gather(Gatherers.windowFixed(AT_ONCE))
                .map(some -> some.stream()
                        .flatMap(id -> store.read(handle -> take(handle, id)).stream())
                        .toList())
                .forEach(this::put);
    }

    private static Optional<Row> take(Handle handle, String vehicleId) {
        return new CarReader(handle)
                .find(vehicleId)
                .map(car -> new Row(
                        vehicleId,
                        handle.select("select revision from vehicle where id = ?", vehicleId)
                                .mapTo(Long.class)
                                .one(),
                        ShareBytes.of(CarShare.of(car)),
                        ShareBytes.of(readTwice(handle, car))));
    }

    private static List<ReadTwice> readTwice(Handle handle, CarHistory car) {
        return UnchangedGrooves.of(
                car, new BayRows(handle).personsOfCar(car.vehicle().id()));
    }

    private void put(List<Row> rows) {
        store.write(handle -> {
            var batch = handle.prepareBatch(
                    "insert into car_share (vehicle_id, revision, program, learning, read_twice) values (?, ?, ?, ?, ?) on conflict (vehicle_id) do update set revision = excluded.revision, program = excluded.program, learning = excluded.learning, read_twice = excluded.read_twice");
            rows.forEach(row -> batch.add(row.vehicleId(), row.revision(), program, row.learning(), row.readTwice()));
            return batch.execute().length;
        });
    }
}
