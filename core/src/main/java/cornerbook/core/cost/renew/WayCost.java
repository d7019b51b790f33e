package cornerbook.core.cost.renew;

import cornerbook.core.corner.Axle;
import org.jspecify.annotations.Nullable;

/**
 * One way and what it costs.
 *
 * @param closed why it is not open; null where it is, and the costs are those of a way that is
 * @param firstAxle whose tyres are bought first, as {@link RenewWay#TWO_AS_DUE} has it
 * @param seasons after how many the last tyre of today is gone
 * @param spent until the end of the distance looked at
 * @param chanceOfVisit that such a visit is needed before the next season
 * @param per1000Km all of it: worth now and bought, less what is left, and visits
 */
public record WayCost(
        RenewWay way,
        RenewSaid.@Nullable Closed closed,
        Axle firstAxle,
        int seasons,
        Spent spent,
        double chanceOfVisit,
        double per1000Km) {
    /**
     * What goes into the cost of a way.
     *
     * @param bought for all tyres
     * @param left worth of the tread that is left at the end
     * @param thrownAway worth of the tread on tyres that were replaced
     * @param visits expected, for visits that would not be made otherwise
     */
    public record Spent(double bought, double left, double thrownAway, double visits) {}

    public boolean isOpen() {
        return closed == null;
    }
}
