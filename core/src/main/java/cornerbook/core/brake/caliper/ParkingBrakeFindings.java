package cornerbook.core.brake.caliper;

import cornerbook.core.say.Said;

import cornerbook.core.brake.judge.Deficiency;
import cornerbook.core.brake.judge.OpenBrakeWork;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Scale;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finding on the parking brake: whether it holds, and whether it was left in its service mode. */
public final class ParkingBrakeFindings {
    private ParkingBrakeFindings() {}

    public static Optional<Finding> of(Visit visit, List<Said> notJudged) {
        var readings = new StandingReadings(visit);
        if (OpenBrakeWork.inServiceMode(readings)) {
            return Optional.of(finding(
                    Verdict.UNSAFE,
                    "Parking brake still in service mode",
                    "The parking brake is in its service mode and does not hold the car. It has to be taken out of it and applied once before the car leaves.",
                    List.of(new Evidence("service mode", "in, not recorded as out", "readings of this visit"))));
        }
        var held = readings.ofVehicle(Measure.PARKING_BRAKE_HOLDING);
        if (held.isEmpty()) {
            notJudged.add(Said.verbatim("parking brake: whether it holds was not tried"));
            return Optional.empty();
        }
        var word = Scale.HOLDING.wordOf(held.get().value());
        var evidence = new ArrayList<>(List.of(new Evidence("tried", word, Evidence.howRead(held.get()))));
        return Optional.of(
                switch ((int) Math.round(held.get().value())) {
                    case 0 ->
                        finding(Verdict.HOLDS, "Parking brake holds", "The parking brake holds the car.", evidence);
                    case 1 -> {
                        evidence.add(Deficiency.PARKING_BRAKE_WEAK.evidence());
                        yield finding(
                                Verdict.RUNS_OUT,
                                "Parking brake holds weakly",
                                "The parking brake holds the car only weakly and has to be looked at.",
                                evidence);
                    }
                    default -> {
                        evidence.add(Deficiency.PARKING_BRAKE_FAILS.evidence());
                        yield finding(
                                Verdict.SPENT,
                                "Parking brake does not hold",
                                "The parking brake does not hold the car. It has to be put right now; until then choke the wheels.",
                                evidence);
                    }
                });
    }

    private static Finding finding(Verdict verdict, String title, String words, List<Evidence> evidence) {
        return new Finding(
                new Subject(Subject.Part.PARKING_BRAKE, null, null, null),
                verdict,
                title,
                words,
                null,
                null,
                verdict == Verdict.HOLDS ? 1 : verdict == Verdict.RUNS_OUT ? 0.5 : 0,
                evidence,
                "tried at the visit; verdict by hand: common practice, no source");
    }
}
