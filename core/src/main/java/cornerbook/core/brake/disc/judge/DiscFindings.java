package cornerbook.core.brake.disc.judge;

import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.brake.disc.DiscLimits;
import cornerbook.core.brake.disc.DiscThickness;
import cornerbook.core.brake.disc.judge.DiscSaid.Fault;
import cornerbook.core.brake.disc.judge.DiscSaid.Ground;
import cornerbook.core.brake.disc.judge.DiscSaid.Label;
import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.brake.judge.BrakeSaid;
import cornerbook.core.brake.judge.BrakeWear;
import cornerbook.core.brake.judge.Deficiency;
import cornerbook.core.brake.judge.GaugeError;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.ReadingLimit;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Finding on the disc of one corner: how long it lasts, whether it runs true, and the state of its faces. */
public final class DiscFindings {
    /** Share of a face under rust from which it is not just what a night leaves. Common practice, no source. */
    private static final double RUSTY_PERCENT = 15;
    /** A share so near to it is read again. Common practice, no source. */
    private static final double NEARLY_RUSTY_PERCENT = 10;

    private static final int MARKED = 2;
    /** Where around the disc its points are read. */
    private static final Between FROM_EDGE = new Between(10, 15, "mm", 0);

    private final BrakeCorner at;
    private final List<Said> notJudged = new ArrayList<>();
    private final List<Said> words = new ArrayList<>();
    private final List<Evidence> evidence = new ArrayList<>();
    private final List<Fault> faults = new ArrayList<>();
    private Verdict verdict = Verdict.HOLDS;

    private DiscFindings(BrakeCorner at) {
        this.at = at;
    }

    /** The finding on the disc at a corner; none when its thickness was not read. */
    public static Judgement judge(Case given, BrakeCorner at, BrakeWear wear) {
        boolean replaced = at.done(Measure.DISC_REPLACED);
        if (at.discMm().isEmpty() && !replaced) {
            return Judgement.missing(new DiscSaid.NotRead(at.corner()));
        }
        double thicknessMm = replaced ? at.brake().discNewMm() : at.discMm().getAsDouble();
        var disc = new DiscFindings(at);
        return new Judgement(List.of(disc.finding(thicknessMm, replaced, wear, given.nextVisit())), disc.notJudged);
    }

    /** What the disc at each corner has to have. */
    public static List<ReadingLimit> limits(Case given) {
        return Arrays.stream(Corner.values())
                .filter(corner -> given.vehicle().axle(corner.axle()).brake().hasDisc())
                .map(corner -> limit(corner, given.vehicle().axle(corner.axle()).brake()))
                .flatMap(limit -> GaugeError.told(limit).stream())
                .toList();
    }

    private static ReadingLimit limit(Corner corner, BrakeSpecification brake) {
        return ReadingLimit.atLeast(
                brake.discMinimumMm(),
                Measure.DISC_THICKNESS,
                new Subject(Subject.Part.DISC, corner, null, null),
                Verdict.SPENT,
                new DiscSaid.Replace(mm(brake.discMinimumMm())),
                BrakeSaid.Ground.VEHICLE_SPECIFICATION,
                Measure.DISC_REPLACED);
    }

