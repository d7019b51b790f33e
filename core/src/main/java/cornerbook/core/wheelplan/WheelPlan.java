package cornerbook.core.wheelplan;

import cornerbook.core.corner.Corner;
import java.util.List;
import java.util.Map;

/**
 * Where each wheel of a set goes for the coming season.
 *
 * @param wheelAt wheel tag at each corner
 * @param distanceKm until the first groove reaches its limit, this way
 * @param distanceUnmovedKm the same when each wheel goes back to where it stood
 * @param reasons why, one sentence each: what bound the choice, and what it gains
 */
public record WheelPlan(
        Map<Corner, String> wheelAt, double distanceKm, double distanceUnmovedKm, List<String> reasons) {
    public WheelPlan {
        wheelAt = Map.copyOf(wheelAt);
        reasons = List.copyOf(reasons);
    }
}
