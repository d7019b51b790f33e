package cornerbook.app.desk.store;

import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.rack.SetElsewhere;
import cornerbook.app.book.rack.SetElsewhere.Step;
import cornerbook.core.store.Place;
import java.time.LocalDate;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Sets that have to be brought from a store elsewhere.
 *
 * @param until appointments up to this day are looked at
 * @param rows by the day on which they have to be asked for, then by the day of the appointment
 * @param error one sentence, empty when nothing was refused
 */
public record BringPage(LocalDate today, LocalDate until, List<Row> rows, String error) {
    public BringPage {
        rows = List.copyOf(rows);
    }

    /**
     * A set.
     *
     * @param appointment that it has to be here for; null where its car has none in these days
     * @param askBy last day on which it can be asked for in time; null without appointment
     * @param comes the first day on which it can be here
     * @param free place here where it can be laid; null where none is
     */
    public record Row(
            SetElsewhere elsewhere,
            @Nullable Appointment appointment,
            @Nullable LocalDate askBy,
            LocalDate comes,
            @Nullable Place free) {
        /** Whether it comes after the day on which it has to be here. */
        public boolean isLate() {
            return appointment != null && comes.isAfter(appointment.plan().day());
        }
    }

    /** Those at a step. */
    public List<Row> rows(Step step) {
        return rows.stream().filter(row -> row.elsewhere().step() == step).toList();
    }

    /** The days on which sets have to be asked for; what is overdue has to be today. */
    public List<LocalDate> days() {
        var days = new TreeSet<LocalDate>();
        rows(Step.NOT_ASKED).forEach(row -> days.add(day(row)));
        return List.copyOf(days);
    }

    /** Those that have to be asked for on a day. */
    public List<Row> rows(LocalDate day) {
        return rows(Step.NOT_ASKED).stream().filter(row -> day(row).equals(day)).toList();
    }

    private LocalDate day(Row row) {
        var askBy = row.askBy();
        return askBy == null || askBy.isBefore(today) ? today : askBy;
    }
}
