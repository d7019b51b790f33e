package cornerbook.app.desk;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import org.jspecify.annotations.Nullable;

/**
 * What is to be judged, for the page that stands in when it cannot be.
 *
 * @param visit null where the car's own data are meant
 */
public record Unjudged(CarHistory history, @Nullable Visit visit) {
    /** By its id in the book, for the log. */
    String what() {
        return visit == null ? "car " + history.vehicle().id() : "visit " + visit.id();
    }

    Pages.View view(int status, String faultId) {
        return new Pages.View(status, "desk/unjudged", new UnjudgedPage(history, visit, faultId));
    }
}
