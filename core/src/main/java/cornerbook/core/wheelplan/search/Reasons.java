package cornerbook.core.wheelplan.search;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Margin;
import cornerbook.core.say.Said;
import cornerbook.core.wheelplan.Gain;
import cornerbook.core.wheelplan.Gain.Interval;
import cornerbook.core.wheelplan.PlanRequest;
import cornerbook.core.wheelplan.Rule;
import cornerbook.core.wheelplan.RuleCost;
import cornerbook.core.wheelplan.search.PlanSearch.Sequence;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The sentences of a plan. */
final class Reasons {
    private static final double SAME_KM = 1;

    private Reasons() {}

    /** @param ranBefore whether any of the wheels has a corner where it ran */
    static Said choice(Sequence best, Gain gain, boolean stays, boolean ranBefore) {
        if (stays && gain.likelyKm() > 0) {
            return new PlanReason.MovingGainsLittle(km(gain.likelyKm()), spread(gain.interval()));
        }
        if (stays || best.moves() == 0) {
            return ranBefore ? PlanReason.Plainly.NO_MOVE_HELPS : PlanReason.Plainly.NONE_RAN_YET;
        }
        if (gain.gainKm() >= SAME_KM && gain.likelyKm() > 0) {
            return new PlanReason.RunsLonger(km(gain.likelyKm()), spread(gain.interval()));
        }
        return gain.gainKm() > -SAME_KM
                ? PlanReason.Plainly.FAR_EITHER_WAY
                : new PlanReason.LeavingRunsLonger(km(-gain.gainKm()));
    }

    static Said pattern(Gain gain) {
        if (gain.mayBeNone()) {
            return new PlanReason.PatternRunsAsFar(gain.over(), spread(gain.interval()));
        }
        return gain.likelyKm() > 0
                ? new PlanReason.PlanRunsLonger(gain.over(), km(gain.likelyKm()), spread(gain.interval()))
                : new PlanReason.PatternRunsLonger(gain.over(), km(-gain.likelyKm()));
    }

    static Said cost(RuleCost cost) {
        return new PlanReason.RuleCosts(cost.rule(), km(cost.costKm()));
    }

    /** Names the rules each of which, left out, would let the next season be planned too. */
    static Said rulesEnd(PlanRequest oneMore, int seasons) {
        var binding = oneMore.rules().kept().stream()
                .filter(rule -> PlanSearch.canBePlanned(
                        oneMore.withRules(oneMore.rules().without(rule))))
                .map(PlanReason.RuleThat::new)
                .toList();
        return binding.isEmpty()
                ? new PlanReason.RulesEndTogether(seasons)
                : new PlanReason.RulesEnd(seasons, Listed.or(binding));
    }

    /** Said where the plan was made without rules that cannot be kept. */
    static Said leftOut(List<Rule> rules) {
        return new PlanReason.MadeWithout(
                Listed.and(rules.stream().map(PlanReason.RuleThat::new).toList()));
    }

    private static PlanReason.@Nullable Spread spread(@Nullable Interval interval) {
        return interval == null || Math.round(interval.lowKm()) == Math.round(interval.highKm())
                ? null
                : new PlanReason.Spread(
                        new Margin(interval.lowKm(), "km", 0, false), new Margin(interval.highKm(), "km", 0, false));
    }

    private static Amount km(double distanceKm) {
        return Amount.of(distanceKm, "km");
    }
}
