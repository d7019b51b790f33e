package cornerbook.core.battery.judge;

import cornerbook.core.battery.BatteryHealth;
import cornerbook.core.battery.BatterySaid;
import cornerbook.core.battery.BatterySaid.Label;
import cornerbook.core.battery.BatterySaid.Sentence;
import cornerbook.core.battery.Chemistry;
import cornerbook.core.battery.HealthTest;
import cornerbook.core.battery.HealthTrend;
import cornerbook.core.battery.TwelveVoltBattery;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Margin;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Finding on the 12 V battery, charge before health: a battery that rests low is charged, rested and tested again before its
 * health is judged. Where an engine is cranked the health is the cranking current over its rating; an electric car cranks
 * nothing, so that charge, capacity, age and standby current count.
 */
public final class BatteryFindings {
    /** A 12 V battery lasts 3 to 5 years (service literature). */
    private static final int USUAL_YEARS = 5;

    private final Vehicle vehicle;
    private final TwelveVoltBattery battery;
    private final StandingReadings readings;
    private final LocalDate nextVisit;
    private final @Nullable RestCharge found;
    private final @Nullable RestCharge charged;
    private final List<TestedHealth> tested;
    private final Standby standby;
    private final HealthTest trendOf;
    private final @Nullable HealthTrend trend;
    private final @Nullable Integer years;

    private BatteryFindings(Case given, TwelveVoltBattery battery) {
        this.battery = battery;
        vehicle = given.vehicle();
        readings = given.readings();
        nextVisit = given.nextVisit();
        found = RestCharge.find(battery, readings, Measure.BATTERY_VOLTAGE).orElse(null);
        charged = RestCharge.find(battery, readings, Measure.BATTERY_VOLTAGE_CHARGED)
                .orElse(null);
        // A cranking test tells nothing while the charge that it was made with is not known.
        tested = TestedHealth.list(battery, readings).stream()
                .filter(each -> each.test() == HealthTest.CAPACITY || found != null || charged != null)
                .toList();
        standby = Standby.of(vehicle, battery, readings);
        var curve = BatteryCurve.of(vehicle, given.visits());
        trendOf = curve.test();
        trend = curve.trend().orElse(null);
        var installed = battery.installedOn();
        years = installed == null
                ? null
                : (int) ChronoUnit.YEARS.between(installed, given.visit().date());
    }

    /** The finding on the 12 V battery; none when nothing that tells of it was measured. */
    public static Judgement judge(Case given) {
        var battery = given.vehicle().battery();
        if (battery == null) {
            return Judgement.NONE;
        }
        var judge = new BatteryFindings(given, battery);
        var notJudged = new ArrayList<>(judge.voltagesOfNoUse());
        if (judge.rest() == null && judge.tested.isEmpty()) {
            return Judgement.missing(notJudged);
        }
        notJudged.addAll(judge.missing());
        return new Judgement(List.of(judge.finding()), notJudged);
    }

    /** How it rests now: after its charge, or as it was found. */
    private @Nullable RestCharge rest() {
        return charged == null ? found : charged;
    }

    private List<Said> voltagesOfNoUse() {
        var voltages = Stream.of(Measure.BATTERY_VOLTAGE, Measure.BATTERY_VOLTAGE_CHARGED)
                .flatMap(measure -> readings.ofVehicle(measure).stream())
                .toList();
        if (voltages.isEmpty()) {
            return List.of(Sentence.VOLTAGE_NOT_MEASURED);
        }
        if (battery.chemistry() == Chemistry.LITHIUM && rest() == null) {
            return List.of(Sentence.LITHIUM_NOT_JUDGED);
        }
        return voltages.stream()
                .filter(voltage -> RestCharge.isHeldUp(battery, voltage))
                .<Said>map(voltage -> new BatterySaid.HeldUpNow(new Amount(voltage.value(), "V", 1)))
                .toList();
    }

    private List<Said> missing() {
        boolean capacity = tested.stream().anyMatch(each -> each.test() == HealthTest.CAPACITY);
        if (vehicle.electric() && !capacity) {
            return years == null
                    ? List.of(Sentence.CAPACITY_NOT_TESTED, Sentence.AGE_NOT_KNOWN)
                    : List.of(Sentence.CAPACITY_NOT_TESTED);
        }
        return tested.isEmpty() ? List.of(Sentence.HEALTH_NOT_JUDGED) : List.of();
    }

