package cornerbook.core.brake.pads.judge;

import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.brake.judge.BrakeSaid;
import cornerbook.core.brake.judge.BrakeWear;
import cornerbook.core.brake.judge.Deficiency;
import cornerbook.core.brake.judge.GaugeError;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Scale;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
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
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Finding on the pads of one corner: how long their friction material lasts, and whether it wears as it should. */
public final class PadFindings {
    /** Difference between the pads of one corner from which a pad does not work. Common practice, no source. */
    private static final double PAD_DIFFERENCE_MM = 2;
    /** Change of that difference since the visit before that is more than the gauge. Common practice, no source. */
    private static final double SPREAD_CHANGE_MM = 1;
    /** Difference along one pad from which it is tapered. Common practice, no source. */
    private static final double TAPER_MM = 1;

    private final BrakeCorner at;
    private final BrakeWear wear;
    private final Limit legal;
    private final double minimumMm;
    private final List<Said> words = new ArrayList<>();
    private final List<Evidence> evidence = new ArrayList<>();

    private PadFindings(BrakeCorner at, BrakeWear wear, Limit legal) {
        this.at = at;
        this.wear = wear;
        this.legal = legal;
        this.minimumMm = minimumMm(at.brake(), legal);
    }

    /** The finding on the pads at a corner. Where one was not read the other is judged only if it is worn out: that needs no second. */
    public static Judgement judge(Case given, BrakeCorner at, BrakeWear wear) {
        var legal = given.limit(Limit.Kind.PAD_LEGAL);
        var inner = at.padMm(Spot.INNER);
        var outer = at.padMm(Spot.OUTER);
        if (at.done(Measure.PADS_REPLACED)) {
            return Judgement.of(new PadFindings(at, wear, legal).replaced(given.nextVisit()));
        }
        if (inner.isEmpty() || outer.isEmpty()) {
            var missing = new PadSaid.NotRead(
                    at.corner(), inner.isPresent() ? Spot.OUTER : outer.isPresent() ? Spot.INNER : null);
            return new PadFindings(at, wear, legal)
                    .worn(inner.isPresent() ? Spot.INNER : Spot.OUTER, given.nextVisit())
                    .map(finding -> new Judgement(List.of(finding), List.of(missing)))
                    .orElseGet(() -> Judgement.missing(missing));
        }
        return Judgement.of(
                new PadFindings(at, wear, legal).judge(inner.getAsDouble(), outer.getAsDouble(), given.nextVisit()));
    }

    /** What the pads at each corner have to have. */
    public static List<ReadingLimit> limits(Case given) {
        var legal = given.limit(Limit.Kind.PAD_LEGAL);
        return Arrays.stream(Corner.values())
                .filter(corner -> !given.vehicle().axle(corner.axle()).brake().hasDrum())
                .flatMap(corner -> Stream.of(Measure.PAD_THICKNESS, Measure.PAD_THICKNESS_TRAILING)
                        .flatMap(measure ->
                                limits(
                                        measure,
                                        corner,
                                        given.vehicle().axle(corner.axle()).brake(),
                                        legal)
                                        .stream()))
                .flatMap(limit -> GaugeError.told(limit).stream())
                .toList();
    }

    private static List<ReadingLimit> limits(Measure measure, Corner corner, BrakeSpecification brake, Limit legal) {
        if (!brake.hasDisc()) {
            return List.of(legalLimit(measure, corner, legal));
        }
        double minimumMm = minimumMm(brake, legal);
        return List.of(
                legalLimit(measure, corner, legal),
                ReadingLimit.atLeast(
                        minimumMm,
                        measure,
                        new Subject(Subject.Part.PAD, corner, null, null),
                        Verdict.SPENT,
                        new PadSaid.Replace(mm(minimumMm)),
                        new PadSaid.Source(legal.citation()),
                        Measure.PADS_REPLACED));
    }

    /** What the law asks of any pad, whatever the vehicle's maker does. */
    private static ReadingLimit legalLimit(Measure measure, Corner corner, Limit legal) {
        return ReadingLimit.atLeast(
                legal.value(),
                measure,
                new Subject(Subject.Part.PAD, corner, null, null),
                Verdict.UNSAFE,
                new PadSaid.NotOnTheRoad(mm(legal.value())),
                new PadSaid.Source(legal.citation()),
                Measure.PADS_REPLACED);
    }

    private static double minimumMm(BrakeSpecification brake, Limit legal) {
        return Math.max(brake.padMinimumMm(), legal.value());
    }

    private Finding replaced(LocalDate nextVisit) {
        double newMm = at.brake().padNewMm();
        var forecast = wear.forecast(followed(), nextVisit);
        words.add(new PadSaid.AreNew(corner()));
        evidence.add(new Evidence(BrakeSaid.Label.REPLACED, BrakeSaid.Label.AT_THIS_VISIT, BrakeSaid.Ground.RECORDED));
        evidence.add(new Evidence(PadSaid.Label.NEW, mm(newMm), BrakeSaid.Ground.VEHICLE_SPECIFICATION));
        return finding(forecast.verdict(), new PadSaid.NewTitle(corner(), mm(newMm)), forecast, newMm);
    }

