package cornerbook.core.brake.caliper;

import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Scale;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Finding on what moves and holds the pads of one corner: pins, piston, hardware, boots. */
public final class CaliperFindings {
    private static final int WORST = 2;

    private final BrakeCorner at;
    private final List<String> faults = new ArrayList<>();
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
        look(Measure.SLIDE_PIN_MOVEMENT, "slide pins", serviced);
        look(Measure.RETAINING_PIN_MOVEMENT, "retaining pins", serviced);
        look(Measure.PISTON_MOVEMENT, "a piston", false);
        look(Measure.BRAKE_HARDWARE, "clips and springs", at.done(Measure.BRAKE_HARDWARE_REPLACED));
        look(Measure.BRAKE_BOOTS, "boots", false);
        pistonReturn();
        lubricant();
        if (evidence.isEmpty()) {
            return Optional.empty();
        }
        var verdict = faults.isEmpty() ? Verdict.HOLDS : grave ? Verdict.SPENT : Verdict.RUNS_OUT;
        var found = String.join(", ", faults);
        return Optional.of(new Finding(
                new Subject(Subject.Part.CALIPER, at.corner(), null, null),
                verdict,
                "%s caliper: %s".formatted(at.corner(), faults.isEmpty() ? "moves as it should" : found),
                switch (verdict) {
                    case HOLDS -> "The brake caliper at %s moves as it should.".formatted(at.corner());
                    case RUNS_OUT ->
                        "The brake caliper at %s needs care before the next visit: %s.".formatted(at.corner(), found);
                    case SPENT, UNSAFE ->
                        "The brake caliper at %s has to be put right now: %s.".formatted(at.corner(), found);
                },
                null,
                null,
                verdict == Verdict.HOLDS ? 1 : grave ? 0 : 0.5,
                evidence,
                "service literature on uneven wear; judgement by hand and eye: common practice, no source"));
    }

    private void look(Measure measure, String what, boolean mended) {
        at.read(measure).ifPresent(reading -> {
            var scale = Objects.requireNonNull(measure.scale());
            var word = scale.wordOf(reading.value());
            evidence.add(new Evidence(
                    what, word + (mended ? " as found, put right at this visit" : ""), Evidence.howRead(reading)));
            if (Math.round(reading.value()) > 0 && !mended) {
                faults.add(what + " " + word);
                grave |= Math.round(reading.value()) >= WORST;
            }
        });
    }

    private void pistonReturn() {
        at.read(Measure.PISTON_RETURN).ifPresent(reading -> {
            double limitMm = at.brake().runoutLimitMm();
            evidence.add(new Evidence(
                    "piston's return",
                    "%.2f mm after 0.5 mm, runout allowed %.3f mm".formatted(reading.value(), limitMm),
                    "it returns by more than the runout allowed: makers' service advice"));
            if (reading.value() <= limitMm) {
                faults.add("a piston that does not return");
            }
        });
    }

    /** Mineral paste on rubber is a fault that was just made. */
    private void lubricant() {
        boolean sliding = at.brake().caliper() == BrakeSpecification.Caliper.SLIDING;
        at.read(Measure.PIN_LUBRICANT).ifPresent(reading -> {
            var word = Scale.LUBRICANT.wordOf(reading.value());
            evidence.add(new Evidence("on the pins", word, Evidence.howRead(reading)));
            if (sliding && Math.round(reading.value()) == WORST) {
                faults.add("metal-contact paste on slide pins, where it swells the rubber");
            }
        });
    }
}
