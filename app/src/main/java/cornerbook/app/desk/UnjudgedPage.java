package cornerbook.app.desk;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import org.jspecify.annotations.Nullable;

/**
 * Stands in for a page that could not be made, as judging failed.
 *
 * @param visit null where the car's own data are meant
 * @param faultId of the fault in the log
 */
public record UnjudgedPage(CarHistory history, @Nullable Visit visit, String faultId) {}
