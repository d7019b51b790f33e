package cornerbook.app.desk;

import cornerbook.app.book.Book;
import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.appointment.Plan;
import cornerbook.app.book.rack.SetElsewhere;
import cornerbook.core.days.PlannedWork;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * From when on the sets of cars are there that lie elsewhere.
 *
 * @param byCar the set of a car that comes last, by the id of the car; cars whose sets are here, or lie nowhere, are not in it
 */
public record SetsThere(Map<String, Coming> byCar) {
    public SetsThere {
        byCar = Map.copyOf(byCar);
    }

    /**
     * A set that is to come.
     *
     * @param day the first on which it can be here
     */
    public record Coming(SetElsewhere set, LocalDate day) {}

    public static SetsThere of(Book book, LocalDateTime now) {
        return of(book, book.bringing().list(), now);
    }

    /** Of one car alone. */
    public static SetsThere of(Book book, String carId, LocalDateTime now) {
        return of(book, book.bringing().listOf(carId), now);
    }

    private static SetsThere of(Book book, List<SetElsewhere> sets, LocalDateTime now) {
        if (sets.isEmpty()) {
            return new SetsThere(Map.of());
        }
        var works = book.hours().workingDays(now.toLocalDate());
        var byCar = new HashMap<String, Coming>();
        for (var set : sets) {
            if (!set.isHere()) {
                byCar.merge(
                        set.set().key().vehicleId(),
                        new Coming(set, set.comes(now, works)),
                        (one, other) -> one.day().isBefore(other.day()) ? other : one);
            }
        }
        return new SetsThere(byCar);
    }

    /** The first day on which work on a car can be, and none before another. */
    public LocalDate earliest(String carId, PlannedWork work, LocalDate notBefore) {
        return coming(carId, work)
                .map(Coming::day)
                .filter(day -> day.isAfter(notBefore))
                .orElse(notBefore);
    }

    /** The set that work on a car waits for; empty where it needs none, or has it here. */
    public Optional<Coming> coming(String carId, PlannedWork work) {
        return work.changesWheels() ? Optional.ofNullable(byCar.get(carId)) : Optional.empty();
    }

    /** The set that is not here yet on the day of a plan; null where nothing is wanting. */
    public @Nullable Coming wanting(String carId, Plan plan) {
        return coming(carId, plan.work())
                .filter(coming -> coming.day().isAfter(plan.day()))
                .orElse(null);
    }

    /** The same of an appointment in which the car is still to come. */
    public @Nullable Coming wanting(Appointment appointment) {
        return appointment.state().isOpen() ? wanting(appointment.car().id(), appointment.plan()) : null;
    }
}
