package cornerbook.core.wheelplan;

import cornerbook.core.corner.Corner;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * One way that depths and wear rates may truly be: a draw from what is known about them.
 *
 * @param depthsMm depth of each groove now, by wheel in the order of the request
 * @param ratesMmPer1000Km by corner and groove, above 0
 */
public record WearScenario(List<List<Double>> depthsMm, Map<Corner, List<Double>> ratesMmPer1000Km) {
    public WearScenario {
        depthsMm = depthsMm.stream().map(List::copyOf).toList();
        ratesMmPer1000Km = Map.copyOf(ratesMmPer1000Km);
    }

    /** The request as it would be if this were so. */
    public PlanRequest applyTo(PlanRequest request) {
        var wheels = new ArrayList<WheelState>();
        for (int i = 0; i < request.wheels().size(); i++) {
            var wheel = request.wheels().get(i);
            wheels.add(new WheelState(
                    wheel.tag(), wheel.tyreSize(), wheel.directional(), depthsMm.get(i), wheel.lastCorner()));
        }
        return new PlanRequest(
                wheels,
                ratesMmPer1000Km,
                request.sizeAt(),
                request.limitMm(),
                request.seasonsThousandKm(),
                request.rules());
    }
}
