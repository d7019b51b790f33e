package cornerbook.core.tyre.judge;

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
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.LoadIndex;
import cornerbook.core.tyre.ServiceDescription;
import cornerbook.core.tyre.SpeedSymbol;
import cornerbook.core.tyre.judge.SidewallSaid.Ground;
import cornerbook.core.tyre.judge.SidewallSaid.Label;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Findings on tyres that may carry less than half of their axle's permitted load. The capacity is that of the load index
 * (UN R30, table), for tyres on their own at each end of the axle, not in pairs.
 */
public final class TyreLoadFindings {
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
            var service = service(wheel, notJudged);
            if (corner.isPresent() && service.isPresent()) {
                double needKg = vehicle.axle(corner.get().axle()).axleLoadKg() / 2;
                if (service.get().loadIndex().capacityKg() < needKg) {
                    findings.add(tooWeak(span.set(), wheel, corner.get(), service.get(), vehicle, needKg));
                }
            }
        }
        return new Judgement(findings, notJudged);
    }

    private static Optional<ServiceDescription> service(Wheel wheel, List<Said> notJudged) {
        try {
            return Optional.of(new ServiceDescription(
                    new LoadIndex(wheel.tyre().loadIndex()),
                    SpeedSymbol.parse(wheel.tyre().speedSymbol())));
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
            WheelSet set, Wheel wheel, Corner corner, ServiceDescription service, Vehicle vehicle, double needKg) {
        var axle = vehicle.axle(corner.axle());
        double capacityKg = service.loadIndex().capacityKg();
        return new Finding(
                new Subject(Subject.Part.TYRE_LOAD, corner, wheel.tag(), set.id()),
                Verdict.SPENT,
                new SidewallSaid.CarriesTooLittle(
                        wheel.tag(), corner, Amount.of(capacityKg, "kg"), Amount.of(needKg, "kg")),
                new SidewallSaid.CarriesTooLittlePlain(corner),
                null,
                null,
                0,
                List.of(
                        new Evidence(
                                Label.SERVICE_DESCRIPTION,
                                new SidewallSaid.ServiceCarries(service.toString(), Amount.of(capacityKg, "kg")),
                                Ground.SIDEWALL_INDICES),
                        new Evidence(
                                Label.PERMITTED_AXLE_LOAD,
                                new SidewallSaid.HalfOfAxle(
                                        Amount.of(axle.axleLoadKg(), "kg"), Amount.of(needKg, "kg")),
                                Ground.SPECIFICATION),
                        new Evidence(
                                Label.PLACARD_ASKS,
                                Said.verbatim(axle.loadIndex() + axle.speedSymbol()),
                                Ground.SPECIFICATION_OUTRANKS)),
                Ground.AXLE_LOAD_RULE);
    }
}
