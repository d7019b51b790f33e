package cornerbook.app.desk.visit;

import cornerbook.app.book.Book;
import cornerbook.app.book.visit.VisitChange;
import cornerbook.app.desk.OpenVisit;
import cornerbook.app.request.Told;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.say.Amount;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What can be put right of a visit beside its readings.
 *
 * @param visit as it stands
 * @param fields what stands in each field, by its name; of the reason and the person too, once they are typed
 * @param person who works on the tablet that asks; null where the name is typed
 * @param error one sentence, may be empty
 * @param asked the odometer that is asked about
 * @param changes what was put right of this visit before, earliest first
 */
public record VisitDataPage(
        CarHistory history,
        Visit visit,
        Map<String, String> fields,
        @Nullable String person,
        String error,
        AskedOdometer asked,
        List<VisitChange> changes) {
    public VisitDataPage {
        fields = Map.copyOf(fields);
        changes = List.copyOf(changes);
    }

    public String field(String name) {
        return fields.getOrDefault(name, "");
    }

    public String came(Corner corner) {
        return field(VisitForm.CAME + corner);
    }

    public String left(Corner corner) {
        return field(VisitForm.LEFT + corner);
    }

    /** What the form brings back of the visit as it was shown, by name of the hidden field. */
    public Map<String, String> seen() {
        return VisitForm.seenFields(visit);
    }

    /** What was put right of a visit, earliest first. */
    static List<VisitChange> changes(Book book, OpenVisit open) {
        return book.visits().listChanges(open.history().vehicle().id()).stream()
                .filter(change -> change.visitId().equals(open.visit().id()))
                .toList();
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
