package cornerbook.core.release;

import cornerbook.core.brake.judge.OpenBrakeWork;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Decides what keeps a car from leaving. */
public final class Release {
    private Release() {}

    /**
     * What is open: work that was begun and not ended, and what was found unsafe.
     *
     * @param tight where the wheel is known to be tight
     * @param asksSecondCheck whether the shop asks a second person to check the torque
     * @param checked whether one did
     * @param findings of the visit; empty where it could not be judged
     */
    public static List<OpenPoint> of(
            Visit visit, Collection<Corner> tight, boolean asksSecondCheck, boolean checked, List<Finding> findings) {
        var done = done(visit);
        tight.forEach(corner -> done.add(ReleaseRule.TIGHT + corner));
        if (checked) {
            done.add(ReleaseRule.SECOND_CHECK);
        }
        var work = ReleaseRule.all(asksSecondCheck).stream()
                .filter(rule -> rule.openedBy().stream().anyMatch(done::contains))
                .filter(rule -> !done.contains(rule.closedBy()))
                .map(ReleaseRule::point);
        return Stream.concat(work, unsafe(visit, findings).stream()).toList();
    }

    /**
     * The findings with which nobody should drive away without knowing: each that is unsafe, and a wheel torque outside its
     * limits on either side, which the wrench in the hand can still mend. A parking brake in service mode is work that is not
     * ended, and is told once.
     */
    public static List<OpenPoint> unsafe(Visit visit, List<Finding> findings) {
        boolean inServiceMode = OpenBrakeWork.inServiceMode(new StandingReadings(visit));
        return findings.stream()
                .filter(finding -> !inServiceMode || finding.subject().part() != Subject.Part.PARKING_BRAKE)
                .filter(finding -> finding.verdict() == Verdict.UNSAFE
                        || (finding.subject().part() == Subject.Part.WHEEL_TORQUE
                                && finding.verdict() != Verdict.HOLDS))
                .map(OpenPoint::unsafe)
                .toList();
    }

    /** What was read, by measure and corner; a wheel that came off closes nothing. */
    private static Set<String> done(Visit visit) {
        var done = new HashSet<String>();
        new StandingReadings(visit)
                .all().stream()
                        .filter(reading ->
                                reading.wheelTag() == null || visit.leftOn().containsValue(reading.wheelTag()))
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
