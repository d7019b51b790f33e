package cornerbook.core.brake.pads.judge;

import cornerbook.core.say.Said;

import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.brake.judge.BrakeWear;
import cornerbook.core.brake.judge.Deficiency;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Scale;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

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
    private final List<String> words = new ArrayList<>();
    private final List<Evidence> evidence = new ArrayList<>();

    private PadFindings(BrakeCorner at, BrakeWear wear, Limit legal) {
        this.at = at;
        this.wear = wear;
        this.legal = legal;
        this.minimumMm = Math.max(at.brake().padMinimumMm(), legal.value());
    }

    /** The finding; empty, with a line in {@code notJudged}, when a pad was not read. */
    public static Optional<Finding> of(
            BrakeCorner at, BrakeWear wear, Limit legal, LocalDate nextVisit, List<Said> notJudged) {
        var inner = at.padMm(Spot.INNER);
        var outer = at.padMm(Spot.OUTER);
        if (at.done(Measure.PADS_REPLACED)) {
            return Optional.of(new PadFindings(at, wear, legal).replaced(nextVisit));
        }
        if (inner.isEmpty() || outer.isEmpty()) {
            notJudged.add(Said.verbatim("%s pads: %s not measured"
                    .formatted(at.corner(), inner.isPresent() ? "outer" : outer.isPresent() ? "inner" : "thickness")));
            return Optional.empty();
        }
        return Optional.of(new PadFindings(at, wear, legal).judge(inner.getAsDouble(), outer.getAsDouble(), nextVisit));
    }

    private Finding replaced(LocalDate nextVisit) {
        double newMm = at.brake().padNewMm();
        var forecast = wear.forecast(followed(), nextVisit);
        words.add("The brake pads at %s are new.".formatted(corner()));
        evidence.add(new Evidence("replaced", "at this visit", "recorded"));
        evidence.add(new Evidence("new", "%.1f mm".formatted(newMm), "vehicle's specification"));
        return finding(forecast.verdict(), "%s pads new, %.1f mm".formatted(corner(), newMm), forecast, newMm);
    }

    private Finding judge(double innerMm, double outerMm, LocalDate nextVisit) {
        var forecast = wear.forecast(followed(), nextVisit);
        double thinnestMm = Math.min(innerMm, outerMm);
        var verdict = thinnestMm < legal.value()
                ? Verdict.UNSAFE
                : thinnestMm < minimumMm ? Verdict.SPENT : forecast.verdict();
        var sentence = switch (verdict) {
            case UNSAFE -> "The brake pads at %s are below the legal minimum. The car must not be driven.";
            case SPENT ->
                thinnestMm < minimumMm
                        ? "The brake pads at %s are worn to their limit and have to be replaced now."
                        : "The brake pads at %s are likely to reach their limit before the next visit and have to be replaced now.";
            case RUNS_OUT -> "The brake pads at %s may reach their limit before the next visit.";
            case HOLDS -> "The brake pads at %s have enough material.";
        };
        words.add(sentence.formatted(corner()));
        measured("inner", innerMm);
        measured("outer", outerMm);
        evidence.add(
                new Evidence("minimum", "%.1f mm".formatted(at.brake().padMinimumMm()), "vehicle's specification"));
        evidence.add(new Evidence("legal minimum", "%.1f mm".formatted(legal.value()), legal.citation()));
        if (verdict == Verdict.UNSAFE) {
            evidence.add(Deficiency.PAD_BELOW_LIMIT.evidence());
        }
        verdict = verdict.graver(uneven(innerMm, outerMm));
        verdict = verdict.graver(tapered());
        verdict = verdict.graver(indicator());
        var causes = BrakeCauses.of(at);
        causes.likeliest().ifPresent(cause -> {
            words.add("To be looked at first: %s.".formatted(cause.words()));
            evidence.addAll(causes.evidence());
        });
        return finding(
                verdict,
                "%s pads inner %.1f mm, outer %.1f mm, minimum %.1f mm"
                        .formatted(corner(), innerMm, outerMm, minimumMm),
                forecast,
                thinnestMm);
    }

    private Verdict uneven(double innerMm, double outerMm) {
        double differenceMm = Math.abs(innerMm - outerMm);
        evidence.add(new Evidence(
                "inner against outer",
                "%.1f mm apart".formatted(differenceMm),
                "a pad that does not work shows from 2 mm: common practice, no source"));
        var before = spreadBeforeMm();
        before.ifPresent(mm -> evidence.add(new Evidence(
                "at the visit before",
                "%.1f mm apart".formatted(mm),
                "a change of 1 mm is looked into: common practice, no source")));
        boolean grew =
                before.filter(mm -> differenceMm - mm >= SPREAD_CHANGE_MM).isPresent();
        if (differenceMm < PAD_DIFFERENCE_MM && !grew) {
            return Verdict.HOLDS;
        }
        words.add("The %s pad is worn more.".formatted(innerMm < outerMm ? "inner" : "outer"));
        return Verdict.RUNS_OUT;
    }

    private Optional<Double> spreadBeforeMm() {
        var visits = wear.visits();
        for (int i = visits.size() - 2; i >= 0; i--) {
            var then = new BrakeCorner(at.corner(), at.vehicle(), new StandingReadings(visits.get(i)));
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
                "leading against trailing edge",
                "%.1f mm against %.1f mm"
                        .formatted(edges.get().getFirst(), edges.get().getLast()),
                "tapered from 1 mm: common practice, no source"));
        if (taperMm < TAPER_MM) {
            return Verdict.HOLDS;
        }
        words.add("A pad is worn to a wedge.");
        return Verdict.RUNS_OUT;
    }

    private Verdict indicator() {
        var worst = at.worst(Measure.PAD_WEAR_INDICATOR);
        if (worst.isEmpty()) {
            return Verdict.HOLDS;
        }
        var word = Scale.WEAR_INDICATOR.wordOf(worst.get().value());
        evidence.add(new Evidence("wear indicator", word, "seen, " + worst.get().spot()));
        return switch ((int) Math.round(worst.get().value())) {
            case 0, 1 -> Verdict.HOLDS;
            case 2 -> {
                evidence.add(Deficiency.PAD_AT_INDICATOR.evidence());
                words.add("The wear indicator touches the disc: the pads have to be replaced now.");
                yield Verdict.SPENT;
            }
            default -> {
                evidence.add(Deficiency.PAD_WRONGLY_FITTED.evidence());
                words.add("The wear indicator stands in the wrong place: the pads have to be fitted anew.");
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

    private Finding finding(Verdict verdict, String title, BrakeWear.Forecast forecast, double thinnestMm) {
        for (var side : BrakeCorner.SIDES) {
            wear.pad(at.corner(), side, minimumMm)
                    .ifPresent(followed ->
                            evidence.add(wear.evidence(side.name().toLowerCase(Locale.ROOT) + " pad", followed)));
        }
        // What is uneven or wrongly fitted has no date: then the date of the thickness would be read as its own.
        boolean byThickness = verdict == Verdict.HOLDS || verdict == forecast.verdict();
        evidence.add(forecast.evidence());
        return new Finding(
                new Subject(Subject.Part.PAD, at.corner(), null, null),
                verdict,
                title,
                String.join(" ", words),
                byThickness ? forecast.horizon() : null,
                byThickness ? forecast.probability() : null,
                Math.clamp((thinnestMm - minimumMm) / Math.max(0.1, at.brake().padNewMm() - minimumMm), 0, 1),
                evidence,
                "vehicle's specification; " + legal.citation() + "; docs/methods/brakes.md, wear of pads and discs");
    }

    private void measured(String what, double thicknessMm) {
        var spot = Spot.valueOf(what.toUpperCase(Locale.ROOT));
        evidence.add(new Evidence(
                what,
                "%.1f mm".formatted(thicknessMm),
                at.read(Measure.PAD_THICKNESS, spot)
                        .or(() -> at.read(Measure.PAD_THICKNESS_TRAILING, spot))
                        .map(Evidence::howRead)
                        .orElse(Said.verbatim("reading"))));
    }

    private Corner corner() {
        return at.corner();
    }
}
