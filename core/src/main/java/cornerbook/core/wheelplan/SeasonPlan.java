package cornerbook.core.wheelplan;

import cornerbook.core.corner.Corner;
import java.util.Map;

/**
 * One season of a plan.
 *
 * @param wheelAt wheel tag at each corner; a fifth wheel that stands at none is the spare
 * @param moves wheels that change their corner at its start
 * @param startKm distance from now at which it starts
 */
public record SeasonPlan(Map<Corner, String> wheelAt, int moves, double startKm) {
    public SeasonPlan {
        wheelAt = Map.copyOf(wheelAt);
    }
}
