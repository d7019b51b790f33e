package cornerbook.core.assess;

import cornerbook.core.air.judge.PressureFindings;
import cornerbook.core.air.judge.PressureOutlook;
import cornerbook.core.air.judge.SensorFindings;
import cornerbook.core.air.judge.SensorPressureFindings;
import cornerbook.core.battery.judge.BatteryCurve;
import cornerbook.core.battery.judge.BatteryFindings;
import cornerbook.core.brake.caliper.ParkingBrakeFindings;
import cornerbook.core.brake.fluid.judge.BrakeFluidFindings;
import cornerbook.core.brake.judge.BrakeReadingRules;
import cornerbook.core.brake.judge.OpenBrakeWork;
import cornerbook.core.brake.judge.ThicknessPrediction;
import cornerbook.core.brake.seizing.judge.PadClock;
import cornerbook.core.brake.seizing.judge.SeizingCurve;
import cornerbook.core.brake.seizing.judge.SeizingFindings;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.LimitTable;
import cornerbook.core.finding.RunHistory;
import cornerbook.core.lift.judge.LiftFindings;
import cornerbook.core.season.ChangeOver;
import cornerbook.core.season.Climate;
import cornerbook.core.tool.judge.ToolFindings;
import cornerbook.core.torque.judge.Retorque;
import cornerbook.core.torque.judge.TorqueFindings;
import cornerbook.core.tread.judge.SetForecast;
import cornerbook.core.tread.judge.TreadForecaster;
import cornerbook.core.tread.judge.TreadPrediction;
import cornerbook.core.tyre.judge.WheelFitFindings;
import cornerbook.core.wheelplan.Rule;
import cornerbook.core.wheelplan.WheelPlan;
import cornerbook.core.wheelplan.judge.DifferenceFindings;
import cornerbook.core.wheelplan.judge.SetPlan;
import cornerbook.core.wheelplan.judge.WheelPlanning;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Turns a car with its visits into findings. Stateless: the same history, limits and visit give the same findings. */
public final class Assessor {
    private final LimitTable limits;
    private final Knowledge knowledge;
    private final @Nullable Climate climate;

    /**
     * An assessor by these limits.
     *
     * @param limits rows of the limits file; a row with jurisdiction "*" must stand for each kind that is judged
     */
    public Assessor(List<Limit> limits) {
        this(new LimitTable(limits), Knowledge.NONE, null);
    }

    private Assessor(LimitTable limits, Knowledge knowledge, @Nullable Climate climate) {
        this.limits = limits;
        this.knowledge = knowledge;
        this.climate = climate;
    }

    /** The same with what the book has learned from all its cars. */
    public Assessor with(Knowledge learned) {
        return new Assessor(limits, learned, climate);
    }

    /** The same with the climate of the place; null when it is not known, and a usual cold morning serves. */
    public Assessor in(@Nullable Climate place) {
        return new Assessor(limits, knowledge, place);
    }

    /** Readings of a visit that the wear model, from all visits before, finds incredible: to be read again. */
    public List<TreadPrediction> doubted(CarHistory history, String visitId) {
        return predictions(history, visitId).stream()
                .filter(TreadPrediction::incredible)
                .toList();
    }

    /** What the wear model, from all visits before, expects of the tread readings of a visit. */
    public List<TreadPrediction> predictions(CarHistory history, String visitId) {
        return TreadPrediction.of(history, visitId, knowledge);
    }

    /** What the brake wear model, from all visits before, expects of the pads and discs of a visit. */
    public List<ThicknessPrediction> thicknessPredictions(CarHistory history, String visitId) {
        return ThicknessPrediction.of(history, visitId);
    }

    /** The set that the car leaves on: as recorded, and until then the season's set, or the one that it came on. */
    public Optional<WheelSet> goingOn(CarHistory history, String visitId) {
        var visit = history.getVisit(visitId);
        return findSet(history, visit.leftOn())
                .or(() -> seasonsSet(history, visit))
                .or(() -> findSet(history, visit.arrivedOn()));
    }

