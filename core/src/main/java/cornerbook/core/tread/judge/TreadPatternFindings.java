package cornerbook.core.tread.judge;

import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.numeric.Estimate;
import cornerbook.core.tread.CornerContrast;
import cornerbook.core.tread.TreadPattern;
import cornerbook.core.tread.TreadPattern.Cause;
import cornerbook.core.tread.judge.SetForecast.GrooveForecast;
import cornerbook.core.tread.judge.SetForecast.TyreForecast;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Findings on how a tyre wears across, and how the two corners of an axle wear against each other. */
public final class TreadPatternFindings {
    private static final String SOURCE =
            "wear across the tread and its usual causes: common practice, no source; docs/methods/wear.md";

    private TreadPatternFindings() {}

    public static List<Finding> of(SetForecast forecast) {
        var findings = new ArrayList<Finding>();
        for (var tyre : forecast.tyres()) {
            across(forecast, tyre).ifPresent(findings::add);
        }
        for (var contrast : forecast.contrasts()) {
            if (contrast.told()) {
                findings.add(between(forecast, contrast));
            }
        }
        return findings;
    }

    private static Optional<Finding> across(SetForecast forecast, TyreForecast tyre) {
        if (tyre.grooves().size() < 3) {
            return Optional.empty();
        }
        var inner = tyre.grooves().get(0);
        var centre = tyre.grooves().get(1);
        var outer = tyre.grooves().get(2);
        double meanMm = (inner.depthMm() + centre.depthMm() + outer.depthMm()) / 3;
        double newMm = tyre.wheel().tyre().newDepthMm();
        double lowestMm = TreadFindings.lowest(tyre).depthMm();
        return TreadPattern.name(estimate(inner), estimate(centre), estimate(outer), Math.max(0, newMm - meanMm))
                .map(named -> across(forecast, tyre, named, lowestMm, newMm));
    }

    private static Finding across(
            SetForecast forecast, TyreForecast tyre, TreadPattern.Named named, double lowestMm, double newMm) {
        var depths = "%.1f / %.1f / %.1f mm"
                .formatted(
                        tyre.grooves().get(0).depthMm(),
                        tyre.grooves().get(1).depthMm(),
                        tyre.grooves().get(2).depthMm());
        return new Finding(
                new Subject(
                        Subject.Part.TREAD_PATTERN,
                        tyre.corner(),
                        tyre.wheel().tag(),
                        forecast.set().id()),
                lowestMm < forecast.limitMm() ? Verdict.SPENT : Verdict.HOLDS,
                "%s wears unevenly: %s across".formatted(tyre.wheel().tag(), depths),
                "The tread is worn unevenly across: " + words(named.cause()) + ".",
                null,
                null,
                Math.clamp((lowestMm - forecast.limitMm()) / (newMm - forecast.limitMm()), 0, 1),
                List.of(
                        new Evidence("inner, centre, outer", depths, "corner-rate model, all readings"),
                        new Evidence(
                                "chance of this cause",
                                TreadFindings.percent(named.chance()),
                                "against an even tyre and the other causes; named from "
                                        + TreadFindings.percent(TreadPattern.NAMED_FROM) + " and "
                                        + TreadPattern.UNEVEN_MM
                                        + " mm (common practice, no source)")),
                SOURCE);
    }

    private static Finding between(SetForecast forecast, CornerContrast contrast) {
        double ratio = contrast.rateMmPer1000Km() / contrast.otherRateMmPer1000Km();
        return new Finding(
                new Subject(
                        Subject.Part.TREAD_PATTERN,
                        contrast.faster(),
                        null,
                        forecast.set().id()),
                Verdict.HOLDS,
                "%s wears %.1f times as fast as the other side".formatted(contrast.faster(), ratio),
                "One tyre of the axle wears much faster than the other, as from wheel alignment or a dragging brake; have both looked at.",
                null,
                null,
                1,
                List.of(
                        new Evidence(
                                "wear at this corner and the other",
                                "%.2f and %.2f mm per 1000 km"
                                        .formatted(contrast.rateMmPer1000Km(), contrast.otherRateMmPer1000Km()),
                                "corner-rate model, mean of the grooves"),
                        new Evidence(
                                "chance of half as fast again or more",
                                TreadFindings.percent(contrast.chance()),
                                "named from " + TreadFindings.percent(TreadPattern.NAMED_FROM)
                                        + " (common practice, no source)")),
                SOURCE);
    }

    private static Estimate estimate(GrooveForecast groove) {
        return new Estimate(groove.depthMm(), groove.depthSdMm());
    }

    private static String words(Cause cause) {
        return switch (cause) {
            case EVEN -> "no cause";
            case UNDER_INFLATION -> "both shoulders are low, as from running with too little air";
            case OVER_INFLATION -> "the centre is low, as from running with too much air";
            case INNER_ALIGNMENT ->
                "the inner shoulder is low, as from camber or toe; have the wheel alignment measured";
            case OUTER_ALIGNMENT ->
                "the outer shoulder is low, as from camber or toe; have the wheel alignment measured";
        };
    }
}
