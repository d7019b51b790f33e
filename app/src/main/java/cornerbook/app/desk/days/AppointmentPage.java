package cornerbook.app.desk.days;

import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.people.SkillLedger.Skills;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.SetsThere;
import cornerbook.core.days.ExpectedMinutes;
import cornerbook.core.days.PlannedWork;
import cornerbook.core.days.Skill;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * An appointment that is made or changed.
 *
 * @param turns how it stood, earliest first; empty for one that is made
 * @param typed what stands in the form
 * @param choices what may be chosen
 * @param skills what people have learned
 * @param coming its set that lies elsewhere; null where none does, or it is here
 * @param error one sentence, empty when nothing was refused
 */
public record AppointmentPage(
        LocalDate today,
        Appointment.Car car,
        List<Appointment> turns,
        Form typed,
        Choices choices,
        Skills skills,
        SetsThere.@Nullable Coming coming,
        String error) {
    public AppointmentPage {
        turns = List.copyOf(turns);
    }

    /**
     * What a day of the shop is made of.
     *
     * @param hoists by their marks
     * @param minutes how long each work takes here
     */
    public record Choices(List<String> hoists, List<String> people, Map<PlannedWork, ExpectedMinutes> minutes) {
        public Choices {
            hoists = List.copyOf(hoists);
            people = List.copyOf(people);
            minutes = Map.copyOf(minutes);
        }

        ExpectedMinutes expected(PlannedWork work) {
            return Objects.requireNonNull(minutes.get(work), work::name);
        }
    }

    /** How long a work takes here. */
    public ExpectedMinutes minutes(PlannedWork work) {
        return choices.expected(work);
    }

    /** Whether a day was typed on which the set of the car is not there yet. */
    public boolean isTooSoon() {
        return coming != null
                && !error.isEmpty()
                && !at("day").isEmpty()
                && at("day").compareTo(coming.day().toString()) < 0;
    }

    /** Whether its set is not there on the day that was agreed. */
    public boolean isNotThere() {
        return coming != null
                && agreed().state().isOpen()
                && agreed().plan().work().changesWheels()
                && coming.day().isAfter(agreed().plan().day());
    }

    public String at(String field) {
        return typed.get(field);
    }

    public boolean isNew() {
        return turns.isEmpty();
    }

    /** What it needs, as it stands, and who is to work on it has not learned. */
    public List<Skill> lacking() {
        return isNew() ? List.of() : Lacking.of(skills, agreed());
    }

    /** As it stands. */
    public Appointment agreed() {
        return turns.getLast();
    }
}
