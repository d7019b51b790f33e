package cornerbook.core.assess;

import cornerbook.core.air.judge.PressureFindings;
import cornerbook.core.air.judge.PressureOutlook;
import cornerbook.core.air.judge.SensorFindings;
import cornerbook.core.air.judge.SensorPressureFindings;
import cornerbook.core.battery.judge.BatteryCurve;
import cornerbook.core.battery.judge.BatteryFindings;
import cornerbook.core.brake.caliper.ParkingBrakeFindings;
import cornerbook.core.brake.disc.judge.DiscFindings;
import cornerbook.core.brake.drum.judge.DrumFindings;
import cornerbook.core.brake.drum.judge.ParkingShoeFindings;
import cornerbook.core.brake.fluid.judge.BrakeFluidFindings;
import cornerbook.core.brake.judge.ThicknessPrediction;
import cornerbook.core.brake.pads.judge.PadFindings;
import cornerbook.core.brake.seizing.judge.SeizingCurve;
import cornerbook.core.brake.seizing.judge.SeizingFindings;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.DataGap;
import cornerbook.core.car.WheelSet;
import cornerbook.core.changeover.ChangeOverOfPlace;
import cornerbook.core.coming.DueMatter;
import cornerbook.core.coming.judge.DueMatters;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.LimitTable;
import cornerbook.core.finding.ReadingLimit;
import cornerbook.core.lift.judge.LiftFindings;
import cornerbook.core.order.judge.CarNeed;
import cornerbook.core.order.judge.CarNeeds;
import cornerbook.core.release.Release;
import cornerbook.core.season.Climate;
import cornerbook.core.sight.judge.SightFindings;
import cornerbook.core.tool.judge.ToolFindings;
import cornerbook.core.torque.judge.Retorque;
import cornerbook.core.torque.judge.TorqueFindings;
import cornerbook.core.tread.judge.SetForecast;
import cornerbook.core.tread.judge.TreadFindings;
import cornerbook.core.tread.judge.TreadForecaster;
import cornerbook.core.tread.judge.TreadPrediction;
import cornerbook.core.tyre.judge.FittingFindings;
import cornerbook.core.tyre.judge.TyreAgeFindings;
import cornerbook.core.tyre.judge.TyreLawFindings;
import cornerbook.core.tyre.judge.TyreLoadFindings;
import cornerbook.core.tyre.judge.TyrePlacardFindings;
import cornerbook.core.tyre.judge.WheelFitFindings;
import cornerbook.core.wheelplan.Rule;
import cornerbook.core.wheelplan.judge.DifferenceFindings;
import cornerbook.core.wheelplan.judge.SetPlan;
import cornerbook.core.wheelplan.judge.WheelPlanning;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Turns a car with its visits into findings. Stateless: the same history, limits and visit give the same findings. */
public final class Assessor {
    /** The judges of the rooms, in the order in which it is told what weighs the same. The tread is judged before them. */
    private static final List<Function<Case, Judgement>> JUDGES = List.of(
            TyreAgeFindings::judge,
            TyreLoadFindings::judge,
            TyrePlacardFindings::judge,
            PressureFindings::judge,
            SensorFindings::judge,
            SensorPressureFindings::judge,
            WheelFitFindings::judge,
            SightFindings::judge,
            FittingFindings::judge,
            TyreLawFindings::judge,
            TorqueFindings::judge,
            BrakeFindings::judge,
            SeizingFindings::judge,
            ParkingBrakeFindings::judge,
            BrakeFluidFindings::judge,
            BatteryFindings::judge,
            ToolFindings::judge,
            LiftFindings::judge);

    /** The rooms that say between what values their readings lie. */
    private static final List<Function<Case, List<ReadingLimit>>> LIMITS = List.of(
            TreadFindings::limits,
            PressureFindings::limits,
            TorqueFindings::limits,
            PadFindings::limits,
            DiscFindings::limits,
            DrumFindings::limits,
            ParkingShoeFindings::limits);

    private final LimitTable limits;
    private final Knowledge knowledge;
    private final @Nullable ChangeOverOfPlace place;

    /**
     * An assessor by these limits.
     *
     * @param limits rows of the limits file; a row with jurisdiction "*" must stand for each kind that is judged
     */
    public Assessor(List<Limit> limits) {
        this(new LimitTable(limits), Knowledge.NONE, null);
    }

    private Assessor(LimitTable limits, Knowledge knowledge, @Nullable ChangeOverOfPlace place) {
        this.limits = limits;
        this.knowledge = knowledge;
        this.place = place;
    }

    /** The limits that it judges by. */
    public List<Limit> limits() {
        return limits.rows();
    }

    /** The same with what the book has learned from all its cars. */
    public Assessor with(Knowledge learned) {
        return new Assessor(limits, learned, place);
    }

