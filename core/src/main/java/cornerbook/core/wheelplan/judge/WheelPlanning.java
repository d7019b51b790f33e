package cornerbook.core.wheelplan.judge;

import cornerbook.core.car.Measure;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.RunHistory;
import cornerbook.core.season.SetSeasons;
import cornerbook.core.tread.PosteriorDraws;
import cornerbook.core.tread.WearPosterior;
import cornerbook.core.tread.judge.TreadForecaster;
import cornerbook.core.wheelplan.PlanRequest;
import cornerbook.core.wheelplan.RotationPattern;
import cornerbook.core.wheelplan.Rule;
import cornerbook.core.wheelplan.WearScenario;
import cornerbook.core.wheelplan.WheelState;
import cornerbook.core.wheelplan.search.RulesLeftOut;
import cornerbook.core.wheelplan.search.WheelPlanner;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Brings one wheel set of a car to the wheel planner: depths now, wear rates, sizes, and where each wheel ran last. */
public final class WheelPlanning {
    /** Seasons of one set that are planned ahead. */
    private static final double RATE_STEPS = 1e6;

    private static final int SEASONS = 4;
    private static final int CORNERS = Corner.values().length;
    /** Enough for the ends of a 90 % interval to a few percent of its width. */
    private static final int SCENARIOS = 200;

    private static final long SEED = 1;
    /** A car that stands still still gets a plan. */
    private static final double LEAST_KM_PER_DAY = 0.1;

    private final Case given;
    private final TreadForecaster forecaster;
    private final Vehicle vehicle;
    private final RunHistory runs;
    private final Visit visit;

    public WheelPlanning(Case given, TreadForecaster forecaster) {
        this.given = given;
        this.forecaster = forecaster;
        vehicle = given.vehicle();
        runs = given.runs();
        visit = given.visit();
    }

    /**
     * The plan of a set, with the full-size spare that belongs to it where its depth is known; empty when it has not four wheels,
     * wheels for another season stand among them, its tread was never measured, or sides and sizes leave no assignment. Rules on depth that no assignment keeps are left out, and the plan says so.
     *
     * @param from the day that it goes on
     * @param without rules that somebody asked to leave out
     */
    public Optional<SetPlan> plan(WheelSet set, LocalDate from, Set<Rule> without) {
        if (set.wheels().stream().anyMatch(wheel -> isForAnotherSeason(wheel, set))) {
            return Optional.empty();
        }
        return find(withSpare(set), from).flatMap(needs -> {
            var rules = needs.request.rules();
            for (var rule : without) {
                rules = rules.without(rule);
            }
            var asked = needs.request.withRules(rules);
            return RulesLeftOut.of(asked, needs.rules.ofTheHouse())
                    .flatMap(possible -> plan(needs, asked, possible, without));
        });
    }

    /**
     * The wheels of the set with its full-size spare last; four where there is none. A temporary spare takes part in nothing, nor does
     * a wheel that ran and lies apart unread, for it may have been replaced.
     */
    private WheelSet withSpare(WheelSet set) {
        var listed = given.history().sets().stream()
                .filter(each -> each.id().equals(set.id()))
                .flatMap(each -> each.wheels().stream())
                .filter(wheel -> !wheel.tyre().isTemporarySpare())
                .toList();
        var own = set.wheels().stream()
                .filter(wheel -> !wheel.tyre().isTemporarySpare())
                .toList();
        if (!listed.containsAll(own) || listed.size() < CORNERS || listed.size() > CORNERS + 1) {
            return set;
        }
        var four = own.size() == CORNERS ? own : listed.size() == CORNERS ? listed : lastOnCar(listed);
        var spare = listed.stream().filter(wheel -> !four.contains(wheel)).findFirst();
        if (spare.filter(this::mayRun).isPresent()) {
            var onCar = lastOnCar(listed);
            var wheels = new ArrayList<>(onCar);
            listed.stream().filter(wheel -> !onCar.contains(wheel)).forEach(wheels::add);
            var whole = new WheelSet(set.id(), set.season(), set.storePlace(), wheels);
            if (forecaster.isKnown(whole)) {
                return whole;
            }
        }
        return new WheelSet(set.id(), set.season(), set.storePlace(), four);
    }

    /** It never ran, or its tread was read at this visit. */
    private boolean mayRun(Wheel apart) {
        return given.readings().ofWheel(Measure.TREAD_DEPTH, apart.tag()).isPresent()
                || given.visits().stream()
                        .noneMatch(each -> each.arrivedOn().containsValue(apart.tag())
                                || each.leftOn().containsValue(apart.tag()));
    }

    /** The four that stood on the car before this visit, or when wheels of the set last did; the first four while they never did. */
    private List<Wheel> lastOnCar(List<Wheel> all) {
        var before = given.visits().reversed().stream()
                .filter(earlier -> !earlier.id().equals(visit.id()))
                .flatMap(earlier -> Stream.of(earlier.leftOn(), earlier.arrivedOn()));
        return Stream.of(Stream.of(visit.arrivedOn()), before, Stream.of(visit.leftOn()))
                .flatMap(Function.identity())
                .map(wheelAt -> all.stream()
                        .filter(wheel -> wheelAt.containsValue(wheel.tag()))
                        .toList())
                .filter(standing -> standing.size() == CORNERS)
                .findFirst()
                .orElseGet(() -> all.subList(0, CORNERS));
    }

