package cornerbook.app.desk;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A visit that is written to, with the car that it belongs to. */
public record OpenVisit(CarHistory history, Visit visit) {
    /** The same car, had the visit been so. */
    public OpenVisit with(Visit other) {
        var visits = history.visits().stream()
                .map(each -> each.id().equals(other.id()) ? other : each)
                .toList();
        return new OpenVisit(new CarHistory(history.vehicle(), history.customer(), history.sets(), visits), other);
    }

    /** The same car, had this been read at the visit too and had it left on these wheels. */
    public OpenVisit with(List<Reading> typed, Map<Corner, String> leftOn) {
        var readings = new ArrayList<>(visit.readings());
        readings.addAll(typed);
        return with(visit.withReadings(readings).withLeftOn(leftOn));
    }

    /** The visits from this one on, before the open one. */
    public Stream<Visit> since(String visitId) {
        var visits = history.visits();
        return visits.subList(visits.indexOf(history.getVisit(visitId)), visits.indexOf(visit)).stream();
    }

    /** For the page that stands in when it cannot be judged. */
    public Unjudged unjudged() {
        return new Unjudged(history, visit);
    }

    /** Where the rules of the book find it, as "/visits/3". */
    public String path() {
        return "/visits/" + history.visits().indexOf(visit);
    }
}
