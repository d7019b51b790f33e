package cornerbook.app.desk.visit;

import cornerbook.app.book.work.Remark;
import cornerbook.app.desk.asked.WheelProposal.Fill;
import cornerbook.core.car.CarHistory;
import java.util.List;
import java.util.Map;

/**
 * The form that opens a visit, as typed.
 *
 * @param visitId born with the form, so that a form that is sent twice opens one visit
 * @param arrived the wheels that it came on, and where they are filled in from
 * @param error one sentence, may be empty
 * @param asked the odometer that is to be typed again
 */
public record NewVisitPage(
        CarHistory history, String visitId, Fields typed, Fill arrived, String error, AskedOdometer asked) {
    static final List<Remark.Topic> ASKED = List.of(Remark.Topic.COMPLAINT, Remark.Topic.ARRIVAL_DAMAGE);

    /**
     * The visit in words.
     *
     * @param remarks what the customer says and what is seen before work begins
     */
    public record Fields(String date, String odometer, String technician, Map<Remark.Topic, String> remarks) {
        public Fields {
            remarks = Map.copyOf(remarks);
        }

        public String remark(Remark.Topic topic) {
            return remarks.getOrDefault(topic, "");
        }
    }

    /** What is written down as the car comes in. */
    public List<Remark.Topic> topics() {
        return ASKED;
    }
}
