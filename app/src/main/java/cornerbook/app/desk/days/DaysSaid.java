package cornerbook.app.desk.days;

import cornerbook.core.say.Said;
import java.time.LocalDate;

/** What the pages of the days refuse. */
interface DaysSaid extends Said {
    /** Something that is no time of day. */
    record NoTime(String typed) implements DaysSaid {}

    /** Something that is no number of minutes. */
    record NoMinutes(String typed) implements DaysSaid {}

    /** A hoist that the shop has not. */
    record NoHoist(String typed) implements DaysSaid {}

    /** Something that is no number of weeks. */
    record NoWeeks(int least, int most) implements DaysSaid {}

    /** Something that is no share of a day. */
    record NoShare(int least, int most) implements DaysSaid {}

    /** A day on which the set that goes on cannot be there. */
    record SetComesLater(String room, LocalDate day) implements DaysSaid {}

    /** No server is entered, or the customer has no e-mail or does not want one. */
    record NoMailToCustomer() implements DaysSaid {}

    /** A time that another has by now, or that never was offered. */
    record NotFree() implements DaysSaid {}

    /** What a plan rests on is another by now. */
    record DaysHaveChanged() implements DaysSaid {}

    /** What was left of today when a plan was made is no longer left. */
    record TodayWentOn(String time) implements DaysSaid {}

    /** No plan waits for an answer: another was asked for, or the program was started anew. */
    record NothingProposed() implements DaysSaid {}

    /** Somebody who does not work here. */
    record NoWorker(String typed) implements DaysSaid {}
}
