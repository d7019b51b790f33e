package cornerbook.app.book.bay;

import cornerbook.core.car.Visit;
import cornerbook.core.corner.Axle;
import java.util.Map;

/**
 * What tablets show of a visit, as it stands at one moment.
 *
 * @param placardsKpa cold pressure on each axle of its car by the placard, kPa, gauge; without an axle whose placard nobody has read
 */
public record VisitInBay(Visit visit, BayNotes notes, Map<Axle, Double> placardsKpa) {
    public VisitInBay {
        placardsKpa = Map.copyOf(placardsKpa);
    }
}
