package cornerbook.core.tread.judge;

import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Wheel;
import cornerbook.core.corner.SetOf;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.OwnShare;
import cornerbook.core.finding.ReadingLimit;
import cornerbook.core.finding.SetSpan;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Chance;
import cornerbook.core.say.PlusMinus;
import cornerbook.core.say.Said;
import cornerbook.core.tread.judge.SetForecast.DepthReading;
import cornerbook.core.tread.judge.SetForecast.GrooveForecast;
import cornerbook.core.tread.judge.SetForecast.TyreForecast;
import cornerbook.core.tread.judge.TreadSaid.Label;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Findings on the tread of the sets of a visit: will it hold, and does it wear as it should. */
public final class TreadFindings {
    private TreadFindings() {}

    /** How the tread of each set will go on that has to last; a set whose tread was never read has none. */
    public static List<SetForecast> forecasts(Case given, TreadForecaster forecaster) {
        return given.spans().stream()
                .filter(span -> forecaster.wasRead(span.set()))
                .map(span -> forecaster.forecast(
                        span,
                        binding(given, span).value(),
                        given.limit(Limit.Kind.TREAD_LEGAL, span).value()))
                .toList();
    }

    /** How likely each axle of the set of a forecast of this case holds. */
    public static AxlesHold axlesHold(Case given, TreadForecaster forecaster, SetForecast forecast) {
        return forecaster.axlesHold(
                given.spans().stream()
                        .filter(span -> span.set().equals(forecast.set()))
                        .findFirst()
                        .orElseThrow(),
                forecast);
    }

    /**
     * The findings on each set that has to last.
     *
     * @param forecasts of the case, as {@link #forecasts} makes them
     */
    public static Judgement judge(Case given, List<SetForecast> forecasts) {
        return Judgement.together(given.spans().stream()
                .map(span -> forecasts.stream()
                        .filter(forecast -> forecast.set().equals(span.set()))
                        .findFirst()
                        .map(forecast -> judge(given, span, forecast))
                        .orElseGet(() -> Judgement.missing(
                                new TreadSaid.NeverMeasured(new SetOf(span.set().season()))))));
    }

    /** What each groove of every wheel has to have; a set that nobody counts on is taken as if it went on now. */
    public static List<ReadingLimit> limits(Case given) {
        return given.history().sets().stream()
                .flatMap(set -> limits(
                        given,
                        given.spans().stream()
                                .filter(span -> span.set().equals(set))
                                .findFirst()
                                .orElseGet(() -> new SetSpan(
                                        set,
                                        SetSpan.Role.GOING_ON,
                                        Map.of(),
                                        given.visit().date(),
                                        given.nextVisit()))))
                .toList();
    }

    private static Stream<ReadingLimit> limits(Case given, SetSpan span) {
        var legal = given.limit(Limit.Kind.TREAD_LEGAL, span);
        var season = binding(given, span);
        var set = new SetOf(span.set().season());
        return span.set().wheels().stream()
                .map(wheel -> new Subject(
                        Subject.Part.WHEEL_SET, null, wheel.tag(), span.set().id()))
                .flatMap(subject -> Stream.of(
                        limit(subject, legal, Verdict.UNSAFE, new TreadSaid.NotOnTheRoad(mm(legal.value()))),
                        limit(subject, season, Verdict.SPENT, new TreadSaid.BelowMinimum(set, mm(season.value())))));
    }

    private static ReadingLimit limit(Subject subject, Limit limit, Verdict outside, Said sentence) {
        return ReadingLimit.atLeast(
                limit.value(), Measure.TREAD_DEPTH, subject, outside, sentence, limit.citation(), null);
    }

    private static Judgement judge(Case given, SetSpan span, SetForecast forecast) {
        var findings = new ArrayList<Finding>();
        var atFitting = span.role() == SetSpan.Role.GOING_ON ? atFitting(given, span) : null;
        boolean lies = span.role() == SetSpan.Role.COMING_OFF
                && !given.visit().leftOn().isEmpty();
        findings.add(ofSet(forecast, binding(given, span), given.limit(Limit.Kind.TREAD_LEGAL, span), lies, atFitting));
        findings.addAll(TreadPatternFindings.of(forecast));
        return Judgement.of(findings);
    }

    /** The deeper of the season's minimum and the legal one. */
    private static Limit binding(Case given, SetSpan span) {
        var legal = given.limit(Limit.Kind.TREAD_LEGAL, span);
        var season = given.limit(Limit.Kind.TREAD_SEASON, span);
        return season.value() > legal.value() ? season : legal;
    }

