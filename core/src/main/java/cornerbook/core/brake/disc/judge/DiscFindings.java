package cornerbook.core.brake.disc.judge;

import cornerbook.core.say.Said;

import cornerbook.core.brake.disc.DiscLimits;
import cornerbook.core.brake.disc.DiscThickness;
import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.brake.judge.BrakeWear;
import cornerbook.core.brake.judge.Deficiency;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finding on the disc of one corner: how long it lasts, whether it runs true, and the state of its faces. */
public final class DiscFindings {
    /** Share of a face under rust from which it is not just what a night leaves. Common practice, no source. */
    private static final double RUSTY_PERCENT = 15;
    /** A share so near to it is read again. Common practice, no source. */
    private static final double NEARLY_RUSTY_PERCENT = 10;

    private static final int MARKED = 2;

    private final BrakeCorner at;
    private final List<String> words = new ArrayList<>();
    private final List<Evidence> evidence = new ArrayList<>();
    private final List<String> titles = new ArrayList<>();
    private Verdict verdict = Verdict.HOLDS;

    private DiscFindings(BrakeCorner at) {
        this.at = at;
    }

    /** The finding; empty, with a line in {@code notJudged}, when the thickness was not read. */
    public static Optional<Finding> of(BrakeCorner at, BrakeWear wear, LocalDate nextVisit, List<Said> notJudged) {
        boolean replaced = at.done(Measure.DISC_REPLACED);
        if (at.discMm().isEmpty() && !replaced) {
            notJudged.add(Said.verbatim("%s disc: thickness not measured".formatted(at.corner())));
            return Optional.empty();
        }
        double thicknessMm = replaced ? at.brake().discNewMm() : at.discMm().getAsDouble();
        return Optional.of(new DiscFindings(at).judge(thicknessMm, replaced, wear, nextVisit, notJudged));
    }

    private Finding judge(
            double thicknessMm, boolean replaced, BrakeWear wear, LocalDate nextVisit, List<Said> notJudged) {
        double minimumMm = at.brake().discMinimumMm();
        var followed = wear.disc(at.corner(), minimumMm).stream().toList();
        var forecast = wear.forecast(followed, nextVisit);
        verdict = thicknessMm < minimumMm ? Verdict.SPENT : forecast.verdict();
        if (replaced) {
            evidence.add(new Evidence("replaced", "at this visit", "recorded"));
            words.add("The brake disc at %s is new.".formatted(at.corner()));
        } else {
            thickness(thicknessMm, minimumMm);
            variation(notJudged);
            runout(notJudged);
            faces();
        }
        followed.forEach(each -> evidence.add(wear.evidence("disc", each)));
        evidence.add(forecast.evidence());
        boolean byThickness = titles.isEmpty();
        return new Finding(
                new Subject(Subject.Part.DISC, at.corner(), null, null),
                verdict,
                "%s disc %.2f mm, minimum %.2f mm%s"
                        .formatted(
                                at.corner(),
                                thicknessMm,
                                minimumMm,
                                titles.isEmpty() ? "" : ", " + String.join(", ", titles)),
                String.join(" ", words),
                byThickness ? forecast.horizon() : null,
                byThickness ? forecast.probability() : null,
                Math.clamp((thicknessMm - minimumMm) / Math.max(0.1, at.brake().discNewMm() - minimumMm), 0, 1),
                evidence,
                "vehicle's specification; docs/methods/brakes.md, disc");
    }

    private void thickness(double thicknessMm, double minimumMm) {
        var sentence = switch (verdict) {
            case SPENT, UNSAFE ->
                thicknessMm < minimumMm
                        ? "The brake disc at %s is below its minimum thickness and has to be replaced with its pads."
                        : "The brake disc at %s is likely to reach its minimum thickness before the next visit and has to be replaced with its pads.";
            case RUNS_OUT -> "The brake disc at %s may reach its minimum thickness before the next visit.";
            case HOLDS -> "The brake disc at %s is thick enough.";
        };
        words.add(sentence.formatted(at.corner()));
        at.read(Measure.DISC_THICKNESS)
                .ifPresent(reading -> evidence.add(
                        new Evidence("thickness", "%.2f mm".formatted(reading.value()), Evidence.howRead(reading))));
        at.discPoints()
                .ifPresent(points -> evidence.add(new Evidence(
                        "thinnest of %d points".formatted(points.size()),
                        "%.3f mm".formatted(new DiscThickness(points).thinnestMm()),
                        "around the disc, 10 to 15 mm from its edge")));
        evidence.add(new Evidence("minimum", "%.2f mm".formatted(minimumMm), "vehicle's specification"));
        if (thicknessMm < minimumMm) {
            evidence.add(Deficiency.DISC_WORN.evidence());
        }
    }

