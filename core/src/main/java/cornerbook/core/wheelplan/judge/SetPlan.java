package cornerbook.core.wheelplan.judge;

import cornerbook.core.car.WheelSet;
import cornerbook.core.finding.DistanceBasis;
import cornerbook.core.season.SetSeasons;
import cornerbook.core.wheelplan.PlanRequest;
import cornerbook.core.wheelplan.Replacement;
import cornerbook.core.wheelplan.WheelPlan;
import cornerbook.core.wheelplan.search.ReplacementOptions;
import java.util.List;

/**
 * The wheel plan of one set with what it was made from.
 *
 * @param request depths now, wear rates, where each wheel ran last, the distances of the seasons, and the rules asked for
 * @param rules what the plan made of each rule that concerns this set
 * @param seasons the days of the seasons, for turning a distance into a day
 * @param distanceBasis where the distance per day comes from
 */
public record SetPlan(
        WheelSet set,
        WheelPlan plan,
        PlanRequest request,
        List<PlannedRule> rules,
        SetSeasons seasons,
        DistanceBasis distanceBasis) {
    public SetPlan {
        rules = List.copyOf(rules);
    }

    /**
     * When new tyres are bought, and which, and how far the set then runs under the rules asked for; computed anew at each
     * call. Empty when the depth of a new tyre is not above the limit, as of a set that came used to the book.
     */
    public List<Replacement> replacements() {
        return newDepthMm() > request.limitMm() ? ReplacementOptions.of(request, newDepthMm()) : List.of();
    }

    /** Depth of a new tyre, mm: the least among those of the set. */
    public double newDepthMm() {
        return set.wheels().stream()
                .mapToDouble(wheel -> wheel.tyre().newDepthOrUsualMm())
                .min()
                .orElseThrow();
    }
}
