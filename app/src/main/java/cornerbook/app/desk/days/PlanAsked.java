package cornerbook.app.desk.days;

import cornerbook.app.desk.Form;
import cornerbook.core.say.Refused;
import java.time.LocalDate;

/**
 * What somebody asks of a plan.
 *
 * @param weeks how far ahead, 0 to 6; 0 is what is left of today and no other day
 * @param freePercent share of each day for cars that come without appointment, 0 to 60
 * @param withDue whether cars that are due and have no appointment get one to be agreed with their customers
 * @param withToday whether what is left of today is laid anew as well
 */
public record PlanAsked(int weeks, int freePercent, boolean withDue, boolean withToday) {
    static final int MOST_WEEKS = 6;
    static final int MOST_FREE_PERCENT = 60;

    /** Two weeks, and an hour and more of each day left for whoever comes. Common practice, no source. */
    static final PlanAsked USUAL = new PlanAsked(2, 15, false, false);

    /** What is left of today, and no other day. */
    static final PlanAsked TODAY = new PlanAsked(0, 15, false, true);

    static PlanAsked read(Form typed) {
        int weeks = number(typed.get("weeks"), 0, MOST_WEEKS, new DaysSaid.NoWeeks(1, MOST_WEEKS));
        return new PlanAsked(
                weeks,
                number(typed.get("free"), 0, MOST_FREE_PERCENT, new DaysSaid.NoShare(0, MOST_FREE_PERCENT)),
                typed.has("due"),
                weeks == 0 || typed.has("today"));
    }

    private static int number(String text, int least, int most, DaysSaid otherwise) {
        int number = text.matches("\\d{1,4}") ? Integer.parseInt(text) : -1;
        if (number < least || number > most) {
            throw new Refused(otherwise);
        }
        return number;
    }

    LocalDate first(LocalDate today) {
        return withToday ? today : today.plusDays(1);
    }

    /** The first day for a car whose customer has still to be reached. */
    LocalDate firstOfDue(LocalDate today) {
        return today.plusDays(1);
    }

    LocalDate last(LocalDate today) {
        return today.plusWeeks(weeks);
    }
}
