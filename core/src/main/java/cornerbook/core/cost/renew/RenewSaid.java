package cornerbook.core.cost.renew;

import cornerbook.core.corner.Axle;
import cornerbook.core.quantity.AboutPart;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Chance;
import cornerbook.core.say.Said;

/** What is said of tyres that are bought by twos or by fours. */
public interface RenewSaid extends Said {
    /** What is put in, as a refusal calls it. */
    enum Input implements RenewSaid {
        FRONT_DEPTH,
        REAR_DEPTH,
        FRONT_WEAR,
        REAR_WEAR,
        SEASON_DISTANCE,
        PRICE,
        PRICE_OF_FOUR,
        VISIT,
        NEW_TREAD,
        END_TREAD,
        SPREAD,
        LIMIT
    }

    /** What is computed. */
    enum Computed implements RenewSaid {
        WORTH_NOW,
        SPREAD_OF_LOG,
        FRONT_CHANCE,
        REAR_CHANCE,
        COST,
        THROWN_AWAY
    }

    /** How it is computed, where no number goes in. */
    enum Method implements RenewSaid {
        TREAD_LEFT_OF_REPLACED
    }

    /** Where it comes from. */
    enum Origin implements RenewSaid {
        EVEN_TREAD,
        LOG_NORMAL,
        RENEWAL_REWARD
    }

    /** What to mind. */
    enum Caution implements RenewSaid {
        NEW_PAIR_AT_REAR,
        SAFETY_FIRST,
        MAKER_FIRST
    }

    /** A number of one of the ways. */
    record OfWay(Computed what, RenewWay way) implements RenewSaid {}

    /** Why a way is not open. */
    interface Closed extends RenewSaid {}

    /** The axles would differ by more than the car may. */
    record DifferTooMuch(Amount difference, Amount limit, int season) implements Closed {}

    /** A pair that would stay on is likelier to be worn before the season is over than not. */
    record WouldNotHold(Axle axle, Amount depth, Chance holds) implements Closed {}

    /** Ways that are closed by what the tyres and the rules are. */
    enum ClosedBy implements Closed {
        DEEPER_PAIR_WOULD_BE_IN_FRONT,
        SIZES_DIFFER
    }

    /** A new pair that would not last one season. */
    record NewDoesNotLast(Axle axle, Amount life, Amount season) implements RenewSaid, AboutPart {
        @Override
        public Said what() {
            return Input.NEW_TREAD;
        }
    }
}
