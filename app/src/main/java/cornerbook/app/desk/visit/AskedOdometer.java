package cornerbook.app.desk.visit;

import cornerbook.app.desk.Form;
import cornerbook.app.request.Told;
import cornerbook.core.season.judge.OdometerDoubt;
import java.util.Optional;

/**
 * An odometer that was typed and that the car can hardly have: the field is empty again, and the same value typed once more
 * stands.
 *
 * @param question one sentence, empty when nothing is asked
 * @param km what was typed, empty when nothing is asked
 */
public record AskedOdometer(String question, String km) {
    static final AskedOdometer NONE = new AskedOdometer("", "");

    /** Name of the form's field that says what was asked about. */
    private static final String FIELD = "asked";

    /** What to ask about a value that was typed; empty when it is credible, or was typed a second time. */
    static Optional<AskedOdometer> of(Optional<OdometerDoubt> doubt, Form typed) {
        return doubt.filter(found -> !String.valueOf(found.odometerKm()).equals(typed.get(FIELD)))
                .map(found -> new AskedOdometer(Told.say(found.question()), String.valueOf(found.odometerKm())));
    }

    public boolean asks() {
        return !question.isEmpty();
    }

    public String field() {
        return FIELD;
    }
}
