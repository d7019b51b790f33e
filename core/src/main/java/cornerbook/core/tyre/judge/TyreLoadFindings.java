package cornerbook.core.tyre.judge;

import cornerbook.core.say.Said;

import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.tyre.LoadIndex;
import cornerbook.core.tyre.ServiceDescription;
import cornerbook.core.tyre.SpeedSymbol;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Findings on tyres that may carry less than half of their axle's permitted load. The capacity is that of the load index
 * (UN R30, table), for tyres on their own at each end of the axle, not in pairs.
 */
public final class TyreLoadFindings {
    private static final String SOURCE =
            "UN R30, load-capacity indices; half of the permitted axle load: Regulation (EU) 458/2011, Annex II, from memory";

    private TyreLoadFindings() {}

    /** One finding for each tyre that carries too little; none for those that carry enough. */
    public static List<Finding> of(WheelSet set, Vehicle vehicle, Map<Corner, String> wheelAt, List<Said> notJudged) {
        var findings = new ArrayList<Finding>();
        for (var wheel : set.wheels()) {
            var corner = wheelAt.entrySet().stream()
                    .filter(entry -> entry.getValue().equals(wheel.tag()))
                    .map(Map.Entry::getKey)
                    .findFirst();
            var service = service(wheel, notJudged);
            if (corner.isPresent() && service.isPresent()) {
                double needKg = vehicle.axle(corner.get().axle()).axleLoadKg() / 2;
                if (service.get().loadIndex().capacityKg() < needKg) {
                    findings.add(tooWeak(set, wheel, corner.get(), service.get(), vehicle, needKg));
                }
            }
        }
        return findings;
    }

    private static Optional<ServiceDescription> service(Wheel wheel, List<Said> notJudged) {
        try {
            return Optional.of(new ServiceDescription(
                    new LoadIndex(wheel.tyre().loadIndex()),
                    SpeedSymbol.parse(wheel.tyre().speedSymbol())));
        } catch (IllegalArgumentException e) {
            notJudged.add(Said.verbatim("%s load capacity: %s".formatted(wheel.tag(), e.getMessage())));
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
                "%s at %s may carry %.0f kg, half of the axle's load is %.0f kg"
                        .formatted(wheel.tag(), corner, capacityKg, needKg),
                "The tyre at %s is not made for the load that this car may carry there. Do not load the car, and have the tyre replaced by one with enough load capacity."
                        .formatted(corner),
                null,
                null,
                0,
                List.of(
                        new Evidence(
                                "service description",
                                "%s: %.0f kg".formatted(service, capacityKg),
                                "sidewall; UN R30, table of load-capacity indices"),
                        new Evidence(
                                "permitted axle load",
                                "%.0f kg, half of it %.0f kg".formatted(axle.axleLoadKg(), needKg),
                                "vehicle's specification"),
                        new Evidence(
                                "placard asks",
                                "%d%s".formatted(axle.loadIndex(), axle.speedSymbol()),
                                "vehicle's specification; it outranks this sum")),
                SOURCE);
    }
}
