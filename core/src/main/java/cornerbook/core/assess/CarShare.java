package cornerbook.core.assess;

import cornerbook.core.brake.seizing.PadHistory;
import cornerbook.core.brake.seizing.judge.SeizingCurve;
import cornerbook.core.car.CarHistory;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.RunHistory;
import cornerbook.core.tread.WearHistory;
import cornerbook.core.tread.judge.TreadForecaster;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A car's share in what is learned: all that the learner asks of its history. It changes with this car alone, so that whoever
 * keeps the shares of many cars learns anew without their histories.
 *
 * @param wear of each of its sets of which anything was read
 * @param pads from one service of a pad's guides on
 * @param kmPerDay average of each season by its kind, in km per day
 */
public record CarShare(List<WearHistory> wear, List<PadHistory> pads, Map<SeasonKind, List<Double>> kmPerDay) {
    /** Of a car that says nothing of others. */
    private static final CarShare NONE = new CarShare(List.of(), List.of(), Map.of());

    public CarShare {
        wear = List.copyOf(wear);
        pads = List.copyOf(pads);
        var copy = new EnumMap<SeasonKind, List<Double>>(SeasonKind.class);
        kmPerDay.forEach((season, averages) -> copy.put(season, List.copyOf(averages)));
        kmPerDay = Map.copyOf(copy);
    }

    /** Whether it says nothing of others. */
    public boolean isEmpty() {
        return equals(NONE);
    }

    public static CarShare of(CarHistory car) {
        // What wears a car whose driven axle nobody has told says nothing of another's.
        if (car.visits().isEmpty() || car.vehicle().drive() == null) {
            return NONE;
        }
        var runs = new RunHistory(car, car.visits(), Knowledge.NONE);
        var forecaster = new TreadForecaster(car, car.visits(), car.visits().getLast(), runs, Knowledge.NONE);
        var kmPerDay = new EnumMap<SeasonKind, List<Double>>(SeasonKind.class);
        for (var season : SeasonKind.values()) {
            var averages = runs.seasonsOfKind(season);
            if (!averages.isEmpty()) {
                kmPerDay.put(season, averages);
            }
        }
        return new CarShare(
                car.sets().stream()
                        .flatMap(set -> forecaster.wearByDriver(set).stream())
                        .filter(history -> !history.readings().isEmpty())
                        .toList(),
                SeizingCurve.histories(
                        car.vehicle(),
                        car.visits(),
                        runs.next(SeasonKind.ALL_SEASON).meanKm()),
                kmPerDay);
    }
}
