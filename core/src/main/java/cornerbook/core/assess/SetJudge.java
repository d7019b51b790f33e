package cornerbook.core.assess;

import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SetOf;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Limit;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.season.ChangeOver;
import cornerbook.core.tread.judge.SetForecast;
import cornerbook.core.tread.judge.TreadFindings;
import cornerbook.core.tread.judge.TreadForecaster;
import cornerbook.core.tread.judge.TreadPatternFindings;
import cornerbook.core.tyre.judge.TyreAgeFindings;
import cornerbook.core.tyre.judge.TyreLoadFindings;
import cornerbook.core.tyre.judge.TyrePlacardFindings;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Judges wheel sets over the time that each has to last: tread, age and load capacity of their tyres. */
final class SetJudge {
    private final Case given;
    private final TreadForecaster forecaster;
    private final List<Finding> findings = new ArrayList<>();
    private final List<SetForecast> forecasts = new ArrayList<>();
    private final List<Said> notJudged = new ArrayList<>();

    private SetJudge(Case given, TreadForecaster forecaster) {
        this.given = given;
        this.forecaster = forecaster;
    }

    /** The set that goes on until the next visit, then the one that comes off over its next season. */
    static SetJudge of(Case given, TreadForecaster forecaster) {
        var judge = new SetJudge(given, forecaster);
        var next = given.nextVisit();
        given.goingOn()
                .ifPresent(set -> judge.judge(
                        set,
                        SetForecast.Role.GOING_ON,
                        given.positions(set),
                        given.visit().date(),
                        next));
        given.comingOff()
                .ifPresent(set -> judge.judge(
                        set,
                        SetForecast.Role.COMING_OFF,
                        given.visit().arrivedOn(),
                        next,
                        ChangeOver.after(next, set.season())));
        return judge;
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }

    /** In the order in which the sets were judged; a set whose tread was never read has none. */
    List<SetForecast> forecasts() {
        return List.copyOf(forecasts);
    }

    List<Said> notJudged() {
        return List.copyOf(notJudged);
    }

    /**
     * Judges one set.
     *
     * @param from first day of the time that it has to last
     * @param until last day of that time
     */
    private void judge(
            WheelSet set, SetForecast.Role role, Map<Corner, String> wheelAt, LocalDate from, LocalDate until) {
        if (forecaster.wasRead(set)) {
            judgeTread(set, role, wheelAt, from, until);
        } else {
            notJudged.add(new AssessSaid.TreadNeverMeasured(new SetOf(set.season())));
        }
        findings.addAll(TyreAgeFindings.of(
                set,
                given.visit().date(),
                until,
                given.limit(Limit.Kind.TYRE_AGE_INSPECT, set.season(), from, until),
                given.limit(Limit.Kind.TYRE_AGE_REPLACE, set.season(), from, until),
                notJudged));
        findings.addAll(TyreLoadFindings.of(set, given.vehicle(), wheelAt, notJudged));
        findings.addAll(TyrePlacardFindings.of(set, given.vehicle(), wheelAt, notJudged));
    }

    private void judgeTread(
            WheelSet set, SetForecast.Role role, Map<Corner, String> wheelAt, LocalDate from, LocalDate until) {
        var legal = given.limit(Limit.Kind.TREAD_LEGAL, set.season(), from, until);
        var season = given.limit(Limit.Kind.TREAD_SEASON, set.season(), from, until);
        var binding = season.value() > legal.value() ? season : legal;
        var forecast = forecaster.forecast(set, role, wheelAt, from, until, binding.value(), legal.value());
        forecasts.add(forecast);
        findings.add(TreadFindings.ofSet(
                forecast,
                Said.verbatim(binding.citation()),
                role == SetForecast.Role.GOING_ON ? atFitting(set, from, until) : null));
        findings.addAll(TreadPatternFindings.of(forecast));
    }

    /** The lowest depth read while wheels of the set are being fitted, against the depth that is wise then. */
    private @Nullable Evidence atFitting(WheelSet set, LocalDate from, LocalDate until) {
        var fitted = set.wheels().stream()
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
        var wise = given.limit(Limit.Kind.TREAD_AT_FITTING, set.season(), from, until);
        return new Evidence(
                new AssessSaid.LowestAtFitting(),
                new AssessSaid.DepthAtFitting(
                        new Amount(lowest.getAsDouble(), "mm", 1),
                        new Amount(wise.value(), "mm", 1),
                        lowest.getAsDouble() < wise.value()),
                Said.verbatim(wise.citation()));
    }
}