    /** The lowest depth read while wheels of the set are being fitted, against the depth that is wise then. */
    private static @Nullable Evidence atFitting(Case given, SetSpan span) {
        var fitted = span.set().wheels().stream()
                .map(Wheel::tag)
                .filter(tag -> !given.visit().arrivedOn().containsValue(tag))
                .toList();
        var lowest = given.readings().all(Measure.TREAD_DEPTH).stream()
                .filter(reading -> fitted.contains(reading.wheelTag()))
                .mapToDouble(Reading::value)
                .min();
        if (lowest.isEmpty()) {
            return null;
        }
        var wise = given.limit(Limit.Kind.TREAD_AT_FITTING, span);
        return new Evidence(
                Label.LOWEST_AT_FITTING,
                new TreadSaid.DepthAtFitting(
                        mm(lowest.getAsDouble()), mm(wise.value()), lowest.getAsDouble() < wise.value()),
                wise.citation());
    }

    /**
     * The finding on one set.
     *
     * @param limit the deeper of the season's minimum and the legal one
     * @param lies whether its wheels have come off: nobody drives on them, however worn they are
     */
    static Finding ofSet(SetForecast forecast, Limit limit, Limit legal, boolean lies, @Nullable Evidence atFitting) {
        var limitSource = limit.citation();
        var weakest = weakest(forecast);
        var groove = lowest(weakest);
        var verdict = verdict(forecast, groove, lies);
        double newDepthMm = weakest.wheel().tyre().newDepthOrUsualMm();
        double lifeLeft = Math.clamp((groove.depthMm() - forecast.limitMm()) / (newDepthMm - forecast.limitMm()), 0, 1);
        var evidence = new ArrayList<Evidence>();
        evidence.add(new Evidence(
                Label.LOWEST_GROOVE,
                new TreadSaid.GrooveAt(
                        weakest.corner(),
                        weakest.wheel().tag(),
                        groove.groove(),
                        groove.depthMm() > 0
                                ? new PlusMinus(groove.depthMm(), groove.depthSdMm(), "mm", 1)
                                : Label.WORN_OUT_BY_DISTANCE),
                Label.ALL_READINGS_OF_SET));
        evidence.add(new Evidence(
                Label.WEAR_THERE,
                new PlusMinus(groove.rateMmPer1000Km(), groove.rateSdMmPer1000Km(), "mm/1000 km", 2),
                new TreadSaid.CornerRateModel(groove.readings().size(), OwnShare.of(groove.ownShareOfRate()))));
        evidence.add(new Evidence(
                Label.DISTANCE,
                new PlusMinus(forecast.kmPerDay(), forecast.kmPerDaySd(), "km/day", 0),
                forecast.distanceBasis()));
        evidence.add(new Evidence(Label.WEAR_TO_START_FROM, forecast.wearStart(), forecast.wearBasis()));
        evidence.add(new Evidence(
                Label.SEASONS_MINIMUM,
                new TreadSaid.Minimum(minimum(forecast), mm(forecast.legalLimitMm()), !legal.isHouseRule()),
                limitSource));
        if (atFitting != null) {
            evidence.add(atFitting);
        }
        evidence.addAll(grown(forecast));
        boolean below = lowestMm(forecast, groove) < forecast.limitMm();
        if (!below) {
            evidence.add(new Evidence(
                    new TreadSaid.ChanceUntil(forecast.until()),
                    new Chance(forecast.probabilityHolds()),
                    new TreadSaid.Integrated(new Chance(forecast.confidence()))));
        }
        var finding = new Finding(
                new Subject(Subject.Part.WHEEL_SET, null, null, forecast.set().id()),
                verdict,
                below
                        ? below(forecast, groove, limit, legal)
                        : new TreadSaid.SetHolds(
                                forecast.set().season(),
                                forecast.role(),
                                depth(groove),
                                new Chance(forecast.probabilityHolds()),
                                forecast.until()),
                plainWords(forecast, verdict, groove, asked(forecast, limit, legal)),
                below ? null : forecast.horizon(),
                below ? null : (Double) forecast.probabilityHolds(),
                lifeLeft,
                evidence,
                limitSource);
        return verdict == Verdict.HOLDS ? finding : todo(finding, forecast);
    }

    /** The graver of the minima that it is below. */
    private static Said below(SetForecast forecast, GrooveForecast groove, Limit limit, Limit legal) {
        boolean forTheRoad = lowestMm(forecast, groove) < forecast.legalLimitMm();
        return new TreadSaid.SetBelow(
                forecast.set().season(),
                forecast.role(),
                depth(groove),
                mm(forTheRoad ? forecast.legalLimitMm() : forecast.limitMm()),
                !(forTheRoad ? legal : limit).isHouseRule());
    }

    private static double lowestMm(SetForecast forecast, GrooveForecast groove) {
        return Math.min(groove.depthMm(), forecast.lowestReadingMm());
    }

