package cornerbook.core.brake.caliper;

import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.brake.caliper.CaliperSaid.Ground;
import cornerbook.core.brake.caliper.CaliperSaid.Label;
import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Scale;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Finding on what moves and holds the pads of one corner: pins, piston, hardware, boots. */
public final class CaliperFindings {
    private static final int WORST = 2;
    /** How far out a piston is moved to see whether it comes back. */
    private static final Amount MOVED_OUT = new Amount(0.5, "mm", 2);

    private final BrakeCorner at;
    private final List<Said> faults = new ArrayList<>();
    private final List<Evidence> evidence = new ArrayList<>();
    private boolean grave;

    private CaliperFindings(BrakeCorner at) {
        this.at = at;
    }

    /** The finding; empty when nothing of it was looked at. */
    public static Optional<Finding> of(BrakeCorner at) {
        return new CaliperFindings(at).judge();
    }

    private Optional<Finding> judge() {
        boolean serviced = at.read(Measure.PAD_MOVEMENT_AFTER_SERVICE)
                .filter(after -> Math.round(after.value()) == 0)
                .isPresent();
        look(Measure.SLIDE_PIN_MOVEMENT, serviced);
        look(Measure.RETAINING_PIN_MOVEMENT, serviced);
        look(Measure.PISTON_MOVEMENT, false);
        look(Measure.BRAKE_HARDWARE, at.done(Measure.BRAKE_HARDWARE_REPLACED));
        look(Measure.BRAKE_BOOTS, false);
        pistonReturn();
        lubricant();
        if (evidence.isEmpty()) {
            return Optional.empty();
        }
        var found = Listed.commas(faults);
        var verdict = faults.isEmpty() ? Verdict.HOLDS : grave ? Verdict.SPENT : Verdict.RUNS_OUT;
        return Optional.of(new Finding(
                        new Subject(Subject.Part.CALIPER, at.corner(), null, null),
                        verdict,
                        faults.isEmpty()
                                ? new CaliperSaid.MovesTitle(at.corner())
                                : new CaliperSaid.FaultsTitle(at.corner(), found),
                        switch (verdict) {
                            case HOLDS -> new CaliperSaid.Moves(at.corner());
                            case RUNS_OUT -> new CaliperSaid.NeedsCare(at.corner(), found);
                            case SPENT, UNSAFE -> new CaliperSaid.PutRightNow(at.corner(), found);
                        },
                        null,
                        null,
                        verdict == Verdict.HOLDS ? 1 : grave ? 0 : 0.5,
                        evidence,
                        Ground.HAND_AND_EYE)
                .todo(grave ? Todo.Action.REPAIR : Todo.Action.SERVICE_BRAKE));
    }

    private void look(Measure measure, boolean mended) {
        at.read(measure).ifPresent(reading -> {
            int place = Objects.requireNonNull(measure.scale())
                    .told(reading.value())
                    .place();
            evidence.add(new Evidence(
                    new CaliperSaid.Looked(measure),
                    new CaliperSaid.AsFound(measure, place, mended && place > 0),
                    Evidence.howRead(reading)));
            if (place > 0 && !mended) {
                faults.add(new CaliperSaid.Fault(measure, place));
                grave |= place >= WORST;
            }
        });
    }

    private void pistonReturn() {
        at.read(Measure.PISTON_RETURN).ifPresent(reading -> {
            double limitMm = at.brake().runoutLimitMm();
            evidence.add(new Evidence(
                    Label.PISTON_RETURN,
                    new CaliperSaid.Returned(
                            new Amount(reading.value(), "mm", 2), MOVED_OUT, new Amount(limitMm, "mm", 3)),
                    Ground.PISTON_CLEARS_THE_DISC));
            if (reading.value() <= limitMm) {
                faults.add(new CaliperSaid.PistonStaysOut());
            }
        });
    }

    /** Mineral paste on rubber is a fault that was just made. */
    private void lubricant() {
        boolean sliding = at.brake().caliper() == BrakeSpecification.Caliper.SLIDING;
        at.read(Measure.PIN_LUBRICANT).ifPresent(reading -> {
            evidence.add(
                    new Evidence(Label.ON_THE_PINS, Scale.LUBRICANT.told(reading.value()), Evidence.howRead(reading)));
            if (sliding && Math.round(reading.value()) == WORST) {
                faults.add(new CaliperSaid.PasteOnSlidePins());
            }
        });
    }
}
