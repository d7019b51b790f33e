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
import cornerbook.core.car.WheelSet;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.LimitTable;
import cornerbook.core.lift.judge.LiftFindings;
import cornerbook.core.say.Said;
import cornerbook.core.season.Climate;
import cornerbook.core.tool.judge.ToolFindings;
import cornerbook.core.torque.judge.Retorque;
import cornerbook.core.torque.judge.TorqueFindings;
import cornerbook.core.tread.judge.TreadForecaster;
import cornerbook.core.tread.judge.TreadPrediction;
import cornerbook.core.tyre.judge.WheelFitFindings;
import cornerbook.core.wheelplan.Rule;
import cornerbook.core.wheelplan.judge.DifferenceFindings;
import cornerbook.core.wheelplan.judge.SetPlan;
import cornerbook.core.wheelplan.judge.WheelPlanning;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Turns a car with its visits into findings. Stateless: the same history, limits and visit give the same findings. */
public final class Assessor {
    /** What the rooms find out, in the order in which it is told where it weighs the same. The sets are judged before them. */
    private static final List<Judge> JUDGES = List.of(
            (given, notJudged) ->
                    PressureFindings.of(given.vehicle(), given.visits(), given.readings(), given.climate(), notJudged),
            (given, notJudged) -> SensorFindings.of(given.history(), given.visit(), notJudged),
            (given, notJudged) -> SensorPressureFindings.of(given.vehicle(), given.visit(), given.readings()),
            (given, notJudged) ->
                    WheelFitFindings.of(given.history(), given.visit().leftOn()),
            (given, notJudged) -> TorqueFindings.of(given.vehicle(), given.visit(), given.readings(), notJudged),
            (given, notJudged) -> {
                notJudged.addAll(BrakeReadingRules.notUsed(given.vehicle(), given.readings()));
                return BrakeFindings.of(
                        given.vehicle(),
                        given.visits(),
                        given.distance(),
                        given.nextVisit(),
                        given.limits(),
                        notJudged);
            },
            (given, notJudged) -> list(SeizingFindings.of(
                    given.vehicle(),
                    given.visits(),
                    given.nextVisit(),
                    given.distance().meanKm(),
                    given.knowledge(),
                    given.limit(Limit.Kind.SEIZING_RISK),
                    notJudged)),
            (given, notJudged) -> list(ParkingBrakeFindings.of(given.visit(), notJudged)),
            (given, notJudged) ->
                    list(BrakeFluidFindings.of(given.vehicle(), given.visits(), given.nextVisit(), notJudged)),
            (given, notJudged) -> {
                OpenBrakeWork.of(given.vehicle(), given.visit()).forEach(open -> notJudged.add(Said.verbatim(open)));
                return List.of();
            },
            (given, notJudged) -> list(BatteryFindings.of(
                    given.vehicle(), given.visits(), given.readings(), given.nextVisit(), notJudged)),
            (given, notJudged) -> ToolFindings.of(given.visit(), given.readings()),
            (given, notJudged) -> list(LiftFindings.of(given.vehicle(), given.visit(), notJudged)));

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

    private static List<Finding> list(Optional<Finding> found) {
        return found.stream().toList();
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

    /** A visit with everything that judging it rests on. */
    public Case caseOf(CarHistory history, String visitId) {
        return new Case(history, visitId, limits, knowledge, climate);
    }

    /** The set that the car leaves on, as {@link Case#goingOn} has it. */
    public Optional<WheelSet> goingOn(CarHistory history, String visitId) {
        return caseOf(history, visitId).goingOn();
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
        var given = caseOf(history, visitId);
        return given.goingOn()
                .flatMap(set -> planning(given, forecaster(given))
                        .plan(set, given.visit().date(), without));
    }

    /** The wheel plan of the set that comes off at a visit, from the day that it goes on again; empty as above. */
    public Optional<SetPlan> planStored(CarHistory history, String visitId) {
        var given = caseOf(history, visitId);
        return given.comingOff()
                .flatMap(set -> planning(given, forecaster(given)).plan(set, given.nextVisit(), Set.of()));
    }

    private static TreadForecaster forecaster(Case given) {
        return new TreadForecaster(given.history(), given.visits(), given.visit(), given.runs(), given.knowledge());
    }

    private static WheelPlanning planning(Case given, TreadForecaster forecaster) {
        return new WheelPlanning(
                given.vehicle(), given.limits(), forecaster, given.runs(), given.visits(), given.visit());
    }

    /**
     * Assesses one visit with what was known on its day: later visits do not count.
     *
     * @throws java.util.NoSuchElementException when the history has no such visit, or the limits lack a kind
     */
    public Assessment assess(CarHistory history, String visitId) {
        var given = caseOf(history, visitId);
        var forecaster = forecaster(given);
        var planning = planning(given, forecaster);
        var sets = SetJudge.of(given, forecaster);
        var findings = new ArrayList<>(differences(given, planning));
        findings.addAll(sets.findings());
        var notJudged = new ArrayList<>(given.runs().doubts());
        notJudged.addAll(sets.notJudged());
        for (var judge : JUDGES) {
            findings.addAll(judge.judge(given, notJudged));
        }
        findings.sort(Comparator.comparing(Finding::verdict).reversed().thenComparingDouble(Finding::lifeLeft));
        return new Assessment(
                history,
                given.visit(),
                given.nextVisit(),
                findings,
                sets.forecasts(),
                given.goingOn()
                        .flatMap(set -> planning.plan(set, given.visit().date(), Set.of()))
                        .map(SetPlan::plan)
                        .orElse(null),
                Retorque.after(history, given.visit()).orElse(null),
                notJudged,
                doubted(history, visitId),
                SeizingCurve.of(
                        given.vehicle(),
                        PadClock.of(given.visits()),
                        given.distance().meanKm(),
                        knowledge),
                BatteryCurve.of(given.vehicle(), given.visits()),
                PressureOutlook.find(
                                given.vehicle(), given.visit(), given.readings(), PressureFindings.coldestC(climate))
                        .orElse(null),
                given.workDone());
    }

    /** How the wheels on the car differ among each other, where those of the set going on all stand on it. */
    private static List<Finding> differences(Case given, WheelPlanning planning) {
        var day = given.visit().date();
        return given.goingOn()
                .flatMap(set -> given.standing(set)
                        .flatMap(standing -> planning.find(set, day)
                                .map(needs -> DifferenceFindings.of(needs, standing, day, given.nextVisit()))))
                .orElse(List.of());
    }
}
