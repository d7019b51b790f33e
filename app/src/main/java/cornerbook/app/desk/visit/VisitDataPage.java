package cornerbook.app.desk.visit;

import cornerbook.app.book.Book;
import cornerbook.app.book.visit.VisitChange;
import cornerbook.app.desk.OpenVisit;
import cornerbook.app.desk.UnitChoice;
import cornerbook.app.request.Told;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import cornerbook.core.say.Amount;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Date and odometer of a visit, as typed.
 *
 * @param visit as it stands
 * @param reason why it is put right, may be empty
 * @param error one sentence, may be empty
 * @param asked the odometer that is to be typed again
 * @param changes what was put right of this visit before, earliest first
 */
public record VisitDataPage(
        CarHistory history,
        Visit visit,
        String date,
        String odometer,
        String reason,
        String error,
        AskedOdometer asked,
        List<VisitChange> changes) {
    public VisitDataPage {
        changes = List.copyOf(changes);
    }

    /** What was put right of a visit, earliest first. */
    static List<VisitChange> changes(Book book, OpenVisit open) {
        return book.visits().listChanges(open.history().vehicle().id()).stream()
                .filter(change -> change.visitId().equals(open.visit().id()))
                .toList();
    }

    /** The odometer as a person of these units reads it in the field. */
    static String shown(Visit visit) {
        return UnitChoice.current().field(visit.odometerKm(), "km");
    }

    public String shownOdometer() {
        return shown(visit);
    }

    /** The visits before and after, which it must fit between; empty for an only one. */
    public String neighbours() {
        int place = history.visits().indexOf(visit);
        return history.visits().stream()
                .filter(other -> Math.abs(history.visits().indexOf(other) - place) == 1)
                .map(other -> Told.say(new VisitSaid.Neighbour(
                        history.visits().indexOf(other) < place, other.date(), Amount.of(other.odometerKm(), "km"))))
                .collect(Collectors.joining(" "));
    }
}