    private void variation(List<Said> notJudged) {
        var read = at.read(Measure.DISC_THICKNESS_VARIATION);
        if (read.isEmpty()) {
            return;
        }
        double limitMm = at.brake().thicknessVariationLimitMm();
        evidence.add(new Evidence(
                "thickness variation",
                "%.3f mm, limit %.3f mm".formatted(read.get().value(), limitMm),
                at.discPoints().map(points -> "thickest less thinnest; ").orElse("") + Evidence.howRead(read.get())));
        if (read.get().value() > limitMm) {
            found(Verdict.RUNS_OUT, "thickness varies", "Its thickness varies too much; the pedal may pulse.");
            machining(notJudged);
        }
    }

    /** What a lathe may take off. A disc between its two minima may wear on and may not be machined. */
    private void machining(List<Said> notJudged) {
        var refinishMm = at.brake().details().refinishThicknessMm();
        var points = at.discPoints();
        if (refinishMm == null) {
            notJudged.add(Said.verbatim("%s disc: whether it may be machined, for the car's data have no refinish thickness"
                    .formatted(at.corner())));
            return;
        }
        if (points.isEmpty()) {
            notJudged.add(Said.verbatim("%s disc: whether it may be machined, for its thickness was not read at points around it"
                    .formatted(at.corner())));
            return;
        }
        var limits = new DiscLimits(
                at.brake().discMinimumMm(), refinishMm, at.brake().thicknessVariationLimitMm());
        var disc = new DiscThickness(points.get());
        double perSideMm = disc.allowancePerSideMm(limits);
        evidence.add(new Evidence(
                "machining allowance",
                perSideMm > 0 ? "%.2f mm per side".formatted(perSideMm) : "none",
                "(thinnest point less the manufacturer's refinish thickness of %.2f mm) / 2".formatted(refinishMm)));
        words.add(
                disc.use(limits) == DiscThickness.Use.REFINISH
                        ? "It may be machined, by up to %.2f mm per side.".formatted(perSideMm)
                        : "There is too little left to machine it; it has to be replaced.");
    }

    private void runout(List<Said> notJudged) {
        var read = at.read(Measure.DISC_RUNOUT);
        if (read.isEmpty()) {
            return;
        }
        double limitMm = at.brake().runoutLimitMm();
        evidence.add(new Evidence(
                "lateral runout",
                "%.3f mm, limit %.3f mm".formatted(read.get().value(), limitMm),
                Evidence.howRead(read.get()) + "; re-index on the studs before condemning"));
        var moved = at.read(Measure.DISC_RUNOUT_MOVED).map(Reading::value);
        boolean mended = moved.filter(mm -> mm <= limitMm).isPresent();
        moved.ifPresent(mm ->
                evidence.add(new Evidence("after it was moved on", "%.3f mm".formatted(mm), "reading at this visit")));
        if (read.get().value() > limitMm && !mended) {
            found(
                    Verdict.RUNS_OUT,
                    "runs out of true",
                    "It runs out of true; it may shake when braking and has to be looked at.");
        }
        RunoutSplit.of(at, notJudged).ifPresent(split -> {
            evidence.addAll(split.evidence());
            if (read.get().value() > limitMm) {
                words.add(split.words());
            }
        });
    }

    private void faces() {
        at.worst(Measure.DISC_RUST).ifPresent(rust -> {
            evidence.add(new Evidence(
                    "under rust",
                    "%.0f %% of the %s face".formatted(rust.value(), BrakeCorner.side(rust)),
                    "share of the swept face; from 15 %: common practice, no source"));
            if (rust.value() >= RUSTY_PERCENT) {
                found(Verdict.RUNS_OUT, "rusty", "Rust on its face says that a pad there does not work.");
            } else if (rust.value() >= NEARLY_RUSTY_PERCENT) {
                words.add("The rust on its face has to be measured again at the next visit.");
            }
        });
        at.worst(Measure.DISC_PITTING)
                .filter(pitting -> Math.round(pitting.value()) >= MARKED)
                .ifPresent(pitting -> found(
                        Verdict.RUNS_OUT, "pitted", "Its %s face is pitted.".formatted(BrakeCorner.side(pitting))));
        at.read(Measure.DISC_LIP)
                .ifPresent(lip -> evidence.add(new Evidence(
                        "lip at the edge",
                        "%.1f mm".formatted(lip.value()),
                        "new pads must not run on it: common practice, no source")));
        at.read(Measure.DISC_CRACKS)
                .filter(cracks -> Math.round(cracks.value()) > 0)
                .ifPresent(cracks -> {
                    boolean deep = Math.round(cracks.value()) >= MARKED;
                    evidence.add(Deficiency.DISC_FRACTURED.evidence());
                    found(
                            deep ? Verdict.UNSAFE : Verdict.SPENT,
                            "cracked",
                            deep
                                    ? "It is cracked and may break. The car must not be driven."
                                    : "It is cracked and has to be replaced now.");
                });
    }

    private void found(Verdict atLeast, String title, String sentence) {
        verdict = verdict.graver(atLeast);
        titles.add(title);
        words.add(sentence);
    }
}
