package cornerbook.core.wheelplan;

import cornerbook.core.corner.Corner;
import cornerbook.core.say.Said;
import java.util.List;
import java.util.Map;

/**
 * Where each wheel of a set goes in the season now and in the seasons to come; its parts are the fields of the plan in the JSON
 * of an assessment.
 *
 * @param wheelAt wheel tag at each corner for the season now; a fifth wheel that stands at none is the spare
 * @param seasons the seasons that begin before a groove reaches its limit, the season now first
 * @param distanceKm until the first groove reaches its limit, this way; beyond the last season the wheels stay
 * @param distanceUnmovedKm the same when each wheel stays where it ran
 * @param spreadMm depth between the deepest and the shallowest wheel then
 * @param seasonsPlanned how many seasons the rules can be kept for, at most those asked for
 * @param lasts whether no groove reaches its limit within the seasons asked for
 * @param gains over each wheel left where it ran, then over the customary patterns
 * @param costs what each rule costs that costs anything
 * @param leftOut rules on depth that no assignment keeps even now, so that the plan is made without them
 * @param reasons why, one sentence each: what bound the choice, and what it gains
 */
public record WheelPlan(
        Map<Corner, String> wheelAt,
        List<SeasonPlan> seasons,
        double distanceKm,
        double distanceUnmovedKm,
        double spreadMm,
        int seasonsPlanned,
        boolean lasts,
        List<Gain> gains,
        List<RuleCost> costs,
        List<Rule> leftOut,
        List<Said> reasons) {
    public WheelPlan {
        wheelAt = Map.copyOf(wheelAt);
        seasons = List.copyOf(seasons);
        gains = List.copyOf(gains);
        costs = List.copyOf(costs);
        leftOut = List.copyOf(leftOut);
        reasons = List.copyOf(reasons);
    }
}
