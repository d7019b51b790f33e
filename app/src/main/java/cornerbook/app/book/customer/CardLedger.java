package cornerbook.app.book.customer;

import cornerbook.app.book.car.CarReader;
import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.Transactions;
import cornerbook.core.car.Customer;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Takes people from cards: new customers, and what was missing of those that the book knows. */
public final class CardLedger {
    private final Transactions store;

    public CardLedger(Transactions store) {
        this.store = store;
    }

    /** Everybody whose data were not erased, by name. */
    public List<Customer> list() {
        return store.read(handle -> handle.select(
                        "select * from customer where not exists (select 1 from customer_erased where customer_erased.customer_id = customer.id) order by name, id")
                .map((row, context) -> CarReader.customer(row))
                .list());
    }

    /** Those who have no car in the book. */
    public List<Customer> listWithoutCar() {
        return store.read(handle -> handle.select(
                        "select * from customer where not exists (select 1 from vehicle where vehicle.customer_id = customer.id) and not exists (select 1 from customer_erased where customer_erased.customer_id = customer.id) order by name, id")
                .map((row, context) -> CarReader.customer(row))
                .list());
    }

    /**
     * What is taken of a card.
     *
     * @param customer with a new id, or that of the one whose data it completes
     * @param isNew whether it is a new customer
     */
    public record Taken(Customer customer, boolean isNew) {}

    /**
     * Takes all of them, or none. A new customer of an id that is there already is not made again; where the book knows a telephone, an
     * address or a language, it stays.
     *
     * @return how many were new, or got something that was missing
     */
    public int take(List<Taken> cards) {
        return store.write(handle ->
                cards.stream().mapToInt(card -> take(handle, card)).sum());
    }

    private static int take(Handle handle, Taken card) {
        var customer = card.customer();
        if (card.isNew()) {
            return new TableRow("customer")
                            .set("id", customer.id())
                            .set("name", customer.name())
                            .set("phone", customer.phone())
                            .set("email", customer.email())
                            .set("language", customer.language())
                            .insertOnce(handle)
                    ? 1
                    : 0;
        }
        int completed = complete(handle, customer.id(), "phone", customer.phone())
                + complete(handle, customer.id(), "email", customer.email())
                + complete(handle, customer.id(), "language", customer.language());
        if (completed == 0) {
            return 0;
        }
        handle.execute(
                "delete from car_words where vehicle_id in (select id from vehicle where customer_id = ?)",
                customer.id());
        // Whoever has a form of the car open does not write the old data back.
        handle.execute("update vehicle set revision = revision + 1 where customer_id = ?", customer.id());
        return 1;
    }

    private static int complete(Handle handle, String id, String column, @Nullable String value) {
        return value == null
                ? 0
                : handle.execute(
                        "update customer set %s = ? where id = ? and coalesce(%s, '') = '' and not exists (select 1 from customer_erased where customer_id = customer.id)"
                                .formatted(column, column),
                        value,
                        id);
    }
}
