package cornerbook.core.wheelplan.judge;

import cornerbook.core.car.Vehicle;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.LimitTable;
import cornerbook.core.say.Said;
import cornerbook.core.wheelplan.AllWheelLimit;
import cornerbook.core.wheelplan.PlanRules;
import cornerbook.core.wheelplan.Rule;
import cornerbook.core.wheelplan.judge.DifferenceSaid.Ground;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The rules on wheels of different depth for one car: the vehicle manufacturer's where they are known, else the house
 * rule of the limits file.
 *
 * @param sameAxle greatest difference on one axle
 * @param allWheel greatest difference among the four; null when the car has no all-wheel drive or its limit is not known
 * @param deeperPair how much deeper than the rear pair the front pair may be; null when the manufacturer does not mind
 */
record DepthRules(
        Ruled sameAxle,
        @Nullable AllWheelLimit allWheel,
        @Nullable Ruled deeperPair) {
    /**
     * One of them.
     *
     * @param source citation for people
     */
    record Ruled(double limitMm, Said source, boolean houseRule) {}

    static DepthRules of(Vehicle vehicle, LimitTable limits, SeasonKind season) {
        var known = vehicle.details().differences();
        var sameAxleMm = known.sameAxleMm();
        return new DepthRules(
                sameAxleMm == null
                        ? house(limits.get(vehicle.jurisdiction(), Limit.Kind.TREAD_SAME_AXLE, season))
                        : new Ruled(sameAxleMm, Ground.MANUFACTURER, false),
                vehicle.drive() == DriveLayout.ALL ? known.allWheel() : null,
                deeperPair(
                        known.deeperPairAtRear(),
                        limits.get(vehicle.jurisdiction(), Limit.Kind.TREAD_DEEPER_PAIR, season)));
    }

    private static @Nullable Ruled deeperPair(@Nullable Boolean asked, Limit house) {
        if (asked == null) {
            return house(house);
        }
        return asked ? new Ruled(0, Ground.MANUFACTURER, false) : null;
    }

    private static Ruled house(Limit limit) {
        return new Ruled(limit.value(), limit.citation(), true);
    }

    /** What the planner keeps. */
    PlanRules planRules() {
        return new PlanRules(true, true, sameAxle.limitMm, allWheel, deeperPair == null ? null : deeperPair.limitMm);
    }

    /** Those that give way before the manufacturer's. */
    Set<Rule> ofTheHouse() {
        var rules = EnumSet.noneOf(Rule.class);
        if (sameAxle.houseRule) {
            rules.add(Rule.SAME_AXLE);
        }
        if (deeperPair != null && deeperPair.houseRule) {
            rules.add(Rule.DEEPER_PAIR_REAR);
        }
        return rules;
    }
}
