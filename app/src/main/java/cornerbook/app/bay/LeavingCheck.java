package cornerbook.app.bay;

import cornerbook.app.book.bay.BayNotes;
import cornerbook.app.book.bay.ReadingAuthor;
import cornerbook.app.book.work.StandingTicks;
import cornerbook.app.book.work.WorkTick;
import cornerbook.app.desk.Desk;
import cornerbook.app.judge.Judged;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Finding;
import cornerbook.core.release.OpenPoint;
import cornerbook.core.release.Release;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What keeps a car from leaving, by all that the book has: readings, findings, and who ticked what. */
final class LeavingCheck {
    private LeavingCheck() {}

    /** What is open. */
    static List<OpenPoint> of(Visit visit, BayNotes notes, boolean asksSecondCheck, List<Finding> findings) {
        return Release.of(visit, tight(visit, notes), asksSecondCheck, isChecked(visit, notes), findings);
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
