package cornerbook.app.book.coming;

import cornerbook.app.book.visit.CallAnswer;
import cornerbook.core.car.Customer;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A customer who is to be asked to come back, with all for which one call is enough.
 *
 * @param first day by which the first of it is due
 * @param cars those that are to come back, and have no appointment for it
 */
public record ComingCustomer(Customer customer, LocalDate first, List<ComingCar> cars) {
    public ComingCustomer {
        cars = List.copyOf(cars);
    }

    /** What came of asking last about any of it; empty before anybody did. */
    public Optional<CallAnswer> last() {
        return cars.stream()
                .flatMap(car -> car.matters().stream())
                .flatMap(due -> Optional.ofNullable(due.last()).stream())
                .max(Comparator.comparing(CallAnswer::at));
    }
}
