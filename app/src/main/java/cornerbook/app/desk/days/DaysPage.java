package cornerbook.app.desk.days;

import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.appointment.DayAsking.Wish;
import cornerbook.app.book.customer.Reach;
import cornerbook.app.book.people.SkillLedger.Skills;
import cornerbook.app.book.visit.VisitSummary;
import cornerbook.app.desk.SetsThere;
import cornerbook.app.picture.days.DayLoad;
import cornerbook.app.request.Told;
import cornerbook.core.days.PlannedWork;
import cornerbook.core.days.Skill;
import cornerbook.core.days.plan.PlanSaid.Slipped;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A day of the shop in its week.
 *
 * @param week Monday to Sunday
 * @param closed why the shop is closed; null when it is not
 * @param appointments of the day
 * @param walkIns visits of the day without one
 * @param skills what people have learned
 * @param beside what customers would like, and where a car fits that stands here
 */
public record DaysPage(
        LocalDate today,
        LocalDate day,
        List<DayLoad> week,
        @Nullable String closed,
        List<Appointment> appointments,
        List<VisitSummary> walkIns,
        Skills skills,
        Beside beside) {
    public DaysPage {
        week = List.copyOf(week);
        appointments = List.copyOf(appointments);
        walkIns = List.copyOf(walkIns);
    }

    /**
     * What waits for an answer beside the days.
     *
     * @param wishes of customers, whatever their day
     * @param reach who may be called
     * @param fit null where nobody asked
     * @param there from when on sets that lie elsewhere can be there
     * @param away who of the shop is not there on this day
     * @param slipping by the id of an appointment of today, why it cannot be worked on as agreed
     */
    public record Beside(
            List<Wish> wishes,
            Reach reach,
            @Nullable FitPage fit,
            SetsThere there,
            List<String> away,
            Map<String, Slipped> slipping) {
        public Beside {
            slipping = Map.copyOf(slipping);
            wishes = List.copyOf(wishes);
            away = List.copyOf(away);
        }
    }

    public Reach reach() {
        return beside.reach();
    }

    public List<PlannedWork> works() {
        return List.of(PlannedWork.values());
    }

    /** What stands in the form of where a car fits. */
    public boolean isFitFor(PlannedWork work) {
        var fit = beside.fit();
        return work == (fit == null ? PlannedWork.WHEELS_AND_BRAKES : fit.work());
    }

    public boolean isFitForHighVoltage() {
        var fit = beside.fit();
        return fit == null || fit.asked().has("voltage");
    }

    /**
     * What a day has to do.
     *
     * @param walkIns how long each car takes that came without appointment, min
     */
    static DayLoad load(LocalDate day, List<Appointment> appointments, List<Integer> walkIns, int capacityMinutes) {
        var counted = appointments.stream()
                .filter(each -> each.plan().day().equals(day) && counts(each))
                .toList();
        return new DayLoad(
                day,
                counted.size() + walkIns.size(),
                counted.stream().mapToInt(each -> each.plan().minutes()).sum()
                        + walkIns.stream().mapToInt(each -> each).sum(),
                capacityMinutes);
    }

    /** A day's name, as in the middle of a week or at its head. */
    public String weekday(LocalDate date) {
        return nameOf(date, TextStyle.FULL_STANDALONE);
    }

    public String shortWeekday(LocalDate date) {
        return nameOf(date, TextStyle.SHORT_STANDALONE);
    }

    private static String nameOf(LocalDate date, TextStyle style) {
        return date.getDayOfWeek()
                .getDisplayName(style, Told.reader().language().locale());
    }

    /** Whether whoever is to work on it is not there. */
    public boolean isWorkerAway(Appointment appointment) {
        var worker = appointment.plan().worker();
        return worker != null && appointment.state().isOpen() && beside.away().contains(worker);
    }

    /** Whether it takes time of the shop. */
    private static boolean counts(Appointment appointment) {
        return switch (appointment.state()) {
            case ASKED, BOOKED, CAME -> true;
            case MISSED, CALLED_OFF -> false;
        };
    }

    /** Whether it wants a hoist or hands at a time when another has them. */
    public boolean clashes(Appointment appointment) {
        return counts(appointment)
                && appointments.stream()
                        .anyMatch(other -> !other.id().equals(appointment.id())
                                && counts(other)
                                && appointment.plan().clashesWith(other.plan()));
    }

    /** What it needs and who is to work on it has not learned. */
    public List<Skill> lacking(Appointment appointment) {
        return Lacking.of(skills, appointment);
    }

    /** Whether somebody has to say what became of it: its day is over. */
    public boolean isLeftOpen(Appointment appointment) {
        return appointment.state().isOpen() && appointment.plan().day().isBefore(today);
    }
}
