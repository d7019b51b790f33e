package cornerbook.core.brake.drum.judge;

import cornerbook.core.brake.DrumBrake;
import cornerbook.core.brake.drum.judge.DrumSaid.Ground;
import cornerbook.core.brake.drum.judge.DrumSaid.Label;
import cornerbook.core.brake.drum.judge.DrumSaid.NotRead;
import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.brake.judge.BrakeSaid;
import cornerbook.core.brake.judge.BrakeWear;
import cornerbook.core.brake.judge.GaugeError;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Scale;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.ReadingLimit;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Findings on the drum of one corner and the lining of its shoes. */
public final class DrumFindings {
    private static final int MARKED = 2;

    private final Case given;
    private final BrakeCorner at;
    private final DrumBrake brake;
    private final BrakeWear wear;
    private final List<Said> words = new ArrayList<>();
    private final List<Evidence> evidence = new ArrayList<>();

    private DrumFindings(Case given, BrakeCorner at, DrumBrake brake, BrakeWear wear) {
        this.given = given;
        this.at = at;
        this.brake = brake;
        this.wear = wear;
    }

    /** What is found of lining and drum at a corner that has one. */
    public static Judgement judge(Case given, BrakeCorner at, DrumBrake brake, BrakeWear wear) {
        return Judgement.together(Stream.of(
                new DrumFindings(given, at, brake, wear).lining(), new DrumFindings(given, at, brake, wear).drum()));
    }

    /** What lining and drum at each corner have to have. */
    public static List<ReadingLimit> limits(Case given) {
        return Arrays.stream(Corner.values())
                .flatMap(corner -> given.vehicle().axle(corner.axle()).brake().drum().stream()
                        .flatMap(brake -> Stream.concat(
                                liningLimits(given, corner, brake).stream(), Stream.of(drumLimit(corner, brake)))))
                .flatMap(limit -> GaugeError.told(limit).stream())
                .toList();
    }

    private static List<ReadingLimit> liningLimits(Case given, Corner corner, DrumBrake brake) {
        var measure = new BrakeCorner(corner, given.vehicle(), given.readings()).lining();
        var legal = legal(given, measure);
        var subject = new Subject(Subject.Part.SHOE, corner, null, null);
        double minimumMm = minimumMm(brake, legal);
        var source = new DrumSaid.LiningSource(legal.citation());
        return List.of(
                ReadingLimit.atLeast(
                        legal.value(),
                        measure,
                        subject,
                        Verdict.UNSAFE,
                        new DrumSaid.NotOnTheRoad(mm(legal.value())),
                        source,
                        Measure.SHOES_REPLACED),
                ReadingLimit.atLeast(
                        minimumMm,
                        measure,
                        subject,
                        Verdict.SPENT,
                        new DrumSaid.ReplaceShoes(mm(minimumMm)),
                        source,
                        Measure.SHOES_REPLACED));
    }

    private static ReadingLimit drumLimit(Corner corner, DrumBrake brake) {
        return new ReadingLimit(
                Measure.DRUM_DIAMETER,
                new Subject(Subject.Part.DRUM, corner, null, null),
                Measure.DRUM_DIAMETER.lowest(),
                brake.drumDiscardMm(),
                Verdict.SPENT,
                new DrumSaid.ReplaceDrums(diameter(brake.drumDiscardMm())),
                Ground.DISCARD_DIAMETER,
                Measure.DRUM_REPLACED);
    }

    private static Limit legal(Case given, Measure lining) {
        return given.limit(
                lining == Measure.LINING_OVER_RIVETS ? Limit.Kind.RIVETED_LINING_LEGAL : Limit.Kind.PAD_LEGAL);
    }

    private static double minimumMm(DrumBrake brake, Limit legal) {
        return Math.max(brake.liningMinimumMm(), legal.value());
    }

