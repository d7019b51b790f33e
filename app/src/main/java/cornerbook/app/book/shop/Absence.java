package cornerbook.app.book.shop;

import cornerbook.core.say.Refused;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * Days on which a person who works here is not there, both counted. Why is nobody's business, so the book has no room for it.
 *
 * @param last not before the first, and within {@value #MOST_DAYS} days
 */
public record Absence(String id, String person, LocalDate first, LocalDate last) {
    public static final int MOST_DAYS = 366;

    public Absence {
        long days = ChronoUnit.DAYS.between(first, last) + 1;
        if (days < 1 || days > MOST_DAYS) {
            throw new Refused(new AbsenceSaid.NoSpan(first, last, MOST_DAYS));
        }
    }

    public boolean covers(String somebody, LocalDate day) {
        return person.equals(somebody) && !day.isBefore(first) && !day.isAfter(last);
    }
}
