package cornerbook.core.tyre.judge;

import cornerbook.core.car.AxleSpecification;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.SetSpan;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.LoadIndex;
import cornerbook.core.tyre.ServiceDescription;
import cornerbook.core.tyre.SpeedSymbol;
import cornerbook.core.tyre.TyreSize;
import cornerbook.core.tyre.judge.SidewallSaid.Ground;
import cornerbook.core.tyre.judge.SidewallSaid.Label;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Findings on tyres that may carry less than half of their axle's permitted load. The capacity is that of the load index
 * (UN R30, table), of light-truck tyres that of a tyre maker's data sheet, for tyres on their own at each end of the axle, not
 * in pairs. Temporary spares are not judged: their load stands on the sidewall alone.
 */
public final class TyreLoadFindings {
    /** 49 CFR 571.120 S5.1.2, as NHTSA quotes it (interpretation nht76-1.47): the load rating is divided by 1.10. */
    private static final double PASSENGER_TYRE_ON_TRUCK = 1.10;

    private TyreLoadFindings() {}

    /** One finding for each tyre that carries too little; none for those that carry enough. */
    public static Judgement judge(Case given) {
        return Judgement.together(given.spans().stream().map(span -> judge(given.vehicle(), span)));
    }

    private static Judgement judge(Vehicle vehicle, SetSpan span) {
        var findings = new ArrayList<Finding>();
        var notJudged = new ArrayList<Said>();
        for (var wheel : span.set().wheels()) {
            var corner = span.wheelAt().entrySet().stream()
                    .filter(entry -> entry.getValue().equals(wheel.tag()))
                    .map(Map.Entry::getKey)
                    .findFirst();
            var load = load(wheel, notJudged);
            if (corner.isPresent() && load.isPresent()) {
                var axle = vehicle.axle(corner.get().axle());
                var axleLoadKg = axle.axleLoadKg();
                var onTruck = load.get().onTruck(isTruck(axle));
                if (axleLoadKg != null && onTruck.capacityKg() < axleLoadKg / 2) {
                    findings.add(tooWeak(span.set(), wheel, corner.get(), onTruck, axle, axleLoadKg));
                }
            }
        }
        return new Judgement(findings, notJudged);
    }

    /** Whether its placard asks for light-truck tyres. */
    private static boolean isTruck(AxleSpecification axle) {
        return TyreSize.find(axle.tyreSize()).filter(TyreSize::lightTruck).isPresent();
    }

    private record Load(ServiceDescription service, double capacityKg, boolean lightTruck, Ground rule) {
        /** A passenger tyre on a truck carries less than on a car. */
        Load onTruck(boolean truck) {
            return truck && !lightTruck
                    ? new Load(service, capacityKg / PASSENGER_TYRE_ON_TRUCK, false, Ground.AXLE_LOAD_RULE_ON_TRUCK)
                    : this;
        }
    }

    private static Optional<Load> load(Wheel wheel, List<Said> notJudged) {
        var tyre = wheel.tyre();
        var loadIndex = tyre.loadIndex();
        var speedSymbol = tyre.speedSymbol();
        if (loadIndex == null || speedSymbol == null) {
            return Optional.empty();
        }
        try {
            var size = TyreSize.parse(tyre.size());
            var service = new ServiceDescription(new LoadIndex(loadIndex), SpeedSymbol.parse(speedSymbol));
            var capacityKg = size.findCapacityKg(service.loadIndex());
            if (capacityKg.isEmpty()) {
                notJudged.add(new SidewallSaid.LoadOnSidewall(wheel.tag(), tyre.size(), size.temporary()));
            }
            return capacityKg.map(kg -> new Load(
                    service,
                    kg,
                    size.lightTruck(),
                    size.lightTruck() ? Ground.AXLE_LOAD_RULE_LIGHT_TRUCK : Ground.AXLE_LOAD_RULE));
        } catch (IllegalArgumentException e) {
            notJudged.add(new SidewallSaid.LoadUnread(wheel.tag(), Refused.said(e)));
            return Optional.empty();
        }
    }

    /**
     * Spent, not Unsafe: a tyre short of the requirement is a major deficiency, and dangerous only when it carries too
     * little for the actual use (Directive 2014/45/EU, Annex I, 5.2.3, from memory), which the book does not know.
     */
    private static Finding tooWeak(
            WheelSet set, Wheel wheel, Corner corner, Load load, AxleSpecification axle, double axleLoadKg) {
        double needKg = axleLoadKg / 2;
        var capacity = Amount.of(load.capacityKg(), "kg");
        return new Finding(
                        new Subject(Subject.Part.TYRE_LOAD, corner, wheel.tag(), set.id()),
                        Verdict.SPENT,
                        new SidewallSaid.CarriesTooLittle(wheel.tag(), corner, capacity, Amount.of(needKg, "kg")),
                        new SidewallSaid.CarriesTooLittlePlain(corner),
                        null,
                        null,
                        0,
                        List.of(
                                new Evidence(
                                        Label.SERVICE_DESCRIPTION,
                                        new SidewallSaid.ServiceCarries(
                                                load.service().toString(), capacity),
                                        load.lightTruck() ? Ground.SIDEWALL_LIGHT_TRUCK : Ground.SIDEWALL_INDICES),
                                new Evidence(
                                        Label.PERMITTED_AXLE_LOAD,
                                        new SidewallSaid.HalfOfAxle(
                                                Amount.of(axleLoadKg, "kg"), Amount.of(needKg, "kg")),
                                        Ground.SPECIFICATION),
                                new Evidence(Label.PLACARD_ASKS, axle.service(), Ground.SPECIFICATION_OUTRANKS)),
                        load.rule())
                .todo(Todo.Action.FIT_ANOTHER_WHEEL);
    }
}