    private boolean isForAnotherSeason(Wheel wheel, WheelSet set) {
        return given.history()
                .findSetOf(wheel.tag())
                .filter(its -> its.season() != set.season())
                .isPresent();
    }

    private Optional<SetPlan> plan(Needs needs, PlanRequest asked, RulesLeftOut possible, Set<Rule> without) {
        var wheels = asked.wheels();
        boolean directional = wheels.stream().anyMatch(WheelState::directional);
        boolean staggered = Set.copyOf(asked.sizeAt().values()).size() > 1;
        return WheelPlanner.plan(
                        possible.request(),
                        RotationPattern.customary(vehicle.wearsAs(), directional, staggered),
                        scenarios(needs.set, needs.posterior))
                .map(possible::toldIn)
                .map(plan -> new SetPlan(
                        needs.set,
                        plan,
                        asked,
                        RulesOfPlan.of(vehicle, needs.request, needs.rules, possible.leftOut(), without),
                        needs.seasons,
                        runs.distanceBasis(needs.set.season())));
    }

    /**
     * What a plan is made from.
     *
     * @param request with all rules
     */
    public record Needs(
            WheelSet set, PlanRequest request, DepthRules rules, SetSeasons seasons, WearPosterior posterior) {}

    /**
     * What a plan of the set is made from, the spare last where it has five wheels; empty when it has not as many or the depth of one is
     * not known.
     */
    public Optional<Needs> find(WheelSet set, LocalDate from) {
        int wheelsOfSet = set.wheels().size();
        if (wheelsOfSet < CORNERS || wheelsOfSet > CORNERS + 1 || !forecaster.isKnown(set)) {
            return Optional.empty();
        }
        var posterior = forecaster.posterior(set);
        var rates = new EnumMap<Corner, List<Double>>(Corner.class);
        for (var corner : Corner.values()) {
            rates.put(
                    corner,
                    List.of(Spot.values()).stream()
                            .map(spot ->
                                    toMicrometre(posterior.rate(spot, corner).mean()))
                            .toList());
        }
        var wheels = new ArrayList<WheelState>();
        for (int i = 0; i < set.wheels().size(); i++) {
            var wheel = set.wheels().get(i);
            int tyre = i;
            var run = runs.run(visit, wheel.tag());
            var depths = List.of(Spot.values()).stream()
                    .map(spot -> posterior.depth(spot, tyre, run).left().mean())
                    .toList();
            wheels.add(new WheelState(
                    wheel.tag(),
                    wheel.tyre().size(),
                    wheel.tyre().mayBeDirectional(),
                    depths,
                    lastCorner(wheel.tag())));
        }
        var sizes = sizes(wheels);
        var seasons = new SetSeasons(
                set.season(),
                from,
                Math.max(LEAST_KM_PER_DAY, runs.next(set.season()).meanKm()),
                given.changeOver());
        var seasonsThousandKm = seasons.first(SEASONS).stream()
                .map(season -> season.distanceKm() / 1000)
                .toList();
        var rules = DepthRules.of(vehicle, given.limits(), set.season());
        var request = new PlanRequest(wheels, rates, sizes, limitMm(set), seasonsThousandKm, rules.planRules());
        return Optional.of(new Needs(set, request, rules, seasons, posterior));
    }

    /**
     * To a micrometre in a million km: corners of which nothing tells that they wear otherwise have the same rate, and the
     * search takes them for one.
     */
    private static double toMicrometre(double rateMmPer1000Km) {
        return Math.max(1, Math.rint(rateMmPer1000Km * RATE_STEPS)) / RATE_STEPS;
    }

    /** Draws from what is known; the same set gives the same draws. */
    private List<WearScenario> scenarios(WheelSet set, WearPosterior posterior) {
        var random = new SplittableRandom(SEED);
        var draws = new PosteriorDraws(posterior);
        var scenarios = new ArrayList<WearScenario>();
        for (int n = 0; n < SCENARIOS; n++) {
            var draw = draws.next(random);
            var depths = new ArrayList<List<Double>>();
            for (int i = 0; i < set.wheels().size(); i++) {
                int tyre = i;
                var run = runs.run(visit, set.wheels().get(i).tag());
                depths.add(List.of(Spot.values()).stream()
                        .map(spot -> draw.depthMm(spot, tyre, run))
                        .toList());
            }
            var rates = new EnumMap<Corner, List<Double>>(Corner.class);
            for (var corner : Corner.values()) {
                rates.put(
                        corner,
                        List.of(Spot.values()).stream()
                                .map(spot -> draw.rateMmPer1000Km(spot, corner))
                                .toList());
            }
            scenarios.add(new WearScenario(depths, rates));
        }
        return scenarios;
    }

    private double limitMm(WheelSet set) {
        return Stream.of(Limit.Kind.TREAD_LEGAL, Limit.Kind.TREAD_SEASON)
                .mapToDouble(kind -> given.limits()
                        .get(vehicle.jurisdiction(), kind, set.season())
                        .value())
                .max()
                .orElseThrow();
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
        return given.visits().stream()
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