    /** What was measured last counts as it is: a model must not talk a reading below the limit away. */
    private static Verdict verdict(SetForecast forecast, GrooveForecast groove, boolean lies) {
        double lowestMm = lowestMm(forecast, groove);
        if (lowestMm < forecast.legalLimitMm()) {
            return lies ? Verdict.SPENT : Verdict.UNSAFE;
        }
        if (lowestMm < forecast.limitMm() || (forecast.wearWasSeen() && forecast.probabilityHolds() < 0.5)) {
            return Verdict.SPENT;
        }
        return forecast.probabilityHolds() < forecast.confidence() ? Verdict.RUNS_OUT : Verdict.HOLDS;
    }

    /** What only a usual wear speaks against is measured again: nobody orders tyres on a guess. */
    private static Finding todo(Finding finding, SetForecast forecast) {
        boolean runsOut = finding.verdict() == Verdict.RUNS_OUT;
        var action =
                !runsOut ? Todo.Action.REPLACE : forecast.wearWasSeen() ? Todo.Action.ORDER : Todo.Action.MEASURE_AGAIN;
        if (forecast.role() == SetSpan.Role.COMING_OFF && finding.verdict() != Verdict.UNSAFE) {
            return finding.todo(runsOut ? action : Todo.Action.ORDER, Todo.When.BEFORE_FITTING);
        }
        return finding.todo(action);
    }

    /** Law and our own rule told apart. */
    private static Said asked(SetForecast forecast, Limit limit, Limit legal) {
        return new TreadSaid.Asked(
                new Amount(forecast.legalLimitMm(), "mm", 1),
                !legal.isHouseRule(),
                forecast.limitMm() > forecast.legalLimitMm() ? minimum(forecast) : null,
                !limit.isHouseRule());
    }

    private static Said plainWords(SetForecast forecast, Verdict verdict, GrooveForecast groove, Said minimum) {
        var set = new SetOf(forecast.set().season());
        var depth = depth(groove);
        boolean goingOn = forecast.role() == SetSpan.Role.GOING_ON;
        return switch (verdict) {
            case UNSAFE -> new TreadSaid.BelowLegal(set, depth, minimum);
            case SPENT ->
                !goingOn
                        ? new TreadSaid.StoredWillNotLast(set, depth, minimum)
                        : lowestMm(forecast, groove) < forecast.limitMm() || forecast.horizon() == null
                                ? new TreadSaid.UsedUp(set, depth, minimum)
                                : new TreadSaid.WillNotLast(set, depth, minimum, forecast.horizon());
            case RUNS_OUT ->
                goingOn
                        ? new TreadSaid.MayNotLast(set, depth, minimum, forecast.wearWasSeen())
                        : new TreadSaid.StoredMayNotLast(set, depth, minimum, forecast.wearWasSeen());
            case HOLDS ->
                goingOn ? new TreadSaid.Lasts(set, depth, minimum) : new TreadSaid.StoredLasts(set, depth, minimum);
        };
    }

    private static Amount minimum(SetForecast forecast) {
        return mm(forecast.limitMm());
    }

    /** Grooves whose last reading is deeper than one before by more than the gauge may err. */
    private static List<Evidence> grown(SetForecast forecast) {
        var grown = new ArrayList<Evidence>();
        for (var tyre : forecast.tyres()) {
            for (var groove : tyre.grooves()) {
                var least = groove.readings().stream().min(Comparator.comparingDouble(DepthReading::depthMm));
                if (least.isEmpty()) {
                    continue;
                }
                var last = groove.readings().getLast();
                if (last.depthMm() > least.get().depthMm() + StoredWheelCheck.GAUGE_ERROR_MM) {
                    grown.add(new Evidence(
                            Label.CONTRADICTS_WEAR,
                            new TreadSaid.Grown(
                                    tyre.corner(),
                                    tyre.wheel().tag(),
                                    groove.groove(),
                                    mm(last.depthMm()),
                                    last.date(),
                                    mm(least.get().depthMm()),
                                    least.get().date()),
                            Label.READ_AGAIN));
                }
            }
        }
        return grown;
    }

    private static Amount mm(double depthMm) {
        return new Amount(depthMm, "mm", 1);
    }

    private static Said depth(GrooveForecast groove) {
        return groove.depthMm() > 0 ? mm(groove.depthMm()) : Label.WORN_OUT;
    }

    static GrooveForecast lowest(TyreForecast tyre) {
        return tyre.grooves().stream()
                .min(Comparator.comparingDouble(GrooveForecast::depthMm))
                .orElseThrow();
    }

    private static TyreForecast weakest(SetForecast forecast) {
        return forecast.tyres().stream()
                .min(Comparator.comparingDouble(tyre -> lowest(tyre).depthMm()))
                .orElseThrow();
    }
}
