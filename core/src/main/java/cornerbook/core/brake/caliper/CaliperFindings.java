package cornerbook.core.brake.caliper;

import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.brake.caliper.CaliperSaid.Gear;
import cornerbook.core.brake.caliper.CaliperSaid.Ground;
import cornerbook.core.brake.caliper.CaliperSaid.Label;
import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
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

/**
 * Finding on what moves and holds the pads, or the shoes, of one corner: pins, pistons, hose, hardware and boots, or cylinder, shoes,
 * adjuster and springs, and the parking brake's lever. Each is told as it was found; what counts is how it was left.
 */
public final class CaliperFindings {
    private static final int WORST = 2;
    /** How far out a piston is moved to see whether it comes back. */
    private static final Amount MOVED_OUT = new Amount(0.5, "mm", 2);

    /** What is freed, cleaned and lubricated even where it is stuck. */
    private static final List<Measure> PINS = List.of(Measure.SLIDE_PIN_MOVEMENT, Measure.RETAINING_PIN_MOVEMENT);

    /** What is freed the same way while it is tight; what else is at fault is repaired. */
    private static final List<Measure> FREED_WHILE_TIGHT =
            List.of(Measure.SHOE_MOVEMENT, Measure.ADJUSTER_MOVEMENT, Measure.PARKING_LEVER_MOVEMENT);

    private final BrakeCorner at;
    private final Gear gear;
    private final List<Said> faults = new ArrayList<>();
    private final List<Said> putRight = new ArrayList<>();
    private final List<Evidence> evidence = new ArrayList<>();
    private Verdict verdict = Verdict.HOLDS;
    private boolean allAreFreed = true;

    private CaliperFindings(BrakeCorner at, Gear gear) {
        this.at = at;
        this.gear = gear;
    }

    /** The finding; empty when nothing of it was looked at. */
    public static Optional<Finding> of(BrakeCorner at) {
        return new CaliperFindings(at, at.brake().hasDrum() ? Gear.DRUM : Gear.CALIPER).judge();
    }

    /** The same of a parking brake's shoes inside a disc; empty where there are none. */
    public static Optional<Finding> ofParkingShoes(BrakeCorner at) {
        return at.brake().hasParkingShoes() ? new CaliperFindings(at, Gear.PARKING_SHOES).judge() : Optional.empty();
    }

    private Optional<Finding> judge() {
        if (gear != Gear.PARKING_SHOES) {
            serviceBrake();
        }
        if (gear != Gear.CALIPER || !at.brake().hasParkingShoes()) {
            look(
                    List.of(Measure.SHOE_MOVEMENT, Measure.ADJUSTER_MOVEMENT, Measure.PARKING_LEVER_MOVEMENT),
                    Measure.SHOE_MOVEMENT_AFTER_SERVICE,
                    false);
            look(Measure.SHOE_SPRINGS, Measure.SHOES_REPLACED);
        }
        return evidence.isEmpty() ? Optional.empty() : Optional.of(finding());
    }

    private void serviceBrake() {
        boolean serviced = at.read(Measure.PAD_MOVEMENT_AFTER_SERVICE)
                .filter(after -> Math.round(after.value()) == 0)
                .isPresent();
        look(PINS, Measure.PIN_MOVEMENT_AFTER_SERVICE, serviced);
        look(Measure.PISTONS, Measure.PISTON_MOVEMENT_AFTER_SERVICE, false);
        look(Measure.HOSE_HOLDS_PRESSURE, Measure.BRAKE_HOSE_REPLACED);
        look(Measure.BRAKE_HARDWARE, Measure.BRAKE_HARDWARE_REPLACED);
        look(Measure.BRAKE_BOOTS);
        look(Measure.WHEEL_CYLINDER, Measure.WHEEL_CYLINDER_REPLACED);
        pistonReturn();
        lubricant();
    }

    private Finding finding() {
        var found = Listed.commas(faults);
        var finding = new Finding(
                new Subject(
                        gear == Gear.CALIPER ? Subject.Part.CALIPER : Subject.Part.DRUM_GEAR, at.corner(), null, null),
                verdict,
                faults.isEmpty() ? titleOfSound() : new CaliperSaid.FaultsTitle(at.corner(), found, gear),
                words(found),
                null,
                null,
                verdict == Verdict.HOLDS ? 1 : verdict == Verdict.RUNS_OUT ? 0.5 : 0,
                evidence,
                gear == Gear.CALIPER ? Ground.HAND_AND_EYE : Ground.DRUM_GEAR);
        return verdict == Verdict.HOLDS && !putRight.isEmpty()
                ? finding.todo(Todo.Action.INSPECT, Todo.When.AT_NEXT_VISIT)
                : finding.todo(allAreFreed ? Todo.Action.SERVICE_BRAKE : Todo.Action.REPAIR);
    }

    private Said titleOfSound() {
        return putRight.isEmpty()
                ? new CaliperSaid.MovesTitle(at.corner(), gear)
                : new CaliperSaid.PutRightTitle(at.corner(), Listed.commas(putRight), gear);
    }

