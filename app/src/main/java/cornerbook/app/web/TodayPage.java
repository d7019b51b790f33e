package cornerbook.app.web;

import cornerbook.app.book.OpenRetorque;
import cornerbook.app.book.VehicleSummary;
import cornerbook.app.book.VisitSummary;
import cornerbook.core.visit.Finding;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The visits of a day, the re-torques that are due, and the cars.
 *
 * @param query what was searched for, may be empty
 * @param dust of the week of the day shown
 */
public record TodayPage(
        LocalDate today,
        LocalDate date,
        List<VisitSummary> visits,
        List<OpenRetorque> retorques,
        List<Car> cars,
        String query,
        BrakeDust dust) {
    public TodayPage {
        visits = List.copyOf(visits);
        retorques = List.copyOf(retorques);
        cars = List.copyOf(cars);
    }

    /** A car with the gravest finding of its latest visit; null when nothing was judged. */
    public record Car(VehicleSummary summary, @Nullable Finding gravest) {}
}