    private Judgement lining() {
        var measure = at.lining();
        var legal = legal(given, measure);
        double minimumMm = minimumMm(brake, legal);
        boolean replaced = at.done(Measure.SHOES_REPLACED);
        var read = at.read(measure);
        boolean soaked = !replaced && at.done(Measure.LINING_SOAKED);
        var notJudged = read.isPresent() || replaced
                ? List.<Said>of()
                : List.<Said>of(new DrumSaid.NotJudged(at.corner(), NotRead.LINING));
        if (read.isEmpty() && !replaced && !soaked) {
            return Judgement.missing(notJudged);
        }
        var followed = wear.lining(at.corner(), brake, minimumMm).stream().toList();
        var forecast = wear.forecast(followed, given.nextVisit());
        double thicknessMm =
                replaced ? brake.liningNewMm() : read.map(Reading::value).orElse(brake.liningNewMm());
        var verdict = Verdict.HOLDS;
        if (replaced) {
            words.add(new DrumSaid.NewShoes(at.corner()));
            evidence.add(
                    new Evidence(BrakeSaid.Label.REPLACED, BrakeSaid.Label.AT_THIS_VISIT, BrakeSaid.Ground.RECORDED));
            verdict = forecast.verdict();
        } else if (read.isPresent()) {
            verdict = byLimit(liningLimits(given, at.corner(), brake), thicknessMm, forecast);
            words.add(
                    switch (verdict) {
                        case UNSAFE -> new DrumSaid.BelowLegal(at.corner());
                        case SPENT ->
                            thicknessMm < minimumMm
                                    ? new DrumSaid.AtLimit(at.corner())
                                    : new DrumSaid.LikelyAtLimit(at.corner());
                        case RUNS_OUT -> new DrumSaid.MayReachLimit(at.corner());
                        case HOLDS -> new DrumSaid.Enough(at.corner());
                    });
            evidence.add(new Evidence(
                    measure == Measure.LINING_OVER_RIVETS ? Label.LINING_OVER_RIVETS : Label.LINING,
                    mm(thicknessMm),
                    Evidence.howRead(read.get())));
            tooNear(thicknessMm, legal.value(), minimumMm);
        }
        evidence.add(new Evidence(
                BrakeSaid.Label.MINIMUM, mm(brake.liningMinimumMm()), BrakeSaid.Ground.VEHICLE_SPECIFICATION));
        evidence.add(new Evidence(BrakeSaid.LeastForTheRoad.of(legal), mm(legal.value()), legal.citation()));
        if (soaked) {
            verdict = verdict.graver(Verdict.SPENT);
            words.removeIf(DrumSaid.Enough.class::isInstance);
            words.add(new DrumSaid.Soaked());
            at.read(Measure.LINING_SOAKED)
                    .ifPresent(reading -> evidence.add(
                            new Evidence(Label.SOAKED, Scale.SIGN.told(reading.value()), Ground.SOAKED_LAW)));
        }
        followed.forEach(each -> evidence.add(wear.evidence(new BrakeSaid.WearOfDrum(true), each)));
        return new Judgement(
                List.of(finding(
                        Subject.Part.SHOE,
                        verdict,
                        soaked
                                ? new DrumSaid.SoakedTitle(at.corner())
                                : replaced
                                        ? new DrumSaid.NewShoesTitle(at.corner(), mm(thicknessMm))
                                        : new DrumSaid.LiningTitle(at.corner(), mm(thicknessMm), mm(minimumMm)),
                        soaked || thicknessMm < minimumMm ? Optional.empty() : Optional.of(forecast),
                        soaked,
                        thicknessMm < minimumMm,
                        (thicknessMm - minimumMm) / Math.max(0.1, brake.liningNewMm() - minimumMm),
                        new DrumSaid.LiningSource(legal.citation()))),
                notJudged);
    }

