package cornerbook.app.picture.days;

import java.time.LocalDate;

/**
 * What a day has to do, against what it takes.
 *
 * @param cars how many are to come or came
 * @param minutes that they are expected to take
 * @param capacityMinutes that people and hoists have; 0 where nobody works
 */
public record DayLoad(LocalDate day, int cars, int minutes, int capacityMinutes) {
    /** What is asked beyond what the day takes, min; 0 where it fits. */
    public int overMinutes() {
        return Math.max(0, minutes - capacityMinutes);
    }

    /** What the day takes beside, min. */
    public int freeMinutes() {
        return Math.max(0, capacityMinutes - minutes);
    }
}
