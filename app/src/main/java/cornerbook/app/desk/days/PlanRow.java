package cornerbook.app.desk.days;

import cornerbook.app.book.appointment.Plan;
import cornerbook.core.coming.Matter;
import cornerbook.core.days.PlannedWork;
import cornerbook.core.days.plan.PlanSaid;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What becomes of one car in a plan.
 *
 * @param id of the appointment, that there is or would be
 * @param turn of it that was seen; -1 of one that would be new
 * @param entryId of what would be stored; sent again it counts once
 * @param before how it stands; null where it has no appointment yet
 * @param after how it would stand; null where the plan has no place for it
 * @param beside what it is due for that the work does not say; empty where it has an appointment
 */
public record PlanRow(
        String id,
        int turn,
        String entryId,
        Of car,
        @Nullable Plan before,
        @Nullable Plan after,
        PlanSaid why,
        List<Matter> beside) {
    public PlanRow {
        beside = List.copyOf(beside);
    }

    /** Whose it is. */
    public record Of(
            String carId,
            String name,
            String plate,
            String customerId,
            String customer,
            @Nullable String phone) {}

    /** What happens to it, in the order in which a person has to know. */
    public enum Kind implements DaysSaid {
        NOWHERE,
        MOVED,
        OTHER_TIME,
        NEW,
        TIMED,
        /** It is here, and its turn is told: nothing of it is stored. */
        HERE,
        STAYS;

        /** Whether the plan would be stored. */
        boolean isChange() {
            return switch (this) {
                case MOVED, OTHER_TIME, NEW, TIMED -> true;
                case NOWHERE, HERE, STAYS -> false;
            };
        }
    }

    /** What a car is due for that its work does not say. */
    static List<Matter> beside(PlannedWork work, Set<Matter> matters) {
        return matters.stream()
                .filter(matter -> switch (matter) {
                    case RETORQUE, NEXT_VISIT -> false;
                    case STORED_SET -> work == PlannedWork.OTHER;
                    case TYRE_AGE, BRAKE_FLUID, WARRANTY -> true;
                })
                .sorted()
                .toList();
    }

    /** What it is moved from; null where nothing changes. */
    public @Nullable Plan shownBefore() {
        return kind() == Kind.STAYS || kind() == Kind.HERE ? null : before;
    }

    /** Whether it has an appointment that a person has to move, as the plan has no place for it. */
    public boolean isForAPerson() {
        return kind() == Kind.NOWHERE && before != null;
    }

    Kind kind() {
        if (why instanceof PlanSaid.Stays) {
            return Kind.STAYS;
        }
        if (why instanceof PlanSaid.IsHere) {
            return Kind.HERE;
        }
        if (after == null) {
            return Kind.NOWHERE;
        }
        if (before == null) {
            return Kind.NEW;
        }
        if (!before.day().equals(after.day())) {
            return Kind.MOVED;
        }
        return before.time() == null ? Kind.TIMED : Kind.OTHER_TIME;
    }
}
