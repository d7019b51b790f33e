package cornerbook.app.desk.today;

import cornerbook.app.book.car.VehicleSummary;
import cornerbook.words.Reader;
import java.util.List;

/**
 * Rows of the list of cars that are no longer old.
 *
 * @param shop who reads, by the shop's time
 */
public record JudgedRows(List<VehicleSummary> cars, Reader shop) {
    public JudgedRows {
        cars = List.copyOf(cars);
    }
}
