package cornerbook.app.bench;

import cornerbook.core.corner.Corner;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;

/** Why a calculator cannot answer, where core was not asked. */
public interface RefusalSaid extends Said {
    record Missing(Said help) implements RefusalSaid {}

    record NoNumber(Quoted typed) implements RefusalSaid {}

    record NoWholeNumber(Quoted typed) implements RefusalSaid {}

    record NoDay(Quoted typed, String example) implements RefusalSaid {}

    record NotOffered(Quoted typed, String choices) implements RefusalSaid {}

    record FrictionUnread(Quoted typed) implements RefusalSaid {}

    record WornUnread(Quoted typed) implements RefusalSaid {}

    record AcrossUnread(Quoted typed) implements RefusalSaid {}

    record MoreLeftThanNew(Quoted typed) implements RefusalSaid {}

    record PartOffUnread(Quoted typed) implements RefusalSaid {}

    record PointsUnread(Quoted typed) implements RefusalSaid {}

    record PointsLack(Corner corner, Listed all) implements RefusalSaid {}

    /** The rating of the hoist below that of one of its arms. */
    record HoistBelowArm(Amount hoist, Amount arm) implements RefusalSaid {}

    /** Refusals without facts. */
    enum Plainly implements RefusalSaid {
        CONE_AND_BALL,
        TWO_LIMITS,
        SEASON_HALF_GIVEN,
        POINTS_GIVEN_TWICE
    }
}
