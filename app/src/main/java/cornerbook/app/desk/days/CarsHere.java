package cornerbook.app.desk.days;

import cornerbook.app.book.Book;
import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.appointment.AppointmentState;
import cornerbook.app.book.appointment.ClockedTimes.Begun;
import cornerbook.app.book.appointment.Plan;
import cornerbook.app.book.visit.VisitState;
import cornerbook.app.book.visit.VisitSummary;
import cornerbook.core.days.ExpectedMinutes;
import cornerbook.core.days.PlannedWork;
import cornerbook.core.days.plan.Now;
import cornerbook.core.days.plan.Wanted;
import cornerbook.core.days.plan.Wanted.Agreed;
import cornerbook.core.days.plan.Wanted.Stage;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The cars that are here today and not done yet, with what is left of their work.
 *
 * @param visits by their ids
 * @param begun work that has begun, by the same
 * @param now at the shop
 */
record CarsHere(
        Map<String, VisitSummary> visits,
        Map<String, Begun> begun,
        Map<PlannedWork, ExpectedMinutes> expected,
        ZonedDateTime now) {
    private static final double SECONDS_OF_MINUTE = 60;

    /** Nobody is told a time more closely. Common practice, no source. */
    private static final int TOLD_MINUTES = 5;

    private static final int LAST_MINUTE = 24 * 60 - 1;

    static CarsHere of(Book book, ZonedDateTime now) {
        var today = now.toLocalDate();
        return new CarsHere(
                book.visits().list(today).stream()
                        .filter(visit -> visit.state() != VisitState.DONE && visit.state() != VisitState.GONE)
                        .collect(Collectors.toMap(VisitSummary::visitId, Function.identity())),
                book.clockedTimes().begun(today),
                book.clockedTimes().expected(),
                now);
    }

    LocalDate today() {
        return now.toLocalDate();
    }

    Now moment() {
        return moment(now);
    }

    /** A moment as plans know it: on the next of the minutes that people are told. */
    static Now moment(ZonedDateTime now) {
        int minute = Objects.requireNonNull(DayFacts.minuteOf(now.toLocalTime()));
        return new Now(now.toLocalDate(), Math.min(toldMinutes(minute), LAST_MINUTE));
    }

    private static int toldMinutes(int minutes) {
        return Math.ceilDiv(minutes, TOLD_MINUTES) * TOLD_MINUTES;
    }

    /** What is left of an appointment of today whose car came; empty where it is done. */
    Optional<Wanted> wanted(Appointment appointment, Wanted asked) {
        var visit = visits.get(Objects.requireNonNullElse(appointment.visitId(), ""));
        return visit == null ? Optional.empty() : Optional.of(wanted(visit, appointment.plan(), asked));
    }

    /** How far an appointment is whose car is still to come. */
    Stage stage(Plan plan) {
        return moment().stage(plan.day(), DayFacts.minuteOf(plan.time()));
    }

    /** The visits of cars that came without appointment. */
    List<VisitSummary> withoutAppointment(List<Appointment> appointments) {
        var expected = appointments.stream()
                .filter(each -> each.state() == AppointmentState.CAME)
                .map(Appointment::visitId)
                .flatMap(Stream::ofNullable)
                .collect(Collectors.toSet());
        return visits.values().stream()
                .filter(visit -> !expected.contains(visit.visitId()))
                .sorted((one, other) -> one.visitId().compareTo(other.visitId()))
                .toList();
    }

    /** What stands for an appointment of a car that came without: wheels and brakes. */
    Plan planOf(VisitSummary visit) {
        return new Plan(
                visit.date(),
                null,
                PlannedWork.WHEELS_AND_BRAKES,
                DayPlanner.minutes(PlannedWork.WHEELS_AND_BRAKES, expected),
                null,
                null,
                "");
    }

    Wanted wanted(VisitSummary visit) {
        var plan = planOf(visit);
        return wanted(
                visit, plan, new Wanted(visit.visitId(), plan.minutes(), today(), null, Set.of(), Set.of(), null));
    }

    private Wanted wanted(VisitSummary visit, Plan plan, Wanted asked) {
        if (visit.state() == VisitState.ON_THE_HOIST) {
            var work = begun.get(visit.visitId());
            return new Wanted(
                    asked.id(),
                    left(plan, work),
                    today(),
                    null,
                    Set.of(),
                    asked.needs(),
                    new Agreed(
                            today(),
                            moment().minute(),
                            work == null || work.person().isEmpty() ? plan.worker() : work.person(),
                            plan.hoist(),
                            Stage.AT_WORK));
        }
        return new Wanted(
                asked.id(),
                plan.minutes(),
                today(),
                null,
                Set.of(),
                asked.needs(),
                new Agreed(today(), startToCome(plan), plan.worker(), plan.hoist(), Stage.HERE));
    }

    /** A car whose time is over is worked on as soon as anybody is free. */
    private @Nullable Integer startToCome(Plan plan) {
        var start = DayFacts.minuteOf(plan.time());
        return start == null || start < moment().minute() ? null : start;
    }

    private int left(Plan plan, @Nullable Begun work) {
        double elapsed = work == null
                ? 0
                : Math.max(
                        0, (double) Duration.between(work.at(), now.toInstant()).toSeconds() / SECONDS_OF_MINUTE);
        return toldMinutes((int)
                Math.ceil(Objects.requireNonNull(expected.get(plan.work())).left(plan.minutes(), elapsed)));
    }
}
