package cornerbook.core.assess;

import cornerbook.core.say.Said;

import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.LimitTable;
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
    private final Vehicle vehicle;
    private final Visit visit;
    private final LimitTable limits;
    private final TreadForecaster forecaster;
    private final StandingReadings readings;
    private final List<Finding> findings = new ArrayList<>();
    private final List<SetForecast> forecasts = new ArrayList<>();
    private final List<Said> notJudged = new ArrayList<>();

    SetJudge(Vehicle vehicle, Visit visit, LimitTable limits, TreadForecaster forecaster, StandingReadings readings) {
        this.vehicle = vehicle;
        this.visit = visit;
        this.limits = limits;
        this.forecaster = forecaster;
        this.readings = readings;
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
    void judge(WheelSet set, SetForecast.Role role, Map<Corner, String> wheelAt, LocalDate from, LocalDate until) {
        if (forecaster.wasRead(set)) {
            judgeTread(set, role, wheelAt, from, until);
        } else {
            notJudged.add(Said.verbatim("%s set: its tread was never measured".formatted(TreadFindings.seasonWord(set))));
        }
        findings.addAll(TyreAgeFindings.of(
                set,
                visit.date(),
                until,
                limits.get(vehicle.jurisdiction(), Limit.Kind.TYRE_AGE_INSPECT, set.season(), from, until),
                limits.get(vehicle.jurisdiction(), Limit.Kind.TYRE_AGE_REPLACE, set.season(), from, until),
                notJudged));
        findings.addAll(TyreLoadFindings.of(set, vehicle, wheelAt, notJudged));
        findings.addAll(TyrePlacardFindings.of(set, vehicle, wheelAt, notJudged));
    }

    private void judgeTread(
            WheelSet set, SetForecast.Role role, Map<Corner, String> wheelAt, LocalDate from, LocalDate until) {
        var legal = limits.get(vehicle.jurisdiction(), Limit.Kind.TREAD_LEGAL, set.season(), from, until);
        var season = limits.get(vehicle.jurisdiction(), Limit.Kind.TREAD_SEASON, set.season(), from, until);
        var binding = season.value() > legal.value() ? season : legal;
        var forecast = forecaster.forecast(set, role, wheelAt, from, until, binding.value(), legal.value());
        forecasts.add(forecast);
        findings.add(TreadFindings.ofSet(
                forecast, Said.verbatim(binding.citation()), role == SetForecast.Role.GOING_ON ? atFitting(set, from, until) : null));
        findings.addAll(TreadPatternFindings.of(forecast));
    }

    /** The lowest depth read while wheels of the set are being fitted, against the depth that is wise then. */
    private @Nullable Evidence atFitting(WheelSet set, LocalDate from, LocalDate until) {
        var fitted = set.wheels().stream()
                .map(Wheel::tag)
                .filter(tag -> !visit.arrivedOn().containsValue(tag))
                .toList();
        var lowest = readings.all(Measure.TREAD_DEPTH).stream()
                .filter(reading -> fitted.contains(reading.wheelTag()))
                .mapToDouble(Reading::value)
                .min();
        if (lowest.isEmpty()) {
            return null;
        }
        var wise = limits.get(vehicle.jurisdiction(), Limit.Kind.TREAD_AT_FITTING, set.season(), from, until);
        return new Evidence(
                "lowest reading at fitting",
                lowest.getAsDouble() < wise.value()
                        ? "%.1f mm, below the %.1f mm recommended at fitting"
                                .formatted(lowest.getAsDouble(), wise.value())
                        : "%.1f mm, recommended at fitting %.1f mm".formatted(lowest.getAsDouble(), wise.value()),
                wise.citation());
    }
}
