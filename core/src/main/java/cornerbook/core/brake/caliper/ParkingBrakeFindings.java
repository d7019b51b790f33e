package cornerbook.core.brake.caliper;

import cornerbook.core.brake.caliper.CaliperSaid.Ground;
import cornerbook.core.brake.caliper.CaliperSaid.Label;
import cornerbook.core.brake.caliper.CaliperSaid.ParkingBrakeState;
import cornerbook.core.brake.judge.BrakeWork;
import cornerbook.core.brake.judge.Deficiency;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Scale;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import java.util.ArrayList;
import java.util.List;

/** Finding on the parking brake: whether it holds, and whether it was left in its service mode. */
public final class ParkingBrakeFindings {
    /** Of the catch of its lever, where the maker's own number is not at hand. Common practice, no source. */
    private static final double MOST_CLICKS = 9;

    private ParkingBrakeFindings() {}

    public static Judgement judge(Case given) {
        var readings = given.readings();
        if (BrakeWork.inServiceMode(readings)) {
            return Judgement.of(finding(
                    Verdict.UNSAFE,
                    ParkingBrakeState.IN_SERVICE_MODE,
                    List.of(new Evidence(Label.SERVICE_MODE, Label.IN_SERVICE_MODE, Ground.THIS_VISIT))));
        }
        var held = readings.ofVehicle(Measure.PARKING_BRAKE_HOLDING);
        var travel = readings.ofVehicle(Measure.PARKING_BRAKE_TRAVEL)
                .filter(reading -> reading.measure().isOn(given.vehicle(), null));
        if (held.isEmpty()) {
            return new Judgement(
                    travel.filter(ParkingBrakeFindings::isTooLong).map(ParkingBrakeFindings::tooLong).stream()
                            .toList(),
                    List.of(new CaliperSaid.ParkingBrakeNotTried()));
        }
        var evidence = new ArrayList<>(List.of(
                new Evidence(Label.TRIED, Scale.HOLDING.told(held.get().value()), Evidence.howRead(held.get()))));
        travel.ifPresent(reading -> evidence.add(travelled(reading)));
        boolean tooLong = travel.filter(ParkingBrakeFindings::isTooLong).isPresent();
        return Judgement.of(
                switch ((int) Math.round(held.get().value())) {
                    case 0 ->
                        tooLong ? tooLong(travel.get()) : finding(Verdict.HOLDS, ParkingBrakeState.HOLDS, evidence);
                    case 1 -> {
                        evidence.add(Deficiency.PARKING_BRAKE_WEAK.evidence());
                        yield finding(Verdict.RUNS_OUT, ParkingBrakeState.HOLDS_WEAKLY, evidence);
                    }
                    default -> {
                        evidence.add(Deficiency.PARKING_BRAKE_FAILS.evidence());
                        yield finding(Verdict.UNSAFE, ParkingBrakeState.DOES_NOT_HOLD, evidence);
                    }
                });
    }

    private static boolean isTooLong(Reading travel) {
        return travel.value() > MOST_CLICKS;
    }

    private static Finding tooLong(Reading travel) {
        return finding(Verdict.RUNS_OUT, ParkingBrakeState.TRAVELS_TOO_FAR, List.of(travelled(travel)));
    }

    private static Evidence travelled(Reading travel) {
        return new Evidence(
                Label.TRAVEL,
                new CaliperSaid.Clicks(Amount.of(travel.value(), "clicks"), Amount.of(MOST_CLICKS, "clicks")),
                Evidence.howRead(travel));
    }

    private static Finding finding(Verdict verdict, ParkingBrakeState state, List<Evidence> evidence) {
        return new Finding(
                        new Subject(Subject.Part.PARKING_BRAKE, null, null, null),
                        verdict,
                        new CaliperSaid.ParkingBrakeTitle(state),
                        new CaliperSaid.ParkingBrakeWords(state),
                        null,
                        null,
                        verdict == Verdict.HOLDS ? 1 : verdict == Verdict.RUNS_OUT ? 0.5 : 0,
                        evidence,
                        Ground.TRIED_AT_THE_VISIT)
                .todo(state == ParkingBrakeState.IN_SERVICE_MODE ? Todo.Action.END_SERVICE_MODE : Todo.Action.REPAIR);
    }
}