    private Finding finding() {
        var outcome = outcome();
        var rest = rest();
        var charge = rest == null ? null : rest.charge();
        var finding = new Finding(
                new Subject(Subject.Part.BATTERY, null, null, null),
                outcome.verdict(),
                new BatterySaid.AtRest(
                        rest == null ? null : Amount.of(rest.reading().value(), "V"),
                        charge == null ? null : RestCharge.percent(charge)),
                outcome.words(),
                trend == null || outcome.verdict().compareTo(Verdict.SPENT) >= 0 ? null : trend.reaches(),
                null,
                Math.clamp(Math.min(health(), charge == null ? 1 : charge), 0, 1),
                evidence(),
                battery.chargeBelowV() == null ? Label.FINDING_SOURCE : Label.MAKERS_SOURCE);
        var action = outcome.action() == Todo.Action.CHARGE_AND_TEST && isLithiumBelowZero(temperatureC())
                ? Todo.Action.WARM_UP_FIRST
                : outcome.action();
        return outcome.by() == null ? finding.todo(action) : finding.todo(action, outcome.by());
    }

    /**
     * What it comes to.
     *
     * @param by null where the verdict says by when
     */
    private record Outcome(Verdict verdict, Said words, Todo.Action action, Todo.@Nullable When by) {
        static final Outcome IN_ORDER = soon(Verdict.HOLDS, Sentence.IN_ORDER);

        private static Outcome soon(Verdict verdict, Said words) {
            return new Outcome(verdict, words, Todo.Action.CHARGE_AND_TEST, null);
        }

        static Outcome soon(Said words) {
            return soon(Verdict.RUNS_OUT, words);
        }

        /** Before the car leaves. */
        static Outcome now(Said words, Todo.Action action) {
            return new Outcome(Verdict.RUNS_OUT, words, action, Todo.When.NOW);
        }

        static Outcome spent(Said words) {
            return new Outcome(Verdict.SPENT, words, Todo.Action.REPLACE, null);
        }
    }

    private Outcome outcome() {
        var rest = rest();
        var freezesAtC = rest == null ? null : rest.freezesAtC();
        var temperatureC = temperatureC();
        if (freezesAtC != null && temperatureC != null && temperatureC <= freezesAtC) {
            return new Outcome(
                    Verdict.UNSAFE,
                    new BatterySaid.MayBeFrozen(Amount.of(freezesAtC, "°C")),
                    Todo.Action.WARM_UP_FIRST,
                    null);
        }
        if (charged != null && charged.low()) {
            return Outcome.spent(new BatterySaid.DoesNotHold(vehicle.electric()));
        }
        var health = tested.stream()
                .filter(TestedHealth::counts)
                .filter(each -> !vehicle.electric() || each.test() == HealthTest.CAPACITY)
                .map(this::outcome)
                .max(Comparator.comparing(Outcome::verdict))
                .orElseGet(this::withoutTest);
        if (health.verdict() == Verdict.SPENT) {
            return health;
        }
        if (charged == null && found != null && found.low()) {
            return low(temperatureC);
        }
        return health.verdict() == Verdict.HOLDS && standby.drains()
                ? new Outcome(
                        Verdict.RUNS_OUT,
                        new BatterySaid.Drained(standby.current(), standby.most(), (int)
                                standby.parked(health(), 1).days()),
                        Todo.Action.REPAIR,
                        null)
                : health;
    }

    private Outcome low(@Nullable Double temperatureC) {
        if (isLithiumBelowZero(temperatureC)) {
            return Outcome.now(Sentence.LOW_LITHIUM_COLD, Todo.Action.WARM_UP_FIRST);
        }
        var outsideC = read(Measure.OUTSIDE_TEMPERATURE);
        if (temperatureC == null && outsideC != null && isTooColdToCharge(outsideC)) {
            return Outcome.now(
                    new BatterySaid.MayBeCold(Amount.of(outsideC, "°C"), battery.chemistry() == Chemistry.LITHIUM),
                    Todo.Action.WARM_UP_FIRST);
        }
        if (standby.drains()) {
            return Outcome.now(
                    new BatterySaid.LowAndDrained(standby.current(), standby.most()), Todo.Action.CHARGE_AND_TEST);
        }
        return Outcome.now(
                tested.stream().allMatch(TestedHealth::counts) ? Sentence.LOW : Sentence.LOW_AND_WEAK,
                Todo.Action.CHARGE_AND_TEST);
    }

