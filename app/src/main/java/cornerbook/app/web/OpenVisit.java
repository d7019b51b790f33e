package cornerbook.app.web;

import cornerbook.core.visit.CarHistory;
import cornerbook.core.visit.Visit;

/** A visit that is written to, with the car that it belongs to. */
record OpenVisit(CarHistory history, Visit visit) {
    /** The same car, had the visit been so. */
    OpenVisit with(Visit other) {
        var visits = history.visits().stream()
                .map(each -> each.id().equals(other.id()) ? other : each)
                .toList();
        return new OpenVisit(new CarHistory(history.vehicle(), history.customer(), history.sets(), visits), other);
    }

    /** Where the rules of the book find it, as "/visits/3". */
    String path() {
        return "/visits/" + history.visits().indexOf(visit);
    }
}
