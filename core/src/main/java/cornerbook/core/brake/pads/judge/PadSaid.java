package cornerbook.core.brake.pads.judge;

import cornerbook.core.brake.pads.BrakeCause;
import cornerbook.core.brake.pads.BrakeSign;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import org.jspecify.annotations.Nullable;

/** What is said of pads: their thickness, how evenly they wear, and what may be behind it. */
public interface PadSaid extends Said {
    /** What a piece of evidence is. */
    enum Label implements PadSaid {
        NEW,
        INNER_AGAINST_OUTER,
        VISIT_BEFORE,
        LEADING_AGAINST_TRAILING,
        WEAR_INDICATOR,
        FOUND_BY_HAND,
        LIKELY_CAUSE
    }

    /** How something was come by. */
    enum Ground implements PadSaid {
        REJECT_ON_EDGE_LIFT,
        FOUND_BY_HAND
    }

    record NotRead(Corner corner, @Nullable Spot missing) implements PadSaid {}

    record NewTitle(Corner corner, Amount thickness) implements PadSaid {}

    record ReadTitle(Corner corner, Amount inner, Amount outer, Amount minimum) implements PadSaid {}

    /** One pad is worn out, the other was not read. */
    record OneReadTitle(Corner corner, Spot side, Amount thickness, Amount minimum) implements PadSaid {}

    record AreNew(Corner corner) implements PadSaid {}

    record BelowLegal(Corner corner) implements PadSaid {}

    record AtLimit(Corner corner) implements PadSaid {}

    record LikelyAtLimit(Corner corner) implements PadSaid {}

    record MayReachLimit(Corner corner) implements PadSaid {}

    record Enough(Corner corner) implements PadSaid {}

    record WornMore(Spot side) implements PadSaid {}

    record Wedge() implements PadSaid {}

    record IndicatorTouches() implements PadSaid {}

    record IndicatorMisplaced() implements PadSaid {}

    /** What hands found at the corner, all of it. */
    record CausesFound(Listed causes, int count) implements PadSaid {}

    record LookFirst(BrakeCause cause) implements PadSaid {}

    /** What hands found does not explain all of the wear. */
    record LookAlso(BrakeCause cause) implements PadSaid {}

    record Apart(Amount difference) implements PadSaid {}

    record ShowsFrom(Amount difference) implements PadSaid {}

    record LookedIntoFrom(Amount change) implements PadSaid {}

    record EdgesRead(Amount leading, Amount trailing) implements PadSaid {}

    record TaperedFrom(Amount difference) implements PadSaid {}

    record Seen(Spot side) implements PadSaid {}

    /** While the gauge is in the hand: below the law. */
    record NotOnTheRoad(Amount minimum) implements PadSaid {}

    /** The same of its minimum. */
    record Replace(Amount minimum) implements PadSaid {}

    record Source(Said citation) implements PadSaid {}

    record CauseChance(BrakeCause cause, Amount chance) implements PadSaid {}

    record BayesRule(Listed signs) implements PadSaid {}

    record SignSeen(BrakeSign sign) implements PadSaid {}

    /** How often the cause shows a sign, and how often corners with nothing out of order do. */
    record ShownBy(Amount often, BrakeCause cause, Amount otherwise) implements PadSaid {}

    record LiningLiftsTitle(Corner corner, Spot side) implements PadSaid {}

    record LiningLifts(Corner corner) implements PadSaid {}

    record EdgeLift(Spot side) implements PadSaid {}
}
