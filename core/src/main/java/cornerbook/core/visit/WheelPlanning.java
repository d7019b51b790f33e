package cornerbook.core.visit;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.wheelplan.WheelPlan;
import cornerbook.core.wheelplan.WheelPlanner;
import cornerbook.core.wheelplan.WheelState;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Brings one wheel set of a car to the wheel planner: depths now, wear rates, sizes, and where each wheel ran last. */
final class WheelPlanning {
    private final Vehicle vehicle;
    private final LimitTable limits;
    private final TreadForecaster forecaster;
    private final RunHistory runs;
    private final List<Visit> visits;
    private final Visit visit;

    WheelPlanning(
            Vehicle vehicle,
            LimitTable limits,
            TreadForecaster forecaster,
            RunHistory runs,
            List<Visit> visits,
            Visit visit) {
        this.vehicle = vehicle;
        this.limits = limits;
        this.forecaster = forecaster;
        this.runs = runs;
        this.visits = visits;
        this.visit = visit;
    }

    /** The plan of a set; empty when it has not four wheels, or its tread was never measured. */
    Optional<WheelPlan> plan(WheelSet set) {
        if (set.wheels().size() != Corner.values().length || !forecaster.wasRead(set)) {
            return Optional.empty();
        }
        var posterior = forecaster.posterior(set);
        var rates = new EnumMap<Corner, List<Double>>(Corner.class);
        for (var corner : Corner.values()) {
            rates.put(
                    corner,
                    List.of(Spot.values()).stream()
                            .map(spot -> posterior.rate(spot, corner).mean())
                            .toList());
        }
        var wheels = new ArrayList<WheelState>();
        for (int i = 0; i < set.wheels().size(); i++) {
            var wheel = set.wheels().get(i);
            int tyre = i;
            var run = runs.run(visit, wheel.tag());
            var depths = List.of(Spot.values()).stream()
                    .map(spot -> posterior.depth(spot, tyre, run).mean())
                    .toList();
            wheels.add(new WheelState(
                    wheel.tag(), wheel.tyre().size(), wheel.tyre().directional(), depths, lastCorner(wheel.tag())));
        }
        return WheelPlanner.plan(wheels, rates, sizes(wheels), limitMm(set));
    }

    private double limitMm(WheelSet set) {
        return Math.max(
                limits.get(vehicle.jurisdiction(), Limit.Kind.TREAD_LEGAL, set.season())
                        .value(),
                limits.get(vehicle.jurisdiction(), Limit.Kind.TREAD_SEASON, set.season())
                        .value());
    }

    /** A set may have another size than the placard's; what counts is which of its sizes runs on which axle. */
    private Map<Axle, String> sizes(List<WheelState> wheels) {
        var sizes = new EnumMap<Axle, String>(Axle.class);
        for (var axle : Axle.values()) {
            wheels.stream()
                    .filter(wheel -> {
                        var corner = wheel.lastCorner() != null ? wheel.lastCorner() : leftOnCorner(wheel.tag());
                        return corner != null && corner.axle() == axle;
                    })
                    .findFirst()
                    .ifPresent(wheel -> sizes.put(axle, wheel.tyreSize()));
        }
        return sizes;
    }

    private @Nullable Corner lastCorner(String tag) {
        var ran = runs.lastCorner(tag);
        if (ran != null) {
            return ran;
        }
        return visits.stream()
                .filter(earlier -> !earlier.id().equals(visit.id()))
                .flatMap(earlier -> earlier.leftOn().entrySet().stream())
                .filter(entry -> entry.getValue().equals(tag))
                .map(Map.Entry::getKey)
                .reduce((first, last) -> last)
                .orElse(null);
    }

    private @Nullable Corner leftOnCorner(String tag) {
        return visit.leftOn().entrySet().stream()
                .filter(entry -> entry.getValue().equals(tag))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(null);
    }
}
