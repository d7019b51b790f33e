package cornerbook.core.air.judge;

import cornerbook.core.air.AirSaid.Origin;
import cornerbook.core.air.SensorAge;
import cornerbook.core.air.SensorLearning;
import cornerbook.core.air.judge.PressureSaid.Label;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Day;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Findings on the pressure sensors of the wheels that the car leaves on: their batteries, and what the car has to learn. */
public final class SensorFindings {
    private SensorFindings() {}

    public static Judgement judge(Case given) {
        var findings = new ArrayList<Finding>();
        var notJudged = new ArrayList<Said>();
        var visit = given.visit();
        var warning = given.vehicle().details().pressureWarning();
        var leftOn = visit.leftOn();
        given.history().sets().stream()
                .flatMap(set -> set.wheels().stream())
                .forEach(wheel -> leftOn.entrySet().stream()
                        .filter(entry -> entry.getValue().equals(wheel.tag()))
                        .map(Map.Entry::getKey)
                        .forEach(corner -> old(corner, wheel, visit, findings)));
        boolean changed = !leftOn.isEmpty() && !leftOn.equals(visit.arrivedOn());
        if (changed && warning.kind() != null) {
            notJudged.add(new PressureSaid.HasToLearn(SensorLearning.of(warning).sentence()));
        }
        return new Judgement(findings, notJudged);
    }

    private static void old(Corner corner, Wheel wheel, Visit visit, List<Finding> findings) {
        var since = wheel.details().sensorBatteryOn();
        if (since == null || since.isAfter(visit.date())) {
            return;
        }
        var age = SensorAge.of(since, visit.date());
        boolean old = age.old();
        findings.add(new Finding(
                        new Subject(Subject.Part.PRESSURE_SENSOR, corner, wheel.tag(), null),
                        old ? Verdict.RUNS_OUT : Verdict.HOLDS,
                        new PressureSaid.BatteryAge(wheel.tag(), new Amount(age.years(), "", 1)),
                        old ? new PressureSaid.BatteryEnds(corner) : new PressureSaid.BatteryHolds(corner),
                        old ? age.endsOn() : null,
                        null,
                        Math.clamp(1 - age.years() / SensorAge.END_YEARS, 0, 1),
                        List.of(new Evidence(
                                Label.BATTERY_SINCE,
                                new Day(since),
                                new PressureSaid.SensorOf(
                                        wheel.sensorId(), wheel.details().sensorType()))),
                        Origin.SENSOR_LIFE)
                .todo(Todo.Action.REPLACE));
    }
}
