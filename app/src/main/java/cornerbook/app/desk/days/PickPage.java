package cornerbook.app.desk.days;

import cornerbook.app.book.appointment.DayAsking;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a customer chooses a day from, in the language of the customer or of the browser, without the shop's own pages around it.
 *
 * @param action where the choice is sent
 * @param wish what was chosen before; null before anything was
 * @param days what is free
 * @param error why a choice came back; empty when it did not
 */
public record PickPage(
        String action,
        DayAsking asking,
        DayAsking.@Nullable Wish wish,
        List<DayOffers.OfferedDay> days,
        Reader reader,
        String shop,
        String error) {
    public PickPage {
        days = List.copyOf(days);
    }

    public Labels labels() {
        return reader.labels("app/desk/days");
    }

    public String language() {
        return reader.language().tag();
    }

    public String newId() {
        return UUID.randomUUID().toString();
    }

    public String weekday(LocalDate day) {
        return day.getDayOfWeek()
                .getDisplayName(TextStyle.FULL_STANDALONE, reader.language().locale());
    }

    /** As it is sent, "2026-12-01T09:00". */
    public String value(LocalDate day, int start) {
        return day.atTime(DayFacts.timeOf(start)).toString();
    }

    public String time(int start) {
        return DayFacts.timeOf(start).toString();
    }

    /** Whether the shop has confirmed it, or spoken with the customer. */
    public boolean isAnswered() {
        return wish != null && wish.answered();
    }
}
