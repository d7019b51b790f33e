package cornerbook.app.desk.days;

import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.people.SkillLedger.Skills;
import cornerbook.core.days.Skill;
import java.util.List;

/** What an appointment needs and whoever is to work on it has not learned. */
final class Lacking {
    private Lacking() {}

    /** Empty where nobody is named, or its day is over. */
    static List<Skill> of(Skills skills, Appointment appointment) {
        var worker = appointment.plan().worker();
        return worker == null || !appointment.state().isOpen()
                ? List.of()
                : skills
                        .lacking(
                                worker,
                                Skill.of(
                                        appointment.plan().work(),
                                        appointment.car().mayHaveHighVoltage()))
                        .stream()
                        .sorted()
                        .toList();
    }
}