    private Said words(Listed found) {
        var told = new ArrayList<Said>();
        if (!putRight.isEmpty()) {
            told.add(new CaliperSaid.PutRight(at.corner(), Listed.commas(putRight)));
        }
        switch (verdict) {
            case HOLDS -> {
                if (putRight.isEmpty()) {
                    told.add(new CaliperSaid.Moves(at.corner(), gear));
                }
            }
            case RUNS_OUT -> told.add(new CaliperSaid.NeedsCare(at.corner(), found, gear));
            case SPENT -> told.add(new CaliperSaid.PutRightNow(at.corner(), found, gear));
            case UNSAFE -> told.add(new CaliperSaid.DoNotDrive(at.corner(), found));
        }
        return told.size() == 1 ? told.getFirst() : Listed.sentences(told);
    }

    /** A part that is put right by being replaced. */
    private void look(Measure measure, Measure replaced) {
        at.read(measure).ifPresent(reading -> told(reading, at.done(replaced) ? 0 : place(reading), false));
    }

    private void look(Measure measure) {
        at.read(measure).ifPresent(reading -> told(reading, place(reading), false));
    }

    /**
     * Parts that are freed.
     *
     * @param after reads the worst of them after service; where it was not read, {@code freed} says whether other work freed them
     */
    private void look(List<Measure> measures, Measure after, boolean freed) {
        var found = measures.stream().map(at::read).flatMap(Optional::stream).toList();
        var left = at.read(after);
        for (var reading : found) {
            int place = place(reading);
            told(reading, left.map(each -> Math.min(place, place(each))).orElse(freed ? 0 : place), left.isPresent());
        }
        left.filter(each -> found.stream().allMatch(reading -> place(reading) < place(each)))
                .filter(each -> place(each) > 0 || found.isEmpty())
                .ifPresent(each -> told(each, place(each), false));
    }

    private void told(Reading reading, int left, boolean read) {
        int found = place(reading);
        var part = new CaliperSaid.Looked(reading.measure(), pistonOf(reading));
        var how = read
                ? new CaliperSaid.FoundAndLeft(found, left)
                : new CaliperSaid.AsFound(reading.measure(), found, left < found);
        evidence.add(new Evidence(part, how, Evidence.howRead(reading)));
        if (left < found) {
            putRight.add(new CaliperSaid.Mended(part, how));
        }
        if (left > 0) {
            allAreFreed &=
                    PINS.contains(reading.measure()) || (left < WORST && FREED_WHILE_TIGHT.contains(reading.measure()));
            fault(new CaliperSaid.Fault(reading.measure(), left, pistonOf(reading)), gravity(reading, left));
        }
    }

    /** Law: no leak other than oozing (Québec, C-24.2, r. 32, s. 174). The rest: common practice, no source. */
    private static Verdict gravity(Reading reading, int left) {
        boolean worst = left == reading.measure().highest();
        return reading.measure() == Measure.WHEEL_CYLINDER && worst
                ? Verdict.UNSAFE
                : worst ? Verdict.SPENT : Verdict.RUNS_OUT;
    }

    private void fault(Said fault, Verdict atLeast) {
        faults.add(fault);
        verdict = verdict.graver(atLeast);
    }

    /** Its number where they are told apart; 0 where they are not, or it is none. */
    private int pistonOf(Reading reading) {
        return at.brake().pistons() > 1 ? Measure.PISTONS.indexOf(reading.measure()) + 1 : 0;
    }

    private static int place(Reading reading) {
        return Objects.requireNonNull(reading.measure().scale())
                .told(reading.value())
                .place();
    }

    private void pistonReturn() {
        at.read(Measure.PISTON_RETURN).filter(reading -> at.brake().hasDisc()).ifPresent(reading -> {
            double limitMm = at.brake().runoutLimitMm();
            evidence.add(new Evidence(
                    Label.PISTON_RETURN,
                    new CaliperSaid.Returned(
                            new Amount(reading.value(), "mm", 2), MOVED_OUT, new Amount(limitMm, "mm", 3)),
                    Ground.PISTON_CLEARS_THE_DISC));
            if (reading.value() <= limitMm) {
                allAreFreed = false;
                fault(new CaliperSaid.PistonStaysOut(), Verdict.RUNS_OUT);
            }
        });
    }

    /** Mineral paste on rubber is a fault that was just made. */
    private void lubricant() {
        at.read(Measure.PIN_LUBRICANT).ifPresent(reading -> {
            evidence.add(
                    new Evidence(Label.ON_THE_PINS, Scale.LUBRICANT.told(reading.value()), Evidence.howRead(reading)));
            if (at.brake().hasCaliper(BrakeSpecification.Caliper.SLIDING) && Math.round(reading.value()) == WORST) {
                fault(new CaliperSaid.PasteOnSlidePins(), Verdict.RUNS_OUT);
            }
        });
    }
}