    private Optional<Finding> worn(Spot side, LocalDate nextVisit) {
        var readMm = at.padMm(side);
        if (readMm.isEmpty() || readMm.getAsDouble() >= minimumMm) {
            return Optional.empty();
        }
        double thicknessMm = readMm.getAsDouble();
        var forecast = wear.forecast(followed(), nextVisit);
        var verdict = byThickness(thicknessMm, forecast);
        measured(side, thicknessMm);
        limits(verdict);
        var title = new PadSaid.OneReadTitle(corner(), side, mm(thicknessMm), mm(minimumMm));
        return Optional.of(finding(verdict, title, forecast, thicknessMm));
    }

    private Finding judge(double innerMm, double outerMm, LocalDate nextVisit) {
        var forecast = wear.forecast(followed(), nextVisit);
        double thinnestMm = Math.min(innerMm, outerMm);
        var verdict = byThickness(thinnestMm, forecast);
        measured(Spot.INNER, innerMm);
        measured(Spot.OUTER, outerMm);
        limits(verdict);
        verdict = verdict.graver(uneven(innerMm, outerMm));
        verdict = verdict.graver(tapered());
        verdict = verdict.graver(indicator());
        var causes = BrakeCauses.of(at);
        if (!causes.found().isEmpty()) {
            if (verdict != Verdict.HOLDS) {
                words.add(new PadSaid.CausesFound(
                        Listed.and(causes.found()), causes.found().size()));
            }
            evidence.add(new Evidence(
                    PadSaid.Label.FOUND_BY_HAND, Listed.and(causes.found()), PadSaid.Ground.FOUND_BY_HAND));
        }
        causes.likeliest().ifPresent(cause -> {
            words.add(causes.found().isEmpty() ? new PadSaid.LookFirst(cause) : new PadSaid.LookAlso(cause));
            evidence.addAll(causes.evidence());
        });
        return finding(
                verdict,
                new PadSaid.ReadTitle(corner(), mm(innerMm), mm(outerMm), mm(minimumMm)),
                forecast,
                thinnestMm);
    }

    private Verdict byThickness(double thinnestMm, BrakeWear.Forecast forecast) {
        var limits = limits(Measure.PAD_THICKNESS, corner(), at.brake(), legal);
        var verdict = ReadingLimit.broken(limits, thinnestMm)
                .map(ReadingLimit::outside)
                .orElseGet(forecast::verdict);
        words.add(
                switch (verdict) {
                    case UNSAFE -> new PadSaid.BelowLegal(corner());
                    case SPENT ->
                        thinnestMm < minimumMm ? new PadSaid.AtLimit(corner()) : new PadSaid.LikelyAtLimit(corner());
                    case RUNS_OUT -> new PadSaid.MayReachLimit(corner());
                    case HOLDS -> new PadSaid.Enough(corner());
                });
        GaugeError.told(thinnestMm, legal.value())
                .or(() -> GaugeError.told(thinnestMm, minimumMm))
                .ifPresent(words::add);
        return verdict;
    }

    private void limits(Verdict verdict) {
        evidence.add(new Evidence(
                BrakeSaid.Label.MINIMUM, mm(at.brake().padMinimumMm()), BrakeSaid.Ground.VEHICLE_SPECIFICATION));
        evidence.add(new Evidence(BrakeSaid.LeastForTheRoad.of(legal), mm(legal.value()), legal.citation()));
        if (verdict == Verdict.UNSAFE) {
            evidence.add(Deficiency.PAD_BELOW_LIMIT.evidence());
        }
    }

    private Verdict uneven(double innerMm, double outerMm) {
        double differenceMm = Math.abs(innerMm - outerMm);
        evidence.add(new Evidence(
                PadSaid.Label.INNER_AGAINST_OUTER,
                new PadSaid.Apart(mm(differenceMm)),
                new PadSaid.ShowsFrom(mm(PAD_DIFFERENCE_MM))));
        var before = spreadBeforeMm();
        before.ifPresent(mm -> evidence.add(new Evidence(
                PadSaid.Label.VISIT_BEFORE,
                new PadSaid.Apart(mm(mm)),
                new PadSaid.LookedIntoFrom(mm(SPREAD_CHANGE_MM)))));
        boolean grew =
                before.filter(mm -> differenceMm - mm >= SPREAD_CHANGE_MM).isPresent();
        if (differenceMm < PAD_DIFFERENCE_MM && !grew) {
            return Verdict.HOLDS;
        }
        words.add(new PadSaid.WornMore(innerMm < outerMm ? Spot.INNER : Spot.OUTER));
        return Verdict.RUNS_OUT;
    }

    private Optional<Double> spreadBeforeMm() {
        for (int i = wear.visits() - 2; i >= 0; i--) {
            var then = wear.at(at.corner(), i);
            var inner = then.padMm(Spot.INNER);
            var outer = then.padMm(Spot.OUTER);
            if (then.done(Measure.PADS_REPLACED)) {
                return Optional.empty();
            }
            if (inner.isPresent() && outer.isPresent()) {
                return Optional.of(Math.abs(inner.getAsDouble() - outer.getAsDouble()));
            }
        }
        return Optional.empty();
    }

