package cornerbook.app.desk.visit;

import cornerbook.core.corner.Corner;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.season.LikelyOdometer;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the pages of a visit may have to say. */
sealed interface VisitSaid extends Said {
    /** The fasteners of one wheel that were ticked as tightened. */
    record FastenersAt(Corner corner, int n) implements VisitSaid {}

    /**
     * The wheels of a visit were tightened again.
     *
     * @param odometer null where nobody read it
     * @param torque the lowest that was read; null where the one that is asked for was confirmed
     * @param person null where nobody was named
     */
    record TightenedAgain(
            LocalDate day,
            @Nullable Amount odometer,
            @Nullable Amount torque,
            @Nullable String person) implements VisitSaid {}

    /** A visit that this one must lie behind, or before. */
    record Neighbour(boolean before, LocalDate day, Amount km) implements VisitSaid {}

    /** The form was made for other wheels. */
    record WheelsChanged() implements VisitSaid {}

    record NeverDeleted() implements VisitSaid {}

    /** Why the wheels that a car leaves on are others. */
    record RecordedAnew() implements VisitSaid {}

    record NameMissing() implements VisitSaid {}

    /**
     * A stored reading changes only with a reason.
     *
     * @param meanwhile whether it was stored after the form was opened
     * @param stored as it was written
     */
    record SayWhy(boolean meanwhile, Said stored) implements VisitSaid {}

    record FourWheels() implements VisitSaid {}

    /** What an odometer may have read. */
    record Likely(Amount odometer, LikelyOdometer.Slip slip) implements VisitSaid {}

    record ItIsSo(Amount odometer) implements VisitSaid {}

    /**
     * What to do with a wheel that is another than it should be.
     *
     * @param stop why it stops
     * @param carrier wheel whose sensor it shows; null where none is known
     * @param place where the right one lies; null where it is not known
     */
    record LeaveItOff(
            Said stop,
            @Nullable String carrier,
            String tag,
            @Nullable String place) implements VisitSaid {}

    /** No wrench of the shop can have set a torque. */
    record NoWrenchSets(Amount torque, List<Said> wrenches) implements VisitSaid {}

    record WrenchDue(String wrench, LocalDate due) implements VisitSaid {}

    record WrenchGoes(String wrench, Amount lowest, Amount highest) implements VisitSaid {}
}