    private Judgement drum() {
        boolean replaced = at.done(Measure.DRUM_REPLACED);
        var read = at.read(Measure.DRUM_DIAMETER);
        long cracks = replaced ? 0 : at.place(Measure.DRUM_CRACKS);
        var notJudged = read.isPresent() || replaced
                ? List.<Said>of()
                : List.<Said>of(new DrumSaid.NotJudged(at.corner(), NotRead.DRUM));
        if (read.isEmpty() && !replaced && cracks == 0) {
            return Judgement.missing(notJudged);
        }
        double discardMm = brake.drumDiscardMm();
        double diameterMm =
                replaced ? brake.drumNewMm() : read.map(Reading::value).orElse(brake.drumNewMm());
        var followed = wear.drum(at.corner(), brake).stream().toList();
        var forecast = wear.forecast(followed, given.nextVisit());
        var verdict = Verdict.HOLDS;
        if (replaced) {
            words.add(new DrumSaid.NewDrum(at.corner()));
            evidence.add(
                    new Evidence(BrakeSaid.Label.REPLACED, BrakeSaid.Label.AT_THIS_VISIT, BrakeSaid.Ground.RECORDED));
            verdict = forecast.verdict();
        } else if (read.isPresent()) {
            verdict = byLimit(List.of(drumLimit(at.corner(), brake)), diameterMm, forecast);
            words.add(
                    switch (verdict) {
                        case SPENT, UNSAFE ->
                            diameterMm > discardMm
                                    ? new DrumSaid.BeyondDiscard(at.corner())
                                    : new DrumSaid.LikelyAtDiscard(at.corner());
                        case RUNS_OUT -> new DrumSaid.MayReachDiscard(at.corner());
                        case HOLDS -> new DrumSaid.WithinDiscard(at.corner());
                    });
            evidence.add(new Evidence(Label.DIAMETER, diameter(diameterMm), Evidence.howRead(read.get())));
            tooNear(diameterMm, discardMm);
        }
        evidence.add(new Evidence(Label.DISCARD_DIAMETER, diameter(discardMm), Ground.DISCARD_DIAMETER));
        if (cracks > 0) {
            verdict = verdict.graver(cracks >= MARKED ? Verdict.UNSAFE : Verdict.SPENT);
            words.removeIf(DrumSaid.WithinDiscard.class::isInstance);
            words.add(new DrumSaid.Cracked(cracks >= MARKED));
            evidence.add(new Evidence(Label.CRACKS, Scale.AMOUNT.told((double) cracks), Ground.CRACK_LAW));
        }
        followed.forEach(each -> evidence.add(wear.evidence(new BrakeSaid.WearOfDrum(false), each)));
        return new Judgement(
                List.of(finding(
                        Subject.Part.DRUM,
                        verdict,
                        cracks > 0
                                ? new DrumSaid.CrackedTitle(at.corner())
                                : replaced
                                        ? new DrumSaid.NewDrumTitle(at.corner())
                                        : new DrumSaid.DrumTitle(
                                                at.corner(), diameter(diameterMm), diameter(discardMm)),
                        cracks > 0 || diameterMm > discardMm ? Optional.empty() : Optional.of(forecast),
                        cracks > 0,
                        diameterMm > discardMm,
                        (discardMm - diameterMm) / (discardMm - brake.drumNewMm()),
                        Ground.DISCARD_DIAMETER)),
                notJudged);
    }

    private static Verdict byLimit(List<ReadingLimit> limits, double value, BrakeWear.Forecast forecast) {
        return ReadingLimit.broken(limits, value).map(ReadingLimit::outside).orElseGet(forecast::verdict);
    }

    private void tooNear(double valueMm, double... limitsMm) {
        Arrays.stream(limitsMm)
                .boxed()
                .flatMap(limitMm -> GaugeError.told(valueMm, limitMm).stream())
                .findFirst()
                .ifPresent(words::add);
    }

    /**
     * A finding that is dated by its wear.
     *
     * @param forecast empty where a reading decides, which has no date
     * @param seen whether it is one that needs no gauge
     * @param beyond whether a reading is beyond its limit
     */
    private Finding finding(
            Subject.Part part,
            Verdict verdict,
            Said title,
            Optional<BrakeWear.Forecast> forecast,
            boolean seen,
            boolean beyond,
            double lifeLeft,
            Said source) {
        forecast.ifPresent(each -> evidence.add(each.evidence()));
        var finding = new Finding(
                        new Subject(part, at.corner(), null, null),
                        verdict,
                        title,
                        Listed.sentences(words),
                        forecast.map(BrakeWear.Forecast::horizon).orElse(null),
                        forecast.map(BrakeWear.Forecast::probability).orElse(null),
                        seen ? 0 : Math.clamp(lifeLeft, 0, 1),
                        evidence,
                        source)
                .todo(
                        !seen && words.stream().anyMatch(GaugeError.TooNearToTell.class::isInstance)
                                ? Todo.Action.MEASURE_AGAIN
                                : Todo.Action.REPLACE_PAIR);
        return beyond ? finding.beforeLeaving() : finding;
    }

    /** As a drum gauge is read. */
    private static Amount diameter(double value) {
        return new Amount(value, "mm", 2);
    }

    private static Amount mm(double value) {
        return new Amount(value, "mm", 1);
    }
}
