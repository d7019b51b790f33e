package cornerbook.app.desk.days;

import cornerbook.app.book.car.VehicleSummary;
import java.util.List;

/**
 * The car that a day is agreed for is looked for.
 *
 * @param query may be empty
 * @param all how many cars match
 */
public record ChooseCarPage(String query, List<VehicleSummary> cars, int all) {
    public ChooseCarPage {
        cars = List.copyOf(cars);
    }
}
