package cornerbook.app.bench.filled;

import cornerbook.app.limits.LimitsFile;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.LimitTable;
import cornerbook.core.finding.RunHistory;
import cornerbook.core.tread.WearPosterior;
import cornerbook.core.tread.judge.TreadForecaster;
import cornerbook.core.wheelplan.AllWheelLimit;
import cornerbook.core.why.Step;
import cornerbook.words.UnitSystem;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** The pairs that a car stands on, with what the forecast of their tread says of their wear, for the question of two or four. */
final class PairsOfCar {
    private static final double HALF_A_YEAR_DAYS = 365.25 / 2;
    private static final LimitTable LIMITS = new LimitTable(LimitsFile.load());

    private final CarHistory history;
    private final UnitSystem system;
    private final Map<String, List<String>> values = new LinkedHashMap<>();

    private PairsOfCar(CarHistory history, UnitSystem system) {
        this.history = history;
        this.system = system;
    }

    static Map<String, List<String>> of(CarHistory history, UnitSystem system) {
        var pairs = new PairsOfCar(history, system);
        pairs.rules();
        history.visits().reversed().stream()
                .filter(visit -> !standing(visit).isEmpty())
                .findFirst()
                .ifPresent(pairs::tyres);
        return pairs.values;
    }

    private static Map<Corner, String> standing(Visit visit) {
        return visit.leftOn().isEmpty() ? visit.arrivedOn() : visit.leftOn();
    }

    private void rules() {
        var vehicle = history.vehicle();
        var differences = vehicle.details().differences();
        var limit = differences.allWheel();
        if (limit != null) {
            put(
                    limit.kind() == AllWheelLimit.Kind.ROLLING_CIRCUMFERENCE ? "circumference-limit" : "tread-limit",
                    system.field(limit.valueMm(), "mm"));
        }
        if (Boolean.TRUE.equals(differences.deeperPairAtRear())) {
            put("deeper-at-rear", "yes");
        }
        if (!vehicle.front().tyreSize().equals(vehicle.rear().tyreSize())) {
            put("staggered", "yes");
        }
    }

    private void tyres(Visit visit) {
        var wheels = standing(visit);
        for (var axle : Axle.values()) {
            leastMm(axle, wheels).ifPresent(depthMm -> put(word(axle) + "-depth", system.field(depthMm, "mm")));
        }
        var set = wheels.values().stream()
                .findFirst()
                .flatMap(history::findSetOf)
                .filter(each -> each.wheels().stream().allMatch(wheel -> wheels.containsValue(wheel.tag())));
        set.ifPresent(each -> {
            put("end-tread", system.field(minimumMm(each, visit), "mm"));
            wear(each, visit);
        });
    }

    private double minimumMm(WheelSet set, Visit visit) {
        return LIMITS.get(
                        history.vehicle().jurisdiction(),
                        Limit.Kind.TREAD_SEASON,
                        set.season(),
                        visit.date(),
                        visit.date().plusDays(Math.round(HALF_A_YEAR_DAYS)))
                .value();
    }

    private void wear(WheelSet set, Visit visit) {
        var runs = new RunHistory(history, history.visits(), Knowledge.NONE);
        var forecaster = new TreadForecaster(history, history.visits(), visit, runs, Knowledge.NONE);
        if (!forecaster.isKnown(set)) {
            return;
        }
        var posterior = forecaster.posterior(set);
        for (var axle : Axle.values()) {
            put(word(axle) + "-wear", Step.digits(Math.round(1000 * fastest(posterior, axle)) / 1000.0));
        }
        double seasonKm = runs.next(set.season()).meanKm() * HALF_A_YEAR_DAYS;
        put("season-distance", system.field(100 * Math.rint(seasonKm / 100), "km"));
    }

    private Optional<Double> leastMm(Axle axle, Map<Corner, String> wheels) {
        return wheels.entrySet().stream()
                .filter(at -> at.getKey().axle() == axle)
                .flatMap(at -> history.findWheel(at.getValue()).stream())
                .flatMap(wheel -> TyresOfCar.leastMm(history, wheel).stream())
                .min(Comparator.naturalOrder());
    }

    /** Of the groove of the axle that wears fastest, which ends its pair. */
    private static double fastest(WearPosterior posterior, Axle axle) {
        return Arrays.stream(Corner.values())
                .filter(corner -> corner.axle() == axle)
                .flatMapToDouble(corner -> Arrays.stream(Spot.values())
                        .flatMapToDouble(spot ->
                                DoubleStream.of(posterior.rate(spot, corner).mean())))
                .max()
                .orElseThrow();
    }

    private void put(String name, String text) {
        values.put(name, List.of(text));
    }

    private static String word(Axle axle) {
        return axle.name().toLowerCase(Locale.ROOT);
    }
}