    private boolean isLithiumBelowZero(@Nullable Double celsius) {
        return battery.chemistry() == Chemistry.LITHIUM && celsius != null && celsius < 0;
    }

    /** Whether it would be frozen at that temperature, or is lithium below 0 °C. */
    private boolean isTooColdToCharge(double celsius) {
        var rest = rest();
        var freezesAtC = rest == null ? null : rest.freezesAtC();
        return isLithiumBelowZero(celsius) || (freezesAtC != null && celsius <= freezesAtC);
    }

    private Outcome outcome(TestedHealth health) {
        var end = trend == null || trendOf != health.test() ? null : trend.reaches();
        var ends = end != null && end.isBefore(nextVisit) ? end : null;
        if (health.share() < health.test().leastShare()) {
            var temperatureC = temperatureC();
            return health.test() == HealthTest.CRANKING_CURRENT
                            && temperatureC != null
                            && BatteryHealth.mayFailByCold(health.share(), temperatureC)
                    ? Outcome.now(Sentence.TEST_WARM, Todo.Action.WARM_UP_FIRST)
                    : Outcome.spent(new BatterySaid.EndOfLife(vehicle.electric()));
        }
        return ends != null || health.share() < health.test().watchShare()
                ? Outcome.soon(new BatterySaid.GettingWeak(ends == null ? nextVisit : ends, ends != null))
                : Outcome.IN_ORDER;
    }

    /** By age, and by a cranking test that does not count: an electric car's, or that of a battery that was low. */
    private Outcome withoutTest() {
        var cranking = tested.stream().findFirst().orElse(null);
        if (cranking != null && !vehicle.electric()) {
            return Outcome.now(Sentence.TEST_AGAIN, Todo.Action.CHARGE_AND_TEST);
        }
        if (cranking != null && cranking.share() < cranking.test().watchShare()) {
            return Outcome.soon(new BatterySaid.TestCapacity(nextVisit));
        }
        return years != null && years > USUAL_YEARS
                ? Outcome.soon(new BatterySaid.Old(years, nextVisit))
                : Outcome.IN_ORDER;
    }

    private List<Evidence> evidence() {
        var evidence = new ArrayList<Evidence>();
        Stream.of(Optional.ofNullable(found), Optional.ofNullable(charged))
                .flatMap(Optional::stream)
                .forEach(rest -> evidence.addAll(rest.evidence()));
        tested.forEach(each -> evidence.add(each.evidence()));
        var temperatureC = temperatureC();
        if (temperatureC != null) {
            evidence.add(
                    new Evidence(Label.BATTERY_TEMPERATURE, Amount.of(temperatureC, "°C"), Label.TEMPERATURE_SOURCE));
        }
        var rest = rest();
        var freezesAtC = rest == null || !rest.low() ? null : rest.freezesAtC();
        if (freezesAtC != null) {
            evidence.add(new Evidence(Label.FREEZES_AT, Amount.of(freezesAtC, "°C"), Label.FREEZING_TABLE));
        }
        if (years != null) {
            evidence.add(new Evidence(Label.AGE, new BatterySaid.Years(years), Label.AGE_SOURCE));
        }
        if (trend != null) {
            evidence.add(new Evidence(
                    Label.TREND,
                    new BatterySaid.ChangeAYear(
                            new Margin(trend.sharePerYear() * 100, "%", 0, true),
                            RestCharge.percent(trend.errorPerYear())),
                    new BatterySaid.TrendBasis(RestCharge.percent(trendOf.leastShare()), trend.reaches())));
        }
        if (standby.measured()) {
            evidence.add(
                    new Evidence(Label.STANDBY, standby.current(), new BatterySaid.UsualStandby(vehicle.electric())));
        }
        evidence.add(standby.parked(Label.PARKED_FROM_FULL, health(), 1));
        if (rest != null && rest.charge() != null) {
            evidence.add(standby.parked(Label.PARKED_FROM_THIS, health(), rest.charge()));
        }
        return evidence;
    }

    /** The least of its tests that count, or that of a new one. */
    private double health() {
        return tested.stream()
                .filter(TestedHealth::counts)
                .flatMapToDouble(each -> DoubleStream.of(each.share()))
                .min()
                .orElse(1);
    }

    private @Nullable Double temperatureC() {
        return read(Measure.BATTERY_TEMPERATURE);
    }

    private @Nullable Double read(Measure measure) {
        return readings.ofVehicle(measure).map(Reading::value).orElse(null);
    }
}
