package cornerbook.app.book.record;

import cornerbook.app.book.car.WheelChange;
import cornerbook.app.book.visit.VisitChange;
import cornerbook.core.car.CarHistory;
import java.util.List;
import java.util.Map;

/**
 * A car with all that the book has of it.
 *
 * @param notes what was entered beside readings, by visit id; a visit without is left out
 * @param wheelChanges what was put right in its sets and wheels, earliest first
 * @param visitChanges what was put right of its visits, earliest first
 */
public record CarRecord(
        CarHistory history,
        Map<String, VisitNotes> notes,
        List<WheelChange> wheelChanges,
        List<VisitChange> visitChanges) {
    public CarRecord {
        notes = Map.copyOf(notes);
        wheelChanges = List.copyOf(wheelChanges);
        visitChanges = List.copyOf(visitChanges);
    }

    /** A car of which there is nothing but its history. */
    public CarRecord(CarHistory history) {
        this(history, Map.of(), List.of(), List.of());
    }

    public VisitNotes notesOf(String visitId) {
        return notes.getOrDefault(visitId, VisitNotes.NONE);
    }
}
