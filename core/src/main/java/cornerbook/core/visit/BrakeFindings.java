package cornerbook.core.visit;

import cornerbook.core.brake.DiscThickness;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Findings on pads and discs: measured against their limits. */
final class BrakeFindings {
    /** Difference between the pads of one corner from which a pad does not work. Common practice, no source. */
    private static final double PAD_DIFFERENCE_MM = 2;
    /** A pad this much above its minimum is measured again sooner. Common practice, no source. */
    private static final double PAD_MARGIN_MM = 1;

    private static final int TIGHT = 1;
    private static final int SEIZED = 2;

    private BrakeFindings() {}

    static List<Finding> of(Vehicle vehicle, CurrentReadings readings, LimitTable limits, List<String> notJudged) {
        var findings = new ArrayList<Finding>();
        var legal = limits.get(vehicle.jurisdiction(), Limit.Kind.PAD_LEGAL, null);
        for (var corner : Corner.values()) {
            var brake = vehicle.axle(corner.axle()).brake();
            var inner = readings.ofCorner(Measure.PAD_THICKNESS, corner, Spot.INNER);
            var outer = readings.ofCorner(Measure.PAD_THICKNESS, corner, Spot.OUTER);
            if (inner.isPresent() && outer.isPresent()) {
                findings.add(pads(
                        corner, brake, legal, inner.get(), outer.get(), BrakeCauses.of(corner, vehicle, readings)));
            } else {
                notJudged.add("%s pads: %s not measured"
                        .formatted(corner, inner.isPresent() ? "outer" : outer.isPresent() ? "inner" : "thickness"));
            }
            movement(corner, readings).ifPresent(findings::add);
            disc(corner, brake, readings)
                    .ifPresentOrElse(
                            findings::add, () -> notJudged.add("%s disc: thickness not measured".formatted(corner)));
        }
        return findings;
    }

    private static Finding pads(
            Corner corner, BrakeSpecification brake, Limit legal, Reading inner, Reading outer, BrakeCauses causes) {
        double thinnestMm = Math.min(inner.value(), outer.value());
        double differenceMm = Math.abs(inner.value() - outer.value());
        double minimumMm = Math.max(brake.padMinimumMm(), legal.value());
        boolean uneven = differenceMm >= PAD_DIFFERENCE_MM;
        var verdict = thinnestMm < legal.value()
                ? Verdict.UNSAFE
                : thinnestMm < minimumMm
                        ? Verdict.SPENT
                        : thinnestMm < minimumMm + PAD_MARGIN_MM || uneven ? Verdict.RUNS_OUT : Verdict.HOLDS;
        var words = switch (verdict) {
            case UNSAFE -> "The brake pads at %s are below the legal minimum. The car must not be driven.";
            case SPENT -> "The brake pads at %s are worn to their limit and have to be replaced now.";
            case RUNS_OUT -> "The brake pads at %s have to be looked at again before the next visit.";
            case HOLDS -> "The brake pads at %s have enough material.";
        };
        var plain = new StringBuilder(words.formatted(corner));
        if (uneven) {
            plain.append(" The %s pad is worn more.".formatted(inner.value() < outer.value() ? "inner" : "outer"));
        }
        causes.likeliest().ifPresent(cause -> plain.append(" To be looked at first: %s.".formatted(cause.words())));
        var evidence = new ArrayList<>(List.of(
                new Evidence("inner", "%.1f mm".formatted(inner.value()), written(inner)),
                new Evidence("outer", "%.1f mm".formatted(outer.value()), written(outer)),
                new Evidence("minimum", "%.1f mm".formatted(brake.padMinimumMm()), "vehicle's specification"),
                new Evidence("legal minimum", "%.1f mm".formatted(legal.value()), legal.citation()),
                new Evidence(
                        "inner against outer",
                        "%.1f mm apart".formatted(differenceMm),
                        "a pad that does not work shows from 2 mm: common practice, no source")));
        if (causes.likeliest().isPresent()) {
            evidence.add(causes.evidence());
        }
        return new Finding(
                new Subject(Subject.Part.PAD, corner, null, null),
                verdict,
                "%s pads inner %.1f mm, outer %.1f mm, minimum %.1f mm"
                        .formatted(corner, inner.value(), outer.value(), minimumMm),
                plain.toString(),
                null,
                null,
                Math.clamp((thinnestMm - minimumMm) / Math.max(0.1, brake.padNewMm() - minimumMm), 0, 1),
                evidence,
                "vehicle's specification; " + legal.citation());
    }

