package cornerbook.core.tread.judge;

import cornerbook.core.corner.Side;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.SetSpan;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.numeric.Estimate;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Chance;
import cornerbook.core.tread.AlignmentSaid;
import cornerbook.core.tread.AxlePattern;
import cornerbook.core.tread.TreadAcross;
import cornerbook.core.tread.TreadPattern;
import cornerbook.core.tread.judge.SetForecast.GrooveForecast;
import cornerbook.core.tread.judge.SetForecast.TyreForecast;
import cornerbook.core.tread.judge.TreadSaid.Label;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Findings on how a tyre wears across, and how the two corners of an axle wear against each other. */
public final class TreadPatternFindings {
    private static final int GROOVES = 3;

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
        if (tyre.grooves().size() < GROOVES) {
            return Optional.empty();
        }
        var inner = tyre.grooves().get(0);
        var centre = tyre.grooves().get(1);
        var outer = tyre.grooves().get(2);
        double meanMm = (inner.depthMm() + centre.depthMm() + outer.depthMm()) / 3;
        double newMm = tyre.wheel().tyre().newDepthOrUsualMm();
        double lowestMm = TreadFindings.lowest(tyre).depthMm();
        return TreadPattern.name(estimate(inner), estimate(centre), estimate(outer), Math.max(0, newMm - meanMm))
                .map(named -> across(forecast, tyre, named, lowestMm, newMm));
    }

    private static Finding across(
            SetForecast forecast, TyreForecast tyre, TreadPattern.Named named, double lowestMm, double newMm) {
        var depths = new TreadSaid.Across(
                depth(tyre.grooves().get(0)),
                depth(tyre.grooves().get(1)),
                depth(tyre.grooves().get(2)));
        return new Finding(
                        new Subject(
                                Subject.Part.TREAD_PATTERN,
                                tyre.corner(),
                                tyre.wheel().tag(),
                                forecast.set().id()),
                        lowestMm < forecast.limitMm() ? Verdict.SPENT : Verdict.HOLDS,
                        new TreadSaid.WearsUnevenly(tyre.wheel().tag(), depths),
                        new TreadSaid.UnevenBy(named.cause()),
                        null,
                        null,
                        Math.clamp((lowestMm - forecast.limitMm()) / (newMm - forecast.limitMm()), 0, 1),
                        Stream.of(
                                        Stream.of(
                                                new Evidence(Label.INNER_CENTRE_OUTER, depths, Label.ALL_READINGS),
                                                new Evidence(
                                                        Label.CHANCE_OF_CAUSE,
                                                        new Chance(named.chance()),
                                                        new TreadSaid.NamedFrom(
                                                                new Chance(TreadPattern.NAMED_FROM),
                                                                new Amount(TreadPattern.UNEVEN_MM, "mm", 1)))),
                                        alignment(forecast, tyre, named.cause()))
                                .flatMap(Function.identity())
                                .toList(),
                        Label.PATTERN_SOURCE)
                .todo(todo(named.cause()), when(forecast, lowestMm));
    }

    /** What both tyres of the axle point to together, and what it costs this one; nothing where it is no alignment. */
    private static Stream<Evidence> alignment(SetForecast forecast, TyreForecast tyre, TreadPattern.Cause cause) {
        if (todo(cause) != Todo.Action.MEASURE_ALIGNMENT) {
            return Stream.empty();
        }
        return Stream.concat(
                forecast.tyres().stream()
                        .filter(other -> other.corner() != tyre.corner()
                                && other.corner().axle() == tyre.corner().axle()
                                && other.grooves().size() == GROOVES)
                        .flatMap(other -> axle(tyre, other)),
                cost(forecast, tyre));
    }

    private static Stream<Evidence> axle(TyreForecast tyre, TyreForecast other) {
        boolean isLeft = tyre.corner().side() == Side.LEFT;
        var left = isLeft ? tyre : other;
        var right = isLeft ? other : tyre;
        double wornMm = Stream.of(left, right)
                .mapToDouble(each -> Math.max(
                        0,
                        each.wheel().tyre().newDepthOrUsualMm() - depths(each).meanMm()))
                .average()
                .orElseThrow();
        double sdMm = Stream.of(left, right)
                .flatMap(each -> each.grooves().stream())
                .mapToDouble(GrooveForecast::depthSdMm)
                .average()
                .orElseThrow();
        return AxlePattern.chances(depths(left), depths(right), wornMm, sdMm).entrySet().stream()
                .filter(entry -> entry.getKey().isAlignment() && entry.getValue() >= TreadPattern.NAMED_FROM)
                .map(entry -> new Evidence(
                        Label.AXLE_POINTS_TO,
                        new AlignmentSaid.PointsTo(entry.getKey()),
                        new TreadSaid.ContrastNamedFrom(new Chance(TreadPattern.NAMED_FROM))));
    }

    /** The lowest groove ends a tyre; put right, it wears on as the others do. */
    private static Stream<Evidence> cost(SetForecast forecast, TyreForecast tyre) {
        var low = TreadFindings.lowest(tyre);
        double elsewhere = tyre.grooves().stream()
                .filter(groove -> groove.groove() != low.groove())
                .mapToDouble(GrooveForecast::rateMmPer1000Km)
                .average()
                .orElse(0);
        double overMm = low.depthMm() - forecast.limitMm();
        if (overMm <= 0 || elsewhere <= 0 || low.rateMmPer1000Km() <= elsewhere) {
            return Stream.empty();
        }
        return Stream.of(new Evidence(
                Label.LEFT_AS_IT_IS_AND_SET_RIGHT,
                new TreadSaid.TwoDistances(hundreds(overMm / low.rateMmPer1000Km()), hundreds(overMm / elsewhere)),
                Label.MEAN_OF_GROOVES));
    }

    /** Nobody knows it to the kilometre. */
    private static Amount hundreds(double thousandsOfKm) {
        return new Amount(100 * Math.rint(10 * thousandsOfKm), "km", 0);
    }

    private static TreadAcross depths(TyreForecast tyre) {
        return new TreadAcross(
                tyre.grooves().get(0).depthMm(),
                tyre.grooves().get(1).depthMm(),
                tyre.grooves().get(2).depthMm());
    }

    /** New tyres would wear as the old ones did: on a tyre that is worn down it is done before they go on. */
    private static Todo.When when(SetForecast forecast, double lowestMm) {
        if (lowestMm >= forecast.limitMm()) {
            return Todo.When.BEFORE_NEXT_VISIT;
        }
        return forecast.role() == SetSpan.Role.COMING_OFF ? Todo.When.BEFORE_FITTING : Todo.When.NOW;
    }

    private static Todo.Action todo(TreadPattern.Cause cause) {
        return switch (cause) {
            case UNDER_INFLATION, OVER_INFLATION -> Todo.Action.CHECK_PRESSURE;
            case INNER_ALIGNMENT, OUTER_ALIGNMENT, EVEN -> Todo.Action.MEASURE_ALIGNMENT;
        };
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
                        new TreadSaid.WearsFaster(contrast.faster(), new Amount(ratio, "", 1)),
                        new TreadSaid.OneSideFaster(),
                        null,
                        null,
                        1,
                        List.of(
                                new Evidence(
                                        Label.WEAR_HERE_AND_THERE,
                                        new TreadSaid.TwoRates(
                                                new Amount(contrast.rateMmPer1000Km(), "mm/1000 km", 2),
                                                new Amount(contrast.otherRateMmPer1000Km(), "mm/1000 km", 2)),
                                        Label.MEAN_OF_GROOVES),
                                new Evidence(
                                        Label.CHANCE_OF_HALF_AS_FAST_AGAIN,
                                        new Chance(contrast.chance()),
                                        new TreadSaid.ContrastNamedFrom(new Chance(TreadPattern.NAMED_FROM)))),
                        Label.PATTERN_SOURCE)
                .todo(Todo.Action.MEASURE_ALIGNMENT, Todo.When.BEFORE_NEXT_VISIT);
    }

    private static Amount depth(GrooveForecast groove) {
        return new Amount(groove.depthMm(), "mm", 1);
    }

    private static Estimate estimate(GrooveForecast groove) {
        return new Estimate(groove.depthMm(), groove.depthSdMm());
    }
}
