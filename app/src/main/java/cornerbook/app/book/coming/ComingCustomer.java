package cornerbook.app.book.coming;

import cornerbook.app.book.visit.CallAnswer;
import cornerbook.core.car.Customer;
import cornerbook.core.coming.Matter;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

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

    /** The same with only some of its matters; without a car when none is left. */
    public ComingCustomer about(Predicate<Matter> matters) {
        return new ComingCustomer(
                customer,
                first,
                cars.stream()
                        .map(car -> new ComingCar(
                                car.id(),
                                car.name(),
                                car.plate(),
                                car.lastVisit(),
                                car.matters().stream()
                                        .filter(due -> matters.test(due.matter()))
                                        .toList(),
                                car.missed()))
                        .filter(car -> !car.matters().isEmpty())
                        .toList());
    }

    /** Every matter of it, each once. */
    public Set<Matter> matters() {
        var all = EnumSet.noneOf(Matter.class);
        cars.forEach(car -> car.matters().forEach(due -> all.add(due.matter())));
        return all;
    }

    /** What came of asking last about any of it; empty before anybody did. */
    public Optional<CallAnswer> last() {
        return cars.stream()
                .flatMap(car -> car.matters().stream())
                .flatMap(due -> Optional.ofNullable(due.last()).stream())
                .max(Comparator.comparing(CallAnswer::at));
    }
}
