package cornerbook.core.assess;

import cornerbook.core.brake.judge.BrakeReadingRules;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Problem;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The rules that a car's history must keep before it enters the book. */
public final class VisitRules {
    /** How far a gauge may read above the depth when new. Common practice, no source. */
    public static final double DEEPER_THAN_NEW_MM = 0.5;

    /** No visit that a shop keeps was earlier: a year before that was typed wrong. Common practice, no source. */
    private static final LocalDate EARLIEST = LocalDate.of(1950, 1, 1);
    /** No next visit is agreed for later. Common practice, no source. */
    private static final int MOST_YEARS_AHEAD = 10;

    private final CarHistory history;
    private final LocalDate today;
    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, Wheel> wheels = new HashMap<>();

    private VisitRules(CarHistory history, LocalDate today) {
        this.history = history;
        this.today = today;
    }

    /**
     * Everything that cannot stand, empty when the history is sound.
     *
     * @param today the last date that is not in the future
     */
    public static List<Problem> check(CarHistory history, LocalDate today) {
        var rules = new VisitRules(history, today);
        rules.checkWheels();
        rules.checkVisits();
        return List.copyOf(rules.problems);
    }

    /** Why a reading cannot be taken now, beside what {@link #check} says; what is in the book already may stand. */
    public static Optional<Said> refuseNew(Vehicle vehicle, Reading reading) {
        return BrakeReadingRules.wrongCaliper(vehicle, reading);
    }

    private void checkWheels() {
        for (int s = 0; s < history.sets().size(); s++) {
            var set = history.sets().get(s);
            for (int i = 0; i < set.wheels().size(); i++) {
                var wheel = set.wheels().get(i);
                if (wheels.put(wheel.tag(), wheel) != null) {
                    add("/wheelSets/%s/wheels/%s/tag".formatted(s, i), new AssessSaid.WheelTwice(wheel.tag()));
                }
            }
        }
    }

    private void checkVisits() {
        var visitIds = new HashSet<String>();
        var readingIds = new HashSet<String>();
        for (int v = 0; v < history.visits().size(); v++) {
            var visit = history.visits().get(v);
            var where = "/visits/" + v;
            if (!visitIds.add(visit.id())) {
                add(where + "/id", new AssessSaid.VisitTwice(visit.id()));
            }
            if (visit.date().isAfter(today)) {
                add(where + "/date", new AssessSaid.DateInFuture(visit.date(), today));
            }
            if (visit.date().isBefore(EARLIEST)) {
                add(where + "/date", new AssessSaid.DateLongAgo(visit.date(), EARLIEST));
            }
            var due = visit.card().nextVisitDue();
            if (due != null && due.isAfter(visit.date().plusYears(MOST_YEARS_AHEAD))) {
                add(where + "/nextVisitDue", new AssessSaid.NextVisitFarAhead(due, MOST_YEARS_AHEAD));
            }
            checkPositions(where + "/arrivedOn", visit.arrivedOn());
            checkPositions(where + "/leftOn", visit.leftOn());
            var standing = new StandingReadings(visit);
            for (int r = 0; r < visit.readings().size(); r++) {
                var reading = visit.readings().get(r);
                var place = new ReadingPlace(v, r);
                checkReading(place, visit, reading, readingIds);
                BrakeReadingRules.problem(history.vehicle(), standing, reading)
                        .ifPresent(problem -> problems.add(new Problem(place.of("value"), problem)));
            }
        }
    }

    private void checkPositions(String where, Map<Corner, String> wheelAt) {
        var seen = new HashMap<String, Corner>();
        for (var corner : Corner.values()) {
            var tag = wheelAt.get(corner);
            if (tag == null) {
                continue;
            }
            if (!wheels.containsKey(tag)) {
                add(where + "/" + corner, new AssessSaid.NoSuchWheel(tag));
            }
            var other = seen.put(tag, corner);
            if (other != null) {
                add(where + "/" + corner, new AssessSaid.WheelAtTwoCorners(tag, other, corner));
            }
        }
    }

    /** Where a reading stands, which is written down for one of some thousand. */
    private record ReadingPlace(int visit, int reading) {
        String of(String member) {
            return "/visits/" + visit + "/readings/" + reading + "/" + member;
        }
    }

    private void checkReading(ReadingPlace place, Visit visit, Reading reading, Set<String> readingIds) {
        if (!readingIds.add(reading.id())) {
            add(place.of("id"), new AssessSaid.ReadingTwice(reading.id()));
        }
        checkCorrection(place, visit, reading);
        var tag = reading.wheelTag();
        var corner = reading.corner();
        if (tag == null || corner == null) {
            return;
        }
        if (!tag.equals(visit.arrivedOn().get(corner))
                && !tag.equals(visit.leftOn().get(corner))
                && !isOutOfStore(visit, tag)
                && visit.readings().stream().noneMatch(other -> reading.id().equals(other.corrects()))) {
            add(place.of("wheel"), new AssessSaid.WheelNotThere(tag, corner, there(visit, corner)));
        }
        var wheel = wheels.get(tag);
        var newMm = wheel == null ? null : wheel.tyre().newDepthMm();
        if (newMm != null && reading.measure() == Measure.TREAD_DEPTH && reading.value() > newMm + DEEPER_THAN_NEW_MM) {
            add(
                    place.of("value"),
                    new AssessSaid.DeeperThanNew(
                            new Amount(reading.value(), "mm", 1),
                            tag,
                            new Amount(newMm, "mm", 1),
                            new Amount(newMm + DEEPER_THAN_NEW_MM, "mm", 1)));
        }
    }

    /** Read before it is known where it goes, or although it stays off; its corner is the one where it ran. */
    private static boolean isOutOfStore(Visit visit, String tag) {
        return !visit.arrivedOn().isEmpty()
                && !visit.arrivedOn().containsValue(tag)
                && !visit.leftOn().containsValue(tag);
    }

    private void checkCorrection(ReadingPlace place, Visit visit, Reading reading) {
        var corrects = reading.corrects();
        if (corrects == null) {
            return;
        }
        if (visit.readings().stream().noneMatch(other -> other.id().equals(corrects))) {
            add(place.of("corrects"), new AssessSaid.CorrectsNothing(corrects));
        } else if (endsInACircle(reading, visit)) {
            add(place.of("corrects"), new AssessSaid.CorrectsItself(reading.id(), corrects));
        }
    }

    /** Readings that correct each other in a circle would all count as corrected, and none would stand. */
    private static boolean endsInACircle(Reading reading, Visit visit) {
        var correctedBy = new HashMap<String, String>();
        visit.readings().forEach(each -> correctedBy.put(each.id(), each.corrects()));
        var seen = new HashSet<String>();
        for (var id = reading.id(); id != null; id = correctedBy.get(id)) {
            if (!seen.add(id)) {
                return true;
            }
        }
        return false;
    }

    /** The wheels that were at a corner; null when none was. */
    private static @Nullable Said there(Visit visit, Corner corner) {
        var tags = Stream.of(visit.arrivedOn(), visit.leftOn())
                .map(wheelAt -> wheelAt.get(corner))
                .filter(Objects::nonNull)
                .distinct()
                .map(Said::verbatim)
                .toList();
        return tags.isEmpty() ? null : Listed.or(tags);
    }

    private void add(String where, AssessSaid message) {
        problems.add(new Problem(where, message));
    }
}
