package cornerbook.core.days.plan;

import cornerbook.core.days.Skill;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import java.time.LocalDate;

/** Why a visit stands where it does in a plan. */
public interface PlanSaid extends Said {
    /** Why what was agreed cannot stay. */
    sealed interface Slipped extends PlanSaid {}

    /** The shop is closed, or has nobody at work. */
    record NobodyWorks(LocalDate day) implements Slipped {}

    record IsAway(String person, LocalDate day) implements Slipped {}

    /** Whoever works then has another car. */
    record TimeIsTaken(LocalDate day) implements Slipped {}

    /** The day has no room for it, or needs it for others that have nowhere else to go. */
    record DayIsTooFull(LocalDate day) implements Slipped {}

    /** The set that goes on lies elsewhere, and can be there from a day on. */
    record SetIsNotThere(LocalDate from) implements Slipped {}

    /** Its time is over, and its car is not here. */
    record NotHereYet(String time) implements Slipped {}

    /** Whoever was to have it is still at work on another. */
    record AnotherTakesLonger(String person, String until) implements Slipped {}

    /** Why a visit stays where it is. */
    sealed interface Stays extends PlanSaid {}

    record StaysAsAgreed() implements Stays {}

    /** It begins before the one before is done, by too little to tell anybody. */
    record StaysThoughItOverlaps(Amount by) implements Stays {}

    /** It goes on beyond the end of the day: that is for a person to say. */
    record StaysThoughItEndsLate(Amount by) implements Stays {}

    /** Who was agreed on it has not learned what it needs: that is for a person to say. */
    record StaysThoughNotTrained(String person, Skill skill) implements Stays {}

    /** Its work has begun. */
    record IsAtWork(Amount left) implements Stays {}

    /** Its car waits: it has its turn as soon as somebody is free. */
    record IsHere() implements PlanSaid {}

    /** Its car waits, and nobody has the time for it any more that day. */
    record NoRoomWhereItIs() implements PlanSaid {}

    /** The day stays, a time is new. */
    record StaysOnItsDay() implements PlanSaid {}

    /** The day stays, its time cannot. */
    record OtherTime(Slipped because) implements PlanSaid {}

    /** Its day and time stay, and somebody else does it. */
    record OtherPerson(Slipped because) implements PlanSaid {}

    record OnWishedDay() implements PlanSaid {}

    record NotOnWishedDay(LocalDate wished) implements PlanSaid {}

    record InTime(LocalDate due) implements PlanSaid {}

    /** Later than it should be. */
    record Late(LocalDate due) implements PlanSaid {}

    /** Nobody named a day. */
    record WhereRoomIs() implements PlanSaid {}

    record Moved(Slipped because) implements PlanSaid {}

    /** Nobody who works in these days has learned what it needs. */
    record NobodyHasLearned(Skill skill) implements PlanSaid {}

    /** No day of the plan has room for it. */
    record NoRoom() implements PlanSaid {}
}
