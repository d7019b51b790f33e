package cornerbook.core.cost.renew;

import cornerbook.core.corner.Axle;
import org.jspecify.annotations.Nullable;

/**
 * One way and what it costs.
 *
 * @param closed why it is not open; null where it is, and the costs are those of a way that is
 * @param firstAxle whose tyres are bought first, as {@link RenewWay#TWO_AS_DUE} has it
 * @param seasons after how many the last tyre of today is gone
 * @param bought for all tyres within the distance looked at
 * @param left worth of the tread that is left at its end
 * @param thrownAway worth of the tread on tyres that were replaced
 * @param visits expected, for visits that would not be made otherwise
 * @param chanceOfVisit that such a visit is needed before the next season
 * @param per1000Km all of it: worth now and bought, less what is left, and visits
 */
public record WayCost(
        RenewWay way,
        RenewSaid.@Nullable Closed closed,
        Axle firstAxle,
        int seasons,
        double bought,
        double left,
        double thrownAway,
        double visits,
        double chanceOfVisit,
        double per1000Km) {
    public boolean isOpen() {
        return closed == null;
    }
}
