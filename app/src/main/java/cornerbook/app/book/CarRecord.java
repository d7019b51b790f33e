package cornerbook.app.book;

import cornerbook.core.visit.CarHistory;
import java.util.Map;

/**
 * A car with all that the book has of it.
 *
 * @param notes what was entered beside readings, by visit id; a visit without is left out
 */
public record CarRecord(CarHistory history, Map<String, VisitNotes> notes) {
    public CarRecord {
        notes = Map.copyOf(notes);
    }

    /** A car of which there is nothing but its history. */
    public CarRecord(CarHistory history) {
        this(history, Map.of());
    }

    public VisitNotes notesOf(String visitId) {
        return notes.getOrDefault(visitId, VisitNotes.NONE);
    }
}
