package cornerbook.app.desk.visit;

import cornerbook.core.car.CarHistory;
import cornerbook.core.corner.Corner;
import java.util.Map;

/**
 * The form that opens a visit, as typed.
 *
 * @param visitId born with the form, so that a form that is sent twice opens one visit
 * @param arrivedOn wheel tag at each corner, empty where unknown
 * @param hint where they come from, may be empty
 * @param error one sentence, may be empty
 * @param asked the odometer that is to be typed again
 */
public record NewVisitPage(
        CarHistory history,
        String visitId,
        String date,
        String odometer,
        String technician,
        Map<Corner, String> arrivedOn,
        String hint,
        String error,
        AskedOdometer asked) {
    public NewVisitPage {
        arrivedOn = Map.copyOf(arrivedOn);
    }

    public String at(Corner corner) {
        return arrivedOn.getOrDefault(corner, "");
    }
}