    /** The same with the climate of the place; null when it is not known, and a usual cold morning and usual days serve. */
    public Assessor in(@Nullable Climate climate) {
        return new Assessor(limits, knowledge, climate == null ? null : new ChangeOverOfPlace(climate));
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

    /**
     * Between what values the readings of a visit lie that need no word, gravest first. They are those by which {@link #assess}
     * judges, so what is told at once is what is found later.
     */
    public List<ReadingLimit> limits(CarHistory history, String visitId) {
        var given = caseOf(history, visitId);
        return LIMITS.stream()
                .flatMap(room -> room.apply(given).stream())
                .sorted(Comparator.comparing(ReadingLimit::outside).reversed())
                .toList();
    }

    /** A visit with everything that judging it rests on. */
    public Case caseOf(CarHistory history, String visitId) {
        return new Case(history, visitId, limits, knowledge, place);
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
                .flatMap(set -> planning(given).plan(set, given.visit().date(), without));
    }

    /** The wheel plan of the set that comes off at a visit, from the day that it goes on again; empty as above. */
    public Optional<SetPlan> planStored(CarHistory history, String visitId) {
        var given = caseOf(history, visitId);
        return given.comingOff().flatMap(set -> planning(given).plan(set, given.nextVisit(), Set.of()));
    }

    /**
     * Assesses one visit with what was known on its day: later visits do not count.
     *
     * @throws java.util.NoSuchElementException when the history has no such visit, or the limits lack a kind
     */
    public Assessment assess(CarHistory history, String visitId) {
        var given = caseOf(history, visitId);
        var forecaster = new TreadForecaster(given);
        var forecasts = TreadFindings.forecasts(given, forecaster);
        var planning = new WheelPlanning(given, forecaster);
        var judged = judge(given, forecasts, planning);
        return new Assessment(
                history,
                given.visit(),
                given.nextVisit(),
                judged.findings(),
                Release.of(given.visit(), judged.findings()),
                forecasts,
                given.goingOn()
                        .flatMap(set -> planning.plan(set, given.visit().date(), Set.of()))
                        .map(SetPlan::plan)
                        .orElse(null),
                Retorque.after(history, given.visit()).orElse(null),
                judged.notJudged(),
                doubted(history, visitId),
                SeizingCurve.of(given),
                BatteryCurve.of(given.vehicle(), given.visits()),
                PressureOutlook.find(given).orElse(null),
                given.changeOverDays().orElse(null),
                given.workDone());
    }

    /** The findings of a visit as {@link #assess} has them, without planning or predicting anything. */
    public List<Finding> findings(CarHistory history, String visitId) {
        var given = caseOf(history, visitId);
        var forecaster = new TreadForecaster(given);
        return findings(given, forecaster, TreadFindings.forecasts(given, forecaster));
    }

    private static List<Finding> findings(Case given, TreadForecaster forecaster, List<SetForecast> forecasts) {
        return judge(given, forecasts, new WheelPlanning(given, forecaster)).findings();
    }

    /**
     * What a visit comes to for lists of many cars.
     *
     * @param nextVisit the day by which it is reckoned
     * @param needs what the car may need by its coming visit
     * @param matters for what the car is to come back
     */
    public record Outcome(LocalDate nextVisit, List<Finding> findings, List<CarNeed> needs, List<DueMatter> matters) {
        public Outcome {
            findings = List.copyOf(findings);
            needs = List.copyOf(needs);
            matters = List.copyOf(matters);
        }
    }

    /** The findings of a visit, and what follows from them for the shop's orders and calls. */
    public Outcome outcome(CarHistory history, String visitId) {
        var given = caseOf(history, visitId);
        var forecaster = new TreadForecaster(given);
        var forecasts = TreadFindings.forecasts(given, forecaster);
        var findings = findings(given, forecaster, forecasts);
        return new Outcome(
                given.nextVisit(),
                findings,
                CarNeeds.of(given, forecaster, forecasts, findings),
                DueMatters.of(given, findings));
    }

    /** Gravest first. */
    private static Judgement judge(Case given, List<SetForecast> forecasts, WheelPlanning planning) {
        var judged = Judgement.together(Stream.concat(
                Stream.of(
                        DifferenceFindings.judge(given, planning),
                        Judgement.missing(given.runs().doubts()),
                        Judgement.missing(DataGap.of(given.history())),
                        TreadFindings.judge(given, forecasts)),
                JUDGES.stream().map(judge -> judge.apply(given))));
        return new Judgement(
                judged.findings().stream()
                        .map(finding -> finding.on(given.visit().date()))
                        .sorted(Comparator.comparing(Finding::verdict)
                                .reversed()
                                .thenComparingDouble(Finding::lifeLeft))
                        .toList(),
                judged.notJudged());
    }

    private static WheelPlanning planning(Case given) {
        return new WheelPlanning(given, new TreadForecaster(given));
    }
}
