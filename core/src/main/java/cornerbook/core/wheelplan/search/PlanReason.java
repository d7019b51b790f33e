package cornerbook.core.wheelplan.search;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Margin;
import cornerbook.core.say.Said;
import cornerbook.core.wheelplan.Rule;
import org.jspecify.annotations.Nullable;

/** Why a wheel plan is as it is: what bound the choice, and what it gains. */
public interface PlanReason extends Said {
    /** What needs no number. */
    enum Plainly implements PlanReason {
        NO_MOVE_HELPS,
        /** The wheels have no corner to go back to. */
        NONE_RAN_YET,
        FAR_EITHER_WAY,
        /** The other way of moving the wheels: none. */
        WHEELS_LEFT
    }

    /** Where a gain lies in 90 % of the cases. */
    record Spread(Margin low, Margin high) implements PlanReason {}

    record MovingGainsLittle(Amount gain, @Nullable Spread spread) implements PlanReason {}

    record RunsLonger(Amount gain, @Nullable Spread spread) implements PlanReason {}

    record LeavingRunsLonger(Amount gain) implements PlanReason {}

    record MovesLater(int seasons) implements PlanReason {}

    record PatternRunsAsFar(Said pattern, @Nullable Spread spread) implements PlanReason {}

    record PlanRunsLonger(
            Said pattern, Amount gain, @Nullable Spread spread) implements PlanReason {}

    record PatternRunsLonger(Said pattern, Amount gain) implements PlanReason {}

    record RuleCosts(Rule rule, Amount cost) implements PlanReason {}

    /** A rule inside a sentence: "that directional tyres stay on their side". */
    record RuleThat(Rule rule) implements PlanReason {}

    record RulesEndTogether(int seasons) implements PlanReason {}

    record RulesEnd(int seasons, Said rules) implements PlanReason {}

    record MadeWithout(Said rules) implements PlanReason {}
}
