package cornerbook.app.desk.visit;

import cornerbook.app.desk.asked.WheelProposal.Fill;
import cornerbook.core.car.CarHistory;

/**
 * The form that opens a visit, as typed.
 *
 * @param visitId born with the form, so that a form that is sent twice opens one visit
 * @param arrived the wheels that it came on, and where they are filled in from
 * @param error one sentence, may be empty
 * @param asked the odometer that is to be typed again
 */
public record NewVisitPage(
        CarHistory history,
        String visitId,
        String date,
        String odometer,
        String technician,
        Fill arrived,
        String error,
        AskedOdometer asked) {}