    private Verdict tapered() {
        var edges = at.taper();
        if (edges.isEmpty()) {
            return Verdict.HOLDS;
        }
        double taperMm = Math.abs(edges.get().getFirst() - edges.get().getLast());
        evidence.add(new Evidence(
                PadSaid.Label.LEADING_AGAINST_TRAILING,
                new PadSaid.EdgesRead(mm(edges.get().getFirst()), mm(edges.get().getLast())),
                new PadSaid.TaperedFrom(mm(TAPER_MM))));
        if (taperMm < TAPER_MM) {
            return Verdict.HOLDS;
        }
        words.add(new PadSaid.Wedge());
        return Verdict.RUNS_OUT;
    }

    private Verdict indicator() {
        var worst = at.worst(Measure.PAD_WEAR_INDICATOR);
        if (worst.isEmpty()) {
            return Verdict.HOLDS;
        }
        evidence.add(new Evidence(
                PadSaid.Label.WEAR_INDICATOR,
                Scale.WEAR_INDICATOR.told(worst.get().value()),
                new PadSaid.Seen(BrakeCorner.side(worst.get()))));
        return switch ((int) Math.round(worst.get().value())) {
            case 0, 1 -> Verdict.HOLDS;
            case 2 -> {
                evidence.add(Deficiency.PAD_AT_INDICATOR.evidence());
                words.add(new PadSaid.IndicatorTouches());
                yield Verdict.SPENT;
            }
            default -> {
                evidence.add(Deficiency.PAD_WRONGLY_FITTED.evidence());
                words.add(new PadSaid.IndicatorMisplaced());
                yield Verdict.SPENT;
            }
        };
    }

    private List<BrakeWear.Followed> followed() {
        return BrakeCorner.SIDES.stream()
                .map(side -> wear.pad(at.corner(), side, minimumMm))
                .flatMap(Optional::stream)
                .toList();
    }

    private Finding finding(Verdict verdict, Said title, BrakeWear.Forecast forecast, double thinnestMm) {
        for (var side : BrakeCorner.SIDES) {
            wear.pad(at.corner(), side, minimumMm).ifPresent(followed -> evidence.add(wear.evidence(side, followed)));
        }
        // What is uneven or wrongly fitted has no date: then the date of the thickness would be read as its own.
        boolean below = thinnestMm < minimumMm;
        boolean byThickness = !below && (verdict == Verdict.HOLDS || verdict == forecast.verdict());
        if (!below) {
            evidence.add(forecast.evidence());
        }
        if (verdict != Verdict.HOLDS && words.size() > 1) {
            words.removeIf(PadSaid.Enough.class::isInstance);
        }
        var causes = BrakeCauses.of(at);
        var finding = new Finding(
                        new Subject(Subject.Part.PAD, at.corner(), null, null),
                        verdict,
                        title,
                        new Listed(words, Listed.Join.SENTENCES),
                        byThickness ? forecast.horizon() : null,
                        byThickness ? forecast.probability() : null,
                        Math.clamp(
                                (thinnestMm - minimumMm)
                                        / Math.max(0.1, at.brake().padNewMm() - minimumMm),
                                0,
                                1),
                        evidence,
                        new PadSaid.Source(legal.citation()))
                .todo(
                        words.stream().anyMatch(PadFindings::asksToReadAgain) && !indicatorTells()
                                ? Todo.Action.MEASURE_AGAIN
                                : byThickness || below || verdict != Verdict.RUNS_OUT
                                        ? Todo.Action.REPLACE_PAIR
                                        : causes.asksForRepair() ? Todo.Action.REPAIR : Todo.Action.SERVICE_BRAKE);
        if (below) {
            return finding.beforeLeaving();
        }
        boolean toLookAt = verdict == Verdict.HOLDS && words.stream().anyMatch(PadSaid.LookFirst.class::isInstance);
        boolean freed = !byThickness && verdict == Verdict.RUNS_OUT && causes.arePutRight();
        return toLookAt || freed ? finding.todo(Todo.Action.INSPECT, Todo.When.AT_NEXT_VISIT) : finding;
    }

    private static boolean asksToReadAgain(Said sentence) {
        return sentence instanceof GaugeError.TooNearToTell;
    }

    /** What the eye sees of the indicator no gauge takes back. */
    private boolean indicatorTells() {
        return at.worst(Measure.PAD_WEAR_INDICATOR)
                .filter(worst -> Math.round(worst.value()) >= 2)
                .isPresent();
    }

    private void measured(Spot side, double thicknessMm) {
        evidence.add(new Evidence(
                side,
                mm(thicknessMm),
                at.read(Measure.PAD_THICKNESS, side)
                        .or(() -> at.read(Measure.PAD_THICKNESS_TRAILING, side))
                        .map(Evidence::howRead)
                        .orElseThrow()));
    }

    private static Amount mm(double thicknessMm) {
        return new Amount(thicknessMm, "mm", 1);
    }

    private Corner corner() {
        return at.corner();
    }
}