    private static Optional<Finding> movement(Corner corner, CurrentReadings readings) {
        return Stream.of(Spot.INNER, Spot.OUTER)
                .map(spot -> readings.ofCorner(Measure.PAD_MOVEMENT, corner, spot))
                .flatMap(Optional::stream)
                .max((one, other) -> Double.compare(one.value(), other.value()))
                .filter(worst -> Math.round(worst.value()) >= TIGHT)
                .map(worst -> stuck(corner, worst));
    }

    private static Finding stuck(Corner corner, Reading worst) {
        boolean seized = Math.round(worst.value()) >= SEIZED;
        var side = String.valueOf(worst.spot()).toLowerCase(Locale.ROOT);
        return new Finding(
                new Subject(Subject.Part.PAD, corner, null, null),
                seized ? Verdict.SPENT : Verdict.RUNS_OUT,
                "%s %s pad %s in its bracket as found".formatted(corner, side, seized ? "seized" : "tight"),
                seized
                        ? "A brake pad at %s was seized and did not work. It has to be freed, cleaned and lubricated; see what was done."
                                .formatted(corner)
                        : "A brake pad at %s moved only with force. Clean and lubricate it before it seizes."
                                .formatted(corner),
                null,
                null,
                seized ? 0 : 0.5,
                List.of(new Evidence(
                        "by hand, " + side + " pad",
                        seized ? "seized" : "tight",
                        "reading, written \"" + worst.asWritten() + "\"")),
                "yearly cleaning and lubrication where roads are salted: manufacturers' service advice; judgement by hand: common practice, no source");
    }

    private static Optional<Finding> disc(Corner corner, BrakeSpecification brake, CurrentReadings readings) {
        return readings.ofCorner(Measure.DISC_THICKNESS, corner, null).map(thickness -> {
            var runout = readings.ofCorner(Measure.DISC_RUNOUT, corner, null);
            var variation = readings.ofCorner(Measure.DISC_THICKNESS_VARIATION, corner, null);
            var points = variation
                    .flatMap(v -> WrittenReading.findPoints(v.measure(), v.asWritten()))
                    .map(DiscThickness::new);
            double thinnestMm = points.map(DiscThickness::thinnestMm)
                    .map(point -> Math.min(point, thickness.value()))
                    .orElse(thickness.value());
            boolean thin = thinnestMm < brake.discMinimumMm();
            boolean wobbles =
                    runout.filter(r -> r.value() > brake.runoutLimitMm()).isPresent()
                            || variation
                                    .filter(v -> v.value() > brake.thicknessVariationLimitMm())
                                    .isPresent();
            var evidence = new ArrayList<Evidence>();
            evidence.add(new Evidence("thickness", "%.2f mm".formatted(thickness.value()), written(thickness)));
            points.ifPresent(p -> evidence.add(new Evidence(
                    "thinnest of %d points".formatted(p.pointsMm().size()),
                    "%.3f mm".formatted(p.thinnestMm()),
                    "around the disc, 10 to 15 mm from its edge")));
            evidence.add(
                    new Evidence("minimum", "%.2f mm".formatted(brake.discMinimumMm()), "vehicle's specification"));
            runout.ifPresent(r -> evidence.add(new Evidence(
                    "lateral runout",
                    "%.3f mm, limit %.3f mm".formatted(r.value(), brake.runoutLimitMm()),
                    "reading; re-index on the studs before condemning")));
            variation.ifPresent(v -> evidence.add(new Evidence(
                    "thickness variation",
                    "%.3f mm, limit %.3f mm".formatted(v.value(), brake.thicknessVariationLimitMm()),
                    points.isPresent() ? "thickest less thinnest; " + written(v) : written(v))));
            return new Finding(
                    new Subject(Subject.Part.DISC, corner, null, null),
                    thin ? Verdict.SPENT : wobbles ? Verdict.RUNS_OUT : Verdict.HOLDS,
                    "%s disc %.2f mm, minimum %.2f mm%s"
                            .formatted(corner, thinnestMm, brake.discMinimumMm(), wobbles ? ", runs out of true" : ""),
                    thin
                            ? "The brake disc at %s is below its minimum thickness and has to be replaced with its pads."
                                    .formatted(corner)
                            : wobbles
                                    ? "The brake disc at %s runs out of true; it may shake when braking and has to be looked at."
                                            .formatted(corner)
                                    : "The brake disc at %s is thick enough.".formatted(corner),
                    null,
                    null,
                    Math.clamp(
                            (thinnestMm - brake.discMinimumMm())
                                    / Math.max(0.1, brake.discNewMm() - brake.discMinimumMm()),
                            0,
                            1),
                    evidence,
                    "vehicle's specification");
        });
    }

    private static String written(Reading reading) {
        return "reading, written \"" + reading.asWritten() + "\"";
    }
}