    /**
     * The wheel plan of the set going on, as {@link #assess} has it, without judging anything else. Empty when the set
     * has not four wheels, its tread was never measured, or sides and sizes leave no assignment.
     */
    public Optional<SetPlan> plan(CarHistory history, String visitId) {
        return planWithout(history, visitId, Set.of());
    }

    /** The same without some of its rules. */
    public Optional<SetPlan> planWithout(CarHistory history, String visitId, Set<Rule> without) {
        var visit = history.getVisit(visitId);
        return goingOn(history, visitId).flatMap(set -> planning(history, visit).plan(set, visit.date(), without));
    }

    /** The wheel plan of the set that comes off at a visit, from the day that it goes on again; empty as above. */
    public Optional<SetPlan> planStored(CarHistory history, String visitId) {
        var visit = history.getVisit(visitId);
        var goingOn = goingOn(history, visitId);
        var season = goingOn.map(WheelSet::season).orElse(SeasonKind.ALL_SEASON);
        return findSet(history, visit.arrivedOn())
                .filter(set -> goingOn.filter(set::equals).isEmpty())
                .flatMap(set -> planning(history, visit).plan(set, nextVisit(visit, season), Set.of()));
    }

    private WheelPlanning planning(CarHistory history, Visit visit) {
        var visits = history.visits().subList(0, history.visits().indexOf(visit) + 1);
        var runs = new RunHistory(history, visits, knowledge);
        var forecaster = new TreadForecaster(history, visits, visit, runs, knowledge);
        return new WheelPlanning(history.vehicle(), limits, forecaster, runs, visits, visit);
    }

    /**
     * Assesses one visit with what was known on its day: later visits do not count.
     *
     * @throws java.util.NoSuchElementException when the history has no such visit, or the limits lack a kind
     */
    public Assessment assess(CarHistory history, String visitId) {
        var visit = history.getVisit(visitId);
        var visits = history.visits().subList(0, history.visits().indexOf(visit) + 1);
        var vehicle = history.vehicle();
        var runs = new RunHistory(history, visits, knowledge);
        var readings = new StandingReadings(visit);
        var notJudged = new ArrayList<>(runs.doubts());
        var findings = new ArrayList<Finding>();
        var goingOn = goingOn(history, visitId);
        var comingOff = findSet(history, visit.arrivedOn())
                .filter(set -> goingOn.filter(set::equals).isEmpty());
        var nextVisit = nextVisit(visit, goingOn.map(WheelSet::season).orElse(SeasonKind.ALL_SEASON));
        var forecaster = new TreadForecaster(history, visits, visit, runs, knowledge);
        var judge = new SetJudge(vehicle, visit, limits, forecaster, readings);
        @Nullable WheelPlan plan = null;
        if (goingOn.isPresent()) {
            var wheelAt = positions(goingOn.get(), visits);
            judge.judge(goingOn.get(), SetForecast.Role.GOING_ON, wheelAt, visit.date(), nextVisit);
            var planning = new WheelPlanning(vehicle, limits, forecaster, runs, visits, visit);
            plan = planning.plan(goingOn.get(), visit.date(), Set.of())
                    .map(SetPlan::plan)
                    .orElse(null);
            standing(goingOn.get(), visit)
                    .flatMap(standing -> planning.find(goingOn.get(), visit.date())
                            .map(needs -> DifferenceFindings.of(needs, standing, visit.date(), nextVisit)))
                    .ifPresent(findings::addAll);
        }
        if (comingOff.isPresent()) {
            var set = comingOff.get();
            judge.judge(
                    set,
                    SetForecast.Role.COMING_OFF,
                    visit.arrivedOn(),
                    nextVisit,
                    ChangeOver.after(nextVisit, set.season()));
        }
        findings.addAll(judge.findings());
        notJudged.addAll(judge.notJudged());
        findings.addAll(PressureFindings.of(vehicle, visits, readings, climate, notJudged));
        findings.addAll(SensorFindings.of(history, visit, notJudged));
        findings.addAll(SensorPressureFindings.of(vehicle, visit, readings));
        findings.addAll(WheelFitFindings.of(history, visit.leftOn()));
        findings.addAll(TorqueFindings.of(vehicle, visit, readings, notJudged));
        notJudged.addAll(BrakeReadingRules.notUsed(vehicle, readings));
        var distance = runs.next(SeasonKind.ALL_SEASON);
        findings.addAll(BrakeFindings.of(vehicle, visits, distance, nextVisit, limits, notJudged));
        SeizingFindings.of(
                        vehicle,
                        visits,
                        nextVisit,
                        runs.next(SeasonKind.ALL_SEASON).meanKm(),
                        knowledge,
                        limits.get(vehicle.jurisdiction(), Limit.Kind.SEIZING_RISK, null),
                        notJudged)
                .ifPresent(findings::add);
        ParkingBrakeFindings.of(visit, notJudged).ifPresent(findings::add);
        BrakeFluidFindings.of(vehicle, visits, nextVisit, notJudged).ifPresent(findings::add);
        notJudged.addAll(OpenBrakeWork.of(vehicle, visit));
        BatteryFindings.of(vehicle, visits, readings, nextVisit, notJudged).ifPresent(findings::add);
        findings.addAll(ToolFindings.of(visit, readings));
        LiftFindings.of(vehicle, visit, notJudged).ifPresent(findings::add);
        findings.sort(Comparator.comparing(Finding::verdict).reversed().thenComparingDouble(Finding::lifeLeft));
        return new Assessment(
                history,
                visit,
                nextVisit,
                findings,
                judge.forecasts(),
                plan,
                Retorque.after(history, visit).orElse(null),
                notJudged,
                doubted(history, visitId),
                SeizingCurve.of(vehicle, PadClock.of(visits), distance.meanKm(), knowledge),
                BatteryCurve.of(vehicle, visits),
                PressureOutlook.find(vehicle, visit, readings, PressureFindings.coldestC(climate))
                        .orElse(null));
    }

