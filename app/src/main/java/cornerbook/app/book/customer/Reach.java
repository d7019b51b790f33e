package cornerbook.app.book.customer;

import cornerbook.app.book.car.CarLedger;
import cornerbook.app.book.store.Transactions;
import cornerbook.app.law.ContactRules;
import cornerbook.core.coming.Channel;
import cornerbook.core.coming.Purpose;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Whether customers may be reached on a day: by what each said last, and for who was never asked by the rule of the place. It is the one
 * answer for every list on which somebody is called or written to. Each customer is looked up once.
 */
public final class Reach {
    private final Transactions store;
    private final ContactRules rules;
    private final LocalDate day;
    private final Map<String, Known> known = new HashMap<>();

    Reach(Transactions store, LocalDate day) {
        this.store = store;
        this.rules = ContactRules.at(new CarLedger(store).findUsualPlace().orElse(""));
        this.day = day;
    }

    /** Null for who had no visit yet: such a customer was here last today. */
    private record Known(ContactAnswers answers, @Nullable LocalDate lastVisit) {}

    /** Whether the customer may be called for a purpose. */
    public boolean mayCall(String customerId, Purpose purpose) {
        return permits(customerId, purpose, Channel.TELEPHONE);
    }

    public boolean permits(String customerId, Purpose purpose, Channel channel) {
        var customer = known.computeIfAbsent(customerId, this::find);
        var lastVisit = customer.lastVisit();
        return rules.get(purpose, channel)
                .permits(customer.answers().agreed(purpose, channel), lastVisit == null ? day : lastVisit, day);
    }

    private Known find(String customerId) {
        return store.read(handle -> new Known(
                new ContactAnswers(ContactLedger.listOf(handle, customerId)),
                handle.select(
                                "select visit_date from visit join vehicle on vehicle.id = visit.vehicle_id where vehicle.customer_id = ? and visit.cancelled = 0"
                                        + " order by visit_date desc limit 1",
                                customerId)
                        .mapTo(String.class)
                        .findFirst()
                        .map(LocalDate::parse)
                        .orElse(null)));
    }
}
