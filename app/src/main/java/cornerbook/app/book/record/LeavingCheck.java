package cornerbook.app.book.record;

import cornerbook.app.book.bay.ReadingAuthor;
import cornerbook.app.book.work.StandingTicks;
import cornerbook.app.book.work.WorkTick;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Finding;
import cornerbook.core.release.OpenPoint;
import cornerbook.core.release.Release;
import cornerbook.core.release.ReleaseRule;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What keeps a car from leaving, by its readings and by who ticked what. Bay, pages, sheet and commands ask here.
 *
 * @param ticks of the visit, in the order in which the book took them
 * @param authors of the readings that were taken at a tablet
 */
public record LeavingCheck(Visit visit, List<WorkTick> ticks, Collection<ReadingAuthor> authors) {
    public LeavingCheck {
        ticks = List.copyOf(ticks);
        authors = List.copyOf(authors);
    }

    /** By all that was noted at the visit. */
    public LeavingCheck(Visit visit, VisitNotes notes) {
        this(visit, notes.ticks(), notes.authors());
    }

    /**
     * What is open.
     *
     * @param rules what opens and closes a point at this visit
     * @param findings of the visit; empty where it could not be judged
     */
    public List<OpenPoint> open(List<ReleaseRule> rules, List<Finding> findings) {
        return Release.of(visit, tight(), rules, isChecked(), findings);
    }

    private Set<Corner> tight() {
        var tight = Release.tight(visit);
        tight.removeAll(StandingTicks.of(ticks).loosened(visit.leftOn()));
        return tight;
    }

    /** The torques that stand of the wheels that it leaves on. */
    private Stream<Reading> torques() {
        return new StandingReadings(visit)
                .all(Measure.WHEEL_TORQUE).stream()
                        .filter(reading -> visit.leftOn().containsValue(reading.wheelTag()));
    }

    /**
     * By another person than all who ticked a fastener or wrote a torque down, who had each of these before the eyes: what
     * was tightened after, or on another tablet meanwhile, is not checked.
     */
    private boolean isChecked() {
        var standing = StandingTicks.of(ticks);
        var check = standing.find(WorkTick.SECOND_CHECK, null).filter(WorkTick::done);
        if (check.isEmpty()) {
            return false;
        }
        var seen = check.get().seen();
        var checker = check.get().person();
        var torques = torques().map(Reading::id).toList();
        boolean byAnother = Stream.concat(
                        standing.fasteners(visit.leftOn()).stream()
                                .filter(WorkTick::done)
                                .map(WorkTick::person),
                        authors.stream()
                                .filter(author -> torques.contains(author.readingId()))
                                .map(ReadingAuthor::person))
                .noneMatch(checker::equals);
        return byAnother
                && seen.containsAll(torques)
                && standing.on(visit.leftOn()).stream()
                        .filter(tick -> tick.done() && tick.tick().startsWith(WorkTick.FASTENER))
                        .allMatch(tick -> seen.contains(tick.id()));
    }
}