    /** The stored set of the season to come; empty when the car came on it, or has none. */
    private static Optional<WheelSet> seasonsSet(CarHistory history, Visit visit) {
        var arrived = findSet(history, visit.arrivedOn()).map(WheelSet::season);
        var season = ChangeOver.leavingOn(visit.date());
        if (arrived.isEmpty() || arrived.get() == SeasonKind.ALL_SEASON || arrived.get() == season) {
            return Optional.empty();
        }
        return history.sets().stream().filter(set -> set.season() == season).findFirst();
    }

    /** Where the wheels of a set stand, or stood when they were last on the car; listed order for a set that never was. */
    private static Map<Corner, String> positions(WheelSet set, List<Visit> visits) {
        var tags = set.wheels().stream().map(Wheel::tag).toList();
        for (var visit : visits.reversed()) {
            for (var wheelAt : List.of(visit.leftOn(), visit.arrivedOn())) {
                if (wheelAt.values().stream().anyMatch(tags::contains)) {
                    return wheelAt;
                }
            }
        }
        var listed = new EnumMap<Corner, String>(Corner.class);
        for (var corner : Corner.values()) {
            if (corner.ordinal() < tags.size()) {
                listed.put(corner, tags.get(corner.ordinal()));
            }
        }
        return listed;
    }

    /** Where the wheels of the set stand on the car now; empty while they do not all. */
    private static Optional<Map<Corner, String>> standing(WheelSet set, Visit visit) {
        var tags = set.wheels().stream().map(Wheel::tag).collect(Collectors.toSet());
        return List.of(visit.leftOn(), visit.arrivedOn()).stream()
                .filter(wheelAt -> !wheelAt.isEmpty())
                .findFirst()
                .filter(wheelAt -> wheelAt.size() == Corner.values().length && tags.containsAll(wheelAt.values()));
    }

    private static Optional<WheelSet> findSet(CarHistory history, Map<Corner, String> wheelAt) {
        return wheelAt.values().stream()
                .map(history::findSetOf)
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static LocalDate nextVisit(Visit visit, SeasonKind season) {
        var agreed = visit.nextVisitDue();
        return agreed != null ? agreed : ChangeOver.after(visit.date(), season);
    }
}
