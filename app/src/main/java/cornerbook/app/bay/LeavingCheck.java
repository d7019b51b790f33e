package cornerbook.app.bay;

import cornerbook.app.book.Book;
import cornerbook.app.book.bay.BayNotes;
import cornerbook.app.book.bay.ReadingAuthor;
import cornerbook.app.book.work.StandingTicks;
import cornerbook.app.book.work.WorkTick;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.OpenVisit;
import cornerbook.app.judge.Judged;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Finding;
import cornerbook.core.release.OpenPoint;
import cornerbook.core.release.Release;
import cornerbook.core.release.ReleaseRule;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What keeps a car from leaving, by all that the book has: readings, findings, and who ticked what. */
final class LeavingCheck {
    private LeavingCheck() {}

    /** What is open. */
    static List<OpenPoint> of(Desk desk, OpenVisit open, BayNotes notes) {
        var visit = open.visit();
        return Release.of(
                visit, tight(visit, notes), rules(desk, open), isChecked(visit, notes), findings(desk, visit.id()));
    }

    /** What opens and closes a point at a visit in this shop. */
    static List<ReleaseRule> rules(Desk desk, OpenVisit open) {
        return ReleaseRule.all(desk.book().rules().asksSecondCheck(), isRetorqueMissed(desk.book(), open));
    }

    /** A re-torque that was due, and neither recorded nor left to the customer with a reason at a visit between. */
    private static boolean isRetorqueMissed(Book book, OpenVisit open) {
        return book.retorques()
                .findMissed(open.history(), open.visit())
                .filter(fittedAt -> between(open, fittedAt)
                        .flatMap(visit -> book.bay().findDeparture(visit.id()).stream())
                        .flatMap(departure -> departure.reasons().stream())
                        .noneMatch(reason -> reason.caution().equals(OpenPoint.Kind.RETORQUE.name())))
                .isPresent();
    }

    private static Stream<Visit> between(OpenVisit open, String fittedAt) {
        var visits = open.history().visits();
        return visits.subList(visits.indexOf(open.history().getVisit(fittedAt)), visits.indexOf(open.visit())).stream();
    }

    /** What the visit's judges find, by what the book has now; nothing where it cannot be judged. */
    static List<Finding> findings(Desk desk, String visitId) {
        return Judged.of(
                        "visit " + visitId,
                        () -> desk.assessor()
                                .assess(desk.getHistoryOfVisit(visitId), visitId)
                                .findings())
                .orElse(List.of());
    }

    private static Set<Corner> tight(Visit visit, BayNotes notes) {
        var tight = Release.tight(visit);
        tight.removeAll(StandingTicks.of(notes.ticks()).loosened(visit.leftOn()));
        return tight;
    }

    /** The torques that stand of the wheels that it leaves on. */
    private static Stream<Reading> torques(Visit visit) {
        return new StandingReadings(visit)
                .all().stream()
                        .filter(reading -> reading.measure() == Measure.WHEEL_TORQUE
                                && visit.leftOn().containsValue(reading.wheelTag()));
    }

    /**
     * By another person than all who ticked a fastener or wrote a torque down, who had each of these before the eyes: what
     * was tightened after, or on another tablet meanwhile, is not checked.
     */
    private static boolean isChecked(Visit visit, BayNotes notes) {
        var ticks = StandingTicks.of(notes.ticks());
        var check = ticks.find(Ticks.SECOND_CHECK, null).filter(WorkTick::done);
        if (check.isEmpty()) {
            return false;
        }
        var seen = check.get().seen();
        var checker = check.get().person();
        boolean byAnother = Stream.concat(
                        ticks.fasteners(visit.leftOn()).stream()
                                .filter(WorkTick::done)
                                .map(WorkTick::person),
                        torques(visit)
                                .flatMap(reading ->
                                        Optional.ofNullable(notes.authors().get(reading.id())).stream())
                                .map(ReadingAuthor::person))
                .noneMatch(checker::equals);
        return byAnother
                && ticks.on(visit.leftOn()).stream()
                        .filter(tick -> tick.done() && tick.tick().startsWith(WorkTick.FASTENER))
                        .allMatch(tick -> seen.contains(tick.id()))
                && torques(visit).allMatch(reading -> seen.contains(reading.id()));
    }
}