    private Finding finding(double thicknessMm, boolean replaced, BrakeWear wear, LocalDate nextVisit) {
        double minimumMm = at.brake().discMinimumMm();
        var followed = wear.disc(at.corner(), minimumMm).stream().toList();
        var forecast = wear.forecast(followed, nextVisit);
        var limit = limit(at.corner(), at.brake());
        verdict = limit.holds(thicknessMm) ? forecast.verdict() : limit.outside();
        if (replaced) {
            evidence.add(
                    new Evidence(BrakeSaid.Label.REPLACED, BrakeSaid.Label.AT_THIS_VISIT, BrakeSaid.Ground.RECORDED));
            words.add(new DiscSaid.IsNew(at.corner()));
        } else {
            thickness(thicknessMm, minimumMm);
            variation();
            runout();
            faces();
        }
        followed.forEach(each -> evidence.add(wear.evidence(null, each)));
        boolean below = !limit.holds(thicknessMm);
        if (!below) {
            evidence.add(forecast.evidence());
        }
        boolean byThickness = faults.isEmpty();
        if (!byThickness) {
            words.removeIf(DiscSaid.ThickEnough.class::isInstance);
        }
        var finding = new Finding(
                        new Subject(Subject.Part.DISC, at.corner(), null, null),
                        verdict,
                        new DiscSaid.Title(
                                at.corner(),
                                mm(thicknessMm),
                                mm(minimumMm),
                                faults.isEmpty() ? null : Listed.commas(faults)),
                        new Listed(words, Listed.Join.SENTENCES),
                        byThickness && !below ? forecast.horizon() : null,
                        byThickness && !below ? (Double) forecast.probability() : null,
                        Math.clamp(
                                (thicknessMm - minimumMm)
                                        / Math.max(0.1, at.brake().discNewMm() - minimumMm),
                                0,
                                1),
                        evidence,
                        Ground.DISC)
                .todo(
                        byThickness && !replaced && GaugeError.isWithin(thicknessMm, minimumMm)
                                ? Todo.Action.MEASURE_AGAIN
                                : verdict == Verdict.RUNS_OUT ? Todo.Action.INSPECT : Todo.Action.REPLACE_PAIR);
        return below ? finding.beforeLeaving() : finding;
    }

    private void thickness(double thicknessMm, double minimumMm) {
        words.add(
                switch (verdict) {
                    case SPENT, UNSAFE ->
                        thicknessMm < minimumMm
                                ? new DiscSaid.BelowMinimum(at.corner())
                                : new DiscSaid.LikelyAtMinimum(at.corner());
                    case RUNS_OUT -> new DiscSaid.MayReachMinimum(at.corner());
                    case HOLDS -> new DiscSaid.ThickEnough(at.corner());
                });
        GaugeError.told(thicknessMm, minimumMm).ifPresent(words::add);
        at.read(Measure.DISC_THICKNESS)
                .ifPresent(reading ->
                        evidence.add(new Evidence(Label.THICKNESS, mm(reading.value()), Evidence.howRead(reading))));
        at.discPoints()
                .ifPresent(points -> evidence.add(new Evidence(
                        new DiscSaid.ThinnestOf(points.size()),
                        fine(new DiscThickness(points).thinnestMm()),
                        new DiscSaid.AroundTheDisc(FROM_EDGE))));
        evidence.add(new Evidence(BrakeSaid.Label.MINIMUM, mm(minimumMm), BrakeSaid.Ground.VEHICLE_SPECIFICATION));
        if (thicknessMm < minimumMm) {
            evidence.add(Deficiency.DISC_WORN.evidence());
        }
    }

    private void variation() {
        var read = at.read(Measure.DISC_THICKNESS_VARIATION);
        if (read.isEmpty()) {
            return;
        }
        double limitMm = at.brake().thicknessVariationLimitMm();
        var how = Evidence.howRead(read.get());
        evidence.add(new Evidence(
                Label.THICKNESS_VARIATION,
                new DiscSaid.WithLimit(fine(read.get().value()), fine(limitMm)),
                at.discPoints().isPresent() ? new DiscSaid.ThickestLessThinnest(how) : how));
        if (read.get().value() > limitMm) {
            found(Verdict.RUNS_OUT, Fault.THICKNESS_VARIES, new DiscSaid.Varies());
            machining();
        }
    }

