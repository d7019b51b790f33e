package cornerbook.app.desk;

import cornerbook.app.book.Book;
import cornerbook.app.book.bay.VisitInBay;
import cornerbook.app.book.visit.CancelledVisit;
import cornerbook.app.request.PageException;
import cornerbook.core.assess.Assessment;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import cornerbook.core.finding.Finding;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What every page works with: the book, the assessor and the day. */
public record Desk(Book book, Learning learning, Clock clock) {
    public Assessor assessor() {
        return learning.assessor();
    }

    public LocalDate today() {
        return LocalDate.now(clock);
    }

    public Instant now() {
        return clock.instant();
    }

    /** The car, or a page that says that there is none. */
    public CarHistory getHistory(String vehicleId) {
        return book.cars().find(vehicleId).orElseThrow(() -> new PageException(404, new DeskSaid.NoCar()));
    }

    public CarHistory getHistoryOfVisit(String visitId) {
        return book.cars().findOfVisit(visitId).orElseThrow(() -> noVisit(visitId));
    }

    /** The visit alone, or a page that says that there is none. */
    public Visit getVisit(String visitId) {
        return book.visits().find(visitId).orElseThrow(() -> noVisit(visitId));
    }

    /** The visit with what tablets show of it, or a page that says that there is none. */
    public VisitInBay getVisitInBay(String visitId) {
        return book.bay().findVisit(visitId).orElseThrow(() -> noVisit(visitId));
    }

    /** Why the book gives no visit of that id: it was cancelled, or never there. */
    private PageException noVisit(String visitId) {
        return new PageException(
                404,
                book.visits()
                        .findCancelled(visitId)
                        .map(CancelledVisit::cancelled)
                        .<DeskSaid>map(cancelled ->
                                new DeskSaid.VisitCancelled(cancelled.on(), cancelled.person(), cancelled.reason()))
                        .orElseGet(DeskSaid.NoVisit::new));
    }

    /** The latest visit with all that was found out at it; empty for a car without visits. */
    public Optional<Assessment> assessLatest(CarHistory history) {
        return history.visits().isEmpty()
                ? Optional.empty()
                : Optional.of(
                        assessor().assess(history, history.visits().getLast().id()));
    }

    /** What was found at the latest visit, gravest first, without what else {@link #assessLatest} works out. */
    public List<Finding> findingsOfLatest(CarHistory history) {
        return history.visits().isEmpty()
                ? List.of()
                : assessor().findings(history, history.visits().getLast().id());
    }

    /** The visit, or a page that says that there is none. */
    public OpenVisit getOpenVisit(String visitId) {
        var history = getHistoryOfVisit(visitId);
        return new OpenVisit(history, history.getVisit(visitId));
    }
}
