package cornerbook.core.release;

import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.ReadingLimit;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Decides what keeps a car from leaving. */
public final class Release {
    private static final List<ReleaseRule> BY_THE_VISIT = ReleaseRule.all(false, false);

    private Release() {}

    /**
     * What is open: work that was begun and not ended, and what was found unsafe.
     *
     * @param tight where the wheel is known to be tight
     * @param rules of the visit, by {@link ReleaseRule#all}
     * @param checked whether a second person has checked the torque
     * @param findings of the visit; empty where it could not be judged
     */
    public static List<OpenPoint> of(
            Visit visit, Collection<Corner> tight, List<ReleaseRule> rules, boolean checked, List<Finding> findings) {
        var done = done(visit);
        tight.forEach(corner -> done.add(ReleaseRule.TIGHT + corner));
        if (checked) {
            done.add(ReleaseRule.SECOND_CHECK);
        }
        return Stream.concat(work(done, rules), unsafe(visit, findings).stream())
                .toList();
    }

    private static Stream<OpenPoint> work(Set<String> done, List<ReleaseRule> rules) {
        return rules.stream()
                .filter(rule -> rule.openedBy().stream().anyMatch(done::contains))
                .filter(rule -> !done.contains(rule.closedBy()))
                .map(ReleaseRule::point);
    }

    /** The same by what the visit alone has: no second check is asked, and no visit before is looked at. */
    public static List<OpenPoint> of(Visit visit, List<Finding> findings) {
        return of(visit, tight(visit), BY_THE_VISIT, false, findings);
    }

    /** Where a caliper came off its pads, or anything else was done for which the pedal has to be pumped. */
    public static Set<Axle> brakesOpened(Visit visit) {
        return new StandingReadings(visit)
                .all().stream()
                        .filter(reading -> ReleaseRule.opensBrake(reading.measure()) && !isNotDone(reading))
                        .map(Reading::corner)
                        .filter(Objects::nonNull)
                        .map(Corner::axle)
                        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Axle.class)));
    }

    /** Where every fastener of the wheel that the car leaves on was ticked, or its torque was read. */
    public static Set<Corner> tight(Visit visit) {
        var tight = EnumSet.noneOf(Corner.class);
        tight.addAll(visit.tightened());
        new StandingReadings(visit)
                .all(Measure.WHEEL_TORQUE).stream()
                        .filter(reading -> visit.leftOn().containsValue(reading.wheelTag()))
                        .map(Reading::corner)
                        .filter(Objects::nonNull)
                        .forEach(tight::add);
        return tight;
    }

    /**
     * The findings with which nobody should drive away without knowing: each that is unsafe, and what has to be done before the
     * car leaves, as a reading outside its limit. A parking brake in service mode is work that is not ended, and is told once. The
     * shop's own hoist keeps no car.
     */
    public static List<OpenPoint> unsafe(Visit visit, List<Finding> findings) {
        boolean inServiceMode =
                work(done(visit), BY_THE_VISIT).anyMatch(point -> point.kind() == OpenPoint.Kind.SERVICE_MODE);
        return findings.stream()
                .filter(finding -> !inServiceMode || finding.subject().part() != Subject.Part.PARKING_BRAKE)
                .filter(Release::keepsFromLeaving)
                .map(finding -> OpenPoint.unsafe(finding.subject(), finding.title()))
                .toList();
    }

    /** The point that a reading outside its limit opens, by the key that it has when it is judged; empty where it keeps no car. */
    public static Optional<OpenPoint> unsafe(ReadingLimit limit) {
        return Optional.of(OpenPoint.unsafe(limit.subject(), limit.sentence())).filter(point -> limit.isBinding());
    }

    private static boolean keepsFromLeaving(Finding finding) {
        var todo = finding.todo();
        return !finding.subject().part().isOfShop()
                && (finding.verdict() == Verdict.UNSAFE || (todo != null && todo.by() == Todo.When.BEFORE_LEAVING));
    }

    /** What was read, by measure and corner; a wheel that is not on the car opens and closes nothing. */
    private static Set<String> done(Visit visit) {
        var done = new HashSet<>(Set.of(ReleaseRule.ALWAYS));
        var onCar = visit.leftOn().isEmpty() ? visit.arrivedOn() : visit.leftOn();
        new StandingReadings(visit)
                .all().stream()
                        .filter(reading -> reading.wheelTag() == null || onCar.containsValue(reading.wheelTag()))
                        .forEach(reading ->
                                done.add((isNotDone(reading) ? ReleaseRule.NOT : "") + ReleaseRule.place(reading)));
        if (!visit.leftOn().isEmpty()) {
            done.add(ReleaseRule.WHEELS_ON);
        }
        return done;
    }

    private static boolean isNotDone(Reading reading) {
        var scale = reading.measure().scale();
        return scale != null && scale.saysNotDone(reading.value());
    }
}