    /** What a lathe may take off. A disc between its two minima may wear on and may not be machined. */
    private void machining() {
        var refinishMm = at.brake().details().refinishThicknessMm();
        var points = at.discPoints();
        if (refinishMm == null) {
            notJudged.add(new DiscSaid.NoRefinishThickness(at.corner()));
            return;
        }
        if (points.isEmpty()) {
            notJudged.add(new DiscSaid.NoPoints(at.corner()));
            return;
        }
        var limits = new DiscLimits(
                at.brake().discMinimumMm(), refinishMm, at.brake().thicknessVariationLimitMm());
        var disc = new DiscThickness(points.get());
        double perSideMm = disc.allowancePerSideMm(limits);
        evidence.add(new Evidence(
                Label.MACHINING_ALLOWANCE,
                perSideMm > 0 ? new DiscSaid.PerSide(mm(perSideMm)) : Label.NONE,
                new DiscSaid.AboveRefinish(mm(refinishMm))));
        words.add(
                disc.use(limits) == DiscThickness.Use.REFINISH
                        ? new DiscSaid.MayBeMachined(mm(perSideMm))
                        : new DiscSaid.TooThinToMachine());
    }

    private void runout() {
        var read = at.read(Measure.DISC_RUNOUT);
        if (read.isEmpty()) {
            return;
        }
        double limitMm = at.brake().runoutLimitMm();
        evidence.add(new Evidence(
                Label.LATERAL_RUNOUT,
                new DiscSaid.WithLimit(fine(read.get().value()), fine(limitMm)),
                new DiscSaid.ReindexFirst(Evidence.howRead(read.get()))));
        var moved = at.read(Measure.DISC_RUNOUT_MOVED).map(Reading::value);
        boolean mended = moved.filter(mm -> mm <= limitMm).isPresent();
        moved.ifPresent(mm -> evidence.add(new Evidence(Label.AFTER_MOVED_ON, fine(mm), Ground.READ_AT_THIS_VISIT)));
        if (read.get().value() > limitMm && !mended) {
            found(Verdict.RUNS_OUT, Fault.RUNS_OUT_OF_TRUE, new DiscSaid.RunsOutOfTrue());
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
                    Label.UNDER_RUST,
                    new DiscSaid.ShareOfFace(Amount.of(rust.value(), "%"), BrakeCorner.side(rust)),
                    new DiscSaid.RustFrom(Amount.of(RUSTY_PERCENT, "%"))));
            if (rust.value() >= RUSTY_PERCENT) {
                found(Verdict.RUNS_OUT, Fault.RUSTY, new DiscSaid.Rusty());
            } else if (rust.value() >= NEARLY_RUSTY_PERCENT) {
                words.add(new DiscSaid.RustAgain());
            }
        });
        at.worst(Measure.DISC_PITTING)
                .filter(pitting -> Math.round(pitting.value()) >= MARKED)
                .ifPresent(pitting ->
                        found(Verdict.RUNS_OUT, Fault.PITTED, new DiscSaid.Pitted(BrakeCorner.side(pitting))));
        at.read(Measure.DISC_LIP)
                .ifPresent(lip -> evidence.add(new Evidence(Label.LIP, new Amount(lip.value(), "mm", 1), Ground.LIP)));
        at.read(Measure.DISC_CRACKS)
                .filter(cracks -> Math.round(cracks.value()) > 0)
                .ifPresent(cracks -> {
                    boolean deep = Math.round(cracks.value()) >= MARKED;
                    evidence.add(Deficiency.DISC_FRACTURED.evidence());
                    found(deep ? Verdict.UNSAFE : Verdict.SPENT, Fault.CRACKED, new DiscSaid.Cracked(deep));
                });
    }

    private void found(Verdict atLeast, Fault fault, Said sentence) {
        verdict = verdict.graver(atLeast);
        faults.add(fault);
        words.add(sentence);
    }

    private static Amount mm(double thicknessMm) {
        return new Amount(thicknessMm, "mm", 2);
    }

    /** To the micrometre. */
    private static Amount fine(double thicknessMm) {
        return new Amount(thicknessMm, "mm", 3);
    }
}
