package cornerbook.app.desk.days;

import cornerbook.app.book.Book;
import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.appointment.AppointmentState;
import cornerbook.app.book.appointment.DayAsking.Wish;
import cornerbook.app.book.people.SkillLedger.Skills;
import cornerbook.app.book.shop.ShopHours;
import cornerbook.app.desk.SetsThere;
import cornerbook.core.days.Skill;
import cornerbook.core.days.plan.Now;
import cornerbook.core.days.plan.Station;
import cornerbook.core.days.plan.Wanted;
import cornerbook.core.days.plan.Wanted.Agreed;
import cornerbook.core.tool.ShopTool;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What the book has of some days: who works at which hoist, and which appointments there are.
 *
 * @param there from when on sets that lie elsewhere can be there
 */
public record DayFacts(List<Station> stations, List<Appointment> appointments, Skills skills, SetsThere there) {
    private static final int MINUTES_OF_HOUR = 60;

    public DayFacts {
        stations = List.copyOf(stations);
        appointments = List.copyOf(appointments);
    }

    /**
     * Of these days, both counted; appointments are those in which the car is still to come, or came.
     *
     * @param now at the shop
     */
    static DayFacts of(Book book, LocalDate first, LocalDate last, LocalDateTime now) {
        var hours = book.hours().list();
        var away = book.hours().listAway(first);
        var closed = book.hours().listClosed(first);
        var skills = book.skills().list();
        var hoists = book.tools().list().stream()
                .filter(tool -> tool.kind() == ShopTool.Kind.HOIST)
                .map(ShopTool::id)
                .sorted()
                .toList();
        var stations = first.datesUntil(last.plusDays(1))
                .filter(day -> !closed.containsKey(day))
                .flatMap(day -> Station.of(day, ShopHours.ofDay(hours, day, away), hoists, skills.of()).stream())
                .toList();
        var appointments = book.appointments().list(first, last).stream()
                .filter(each -> each.state().isOpen() || each.state() == AppointmentState.CAME)
                .toList();
        return new DayFacts(stations, appointments, skills, SetsThere.of(book, now));
    }

    /** The same from a moment on. */
    DayFacts left(Now now) {
        return new DayFacts(now.left(stations), appointments, skills, there);
    }

    /** What an appointment asks for: a day that a customer only asked for without a time is a wish, all else was agreed. */
    Wanted wanted(Appointment appointment, LocalDate earliest) {
        var plan = appointment.plan();
        boolean isWish = appointment.state() == AppointmentState.ASKED && plan.time() == null;
        return new Wanted(
                appointment.id(),
                plan.minutes(),
                appointment.state().isOpen() ? there.earliest(appointment.car().id(), plan.work(), earliest) : earliest,
                null,
                isWish ? Set.of(plan.day()) : Set.of(),
                skills.asked(Skill.of(plan.work(), appointment.car().mayHaveHighVoltage())),
                isWish ? null : new Agreed(plan.day(), minuteOf(plan.time()), plan.worker(), plan.hoist()));
    }

    /** The same of a day that has begun; empty where its work is done. */
    Optional<Wanted> wanted(Appointment appointment, LocalDate earliest, CarsHere here) {
        var asked = wanted(appointment, earliest);
        if (!appointment.plan().day().equals(here.today())) {
            return Optional.of(asked);
        }
        if (appointment.state() == AppointmentState.CAME) {
            return here.wanted(appointment, asked);
        }
        var agreed = asked.agreed();
        return Optional.of(
                agreed == null
                        ? asked
                        : new Wanted(
                                asked.id(),
                                asked.minutes(),
                                asked.earliest(),
                                null,
                                asked.wished(),
                                asked.needs(),
                                new Agreed(
                                        agreed.day(),
                                        agreed.start(),
                                        agreed.person(),
                                        agreed.hoist(),
                                        here.stage(appointment.plan()))));
    }

    /** The same of one that takes its room whether or not it was confirmed. */
    Wanted standing(Appointment appointment, LocalDate earliest) {
        var plan = appointment.plan();
        return new Wanted(
                appointment.id(),
                plan.minutes(),
                earliest,
                null,
                Set.of(),
                Set.of(),
                new Agreed(plan.day(), minuteOf(plan.time()), plan.worker(), plan.hoist()));
    }

    /** What a customer has picked and the shop has not answered; empty where the customer would rather be called. */
    Optional<Wanted> standing(Wish wish) {
        var day = wish.day();
        return day == null
                ? Optional.empty()
                : Optional.of(new Wanted(
                        wish.id(),
                        wish.asking().minutes(),
                        day,
                        null,
                        Set.of(),
                        skills.asked(Skill.of(
                                wish.asking().work(), wish.asking().car().mayHaveHighVoltage())),
                        new Agreed(day, minuteOf(wish.time()), null, null)));
    }

    static @Nullable Integer minuteOf(@Nullable LocalTime time) {
        return time == null ? null : time.getHour() * MINUTES_OF_HOUR + time.getMinute();
    }

    static LocalTime timeOf(int minute) {
        return LocalTime.of(minute / MINUTES_OF_HOUR, minute % MINUTES_OF_HOUR);
    }
}
