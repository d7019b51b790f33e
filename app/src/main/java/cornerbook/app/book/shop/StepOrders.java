package cornerbook.app.book.shop;

import cornerbook.app.book.car.CarLedger;
import cornerbook.app.book.store.Transactions;
import cornerbook.core.assess.SameKind;
import cornerbook.core.car.Vehicle;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/**
 * The order of the steps of a visit: the shop's, and that of each kind of car that has one of its own. A kind is kept by one car of it;
 * which others are of that kind {@link SameKind} says, by the VIN or by make and model.
 */
public final class StepOrders {
    private static final int LEAST_SURE = SameKind.Sign.values().length;

    private record OfKind(Vehicle car, StepOrder order) {}

    private final Transactions store;

    public StepOrders(Transactions store) {
        this.store = store;
    }

    /** The one for a car: of its kind, else the shop's; as the car needs it. */
    public StepOrder of(Vehicle car) {
        return findOfKind(car).orElseGet(this::ofShop).on(car);
    }

    public StepOrder ofShop() {
        return store.read(handle -> handle.select("select steps from step_order where vehicle_id is null")
                .mapTo(String.class)
                .findFirst()
                .map(StepOrder::parse)
                .orElse(StepOrder.USUAL));
    }

    /** What was set for cars of this one's kind; empty where the shop's order holds for them. */
    public Optional<StepOrder> findOfKind(Vehicle car) {
        return store.read(
                handle -> ofKind(handle, car).stream().map(OfKind::order).findFirst());
    }

    /**
     * Sets the order.
     *
     * @param car one of the kind that it is for; null for the shop
     */
    public void put(@Nullable Vehicle car, StepOrder order) {
        store.write(handle -> {
            remove(handle, car);
            return handle.execute(
                    "insert into step_order (vehicle_id, steps) values (?, ?)",
                    car == null ? null : car.id(),
                    order.words());
        });
    }

    /**
     * Takes back what was set.
     *
     * @param car one of the kind that it was set for; null for the shop
     */
    public void remove(@Nullable Vehicle car) {
        store.write(handle -> remove(handle, car));
    }

    private static int remove(Handle handle, @Nullable Vehicle car) {
        return car == null
                ? handle.execute("delete from step_order where vehicle_id is null")
                : ofKind(handle, car).stream()
                        .mapToInt(each -> handle.execute(
                                "delete from step_order where vehicle_id = ?",
                                each.car().id()))
                        .sum();
    }

    /** The surest sign first. */
    private static List<OfKind> ofKind(Handle handle, Vehicle car) {
        var cars = new CarLedger(Transactions.within(handle));
        return handle
                .select("select vehicle_id, steps from step_order where vehicle_id is not null order by vehicle_id")
                .map((row, context) -> Map.entry(row.getString("vehicle_id"), row.getString("steps")))
                .list()
                .stream()
                .flatMap(row -> cars.find(row.getKey()).stream()
                        .map(history -> new OfKind(history.vehicle(), StepOrder.parse(row.getValue()))))
                .filter(each -> rank(car, each.car()) <= LEAST_SURE)
                .sorted(Comparator.comparingInt(each -> rank(car, each.car())))
                .toList();
    }

    /** A car is of its own kind, whatever it is called. */
    private static int rank(Vehicle car, Vehicle other) {
        return car.id().equals(other.id())
                ? 0
                : SameKind.sign(car, other).map(sign -> 1 + sign.ordinal()).orElse(LEAST_SURE + 1);
    }
}
