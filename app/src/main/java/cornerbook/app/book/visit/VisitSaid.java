package cornerbook.app.book.visit;

import cornerbook.core.car.MeasureAt;
import cornerbook.core.car.Reading;
import cornerbook.core.corner.Corner;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What people are told when the book refuses something of a visit. Visits and readings are named by their ids. */
public interface VisitSaid extends Said {
    /** Nobody says by hand that a car is gone. */
    record GoneByHandOver() implements VisitSaid {}

    record NoReason() implements VisitSaid {}

    record NoWheelThere(Corner corner) implements VisitSaid {}

    /**
     * A reading by its place.
     *
     * @param corner null for one of the whole car
     */
    record ReadAt(@Nullable Corner corner, MeasureAt what, String written) implements VisitSaid {
        static ReadAt of(Reading reading) {
            return new ReadAt(reading.corner(), new MeasureAt(reading.measure(), reading.spot()), reading.asWritten());
        }
    }

    /** Something was to be moved to where another reading stands. */
    record ReadThereAlready(ReadAt there) implements VisitSaid {}

    record FastenerAt(Corner corner, String number) implements VisitSaid {}

    /** A step by its name on the bay sheet. */
    record StepTicked(String step) implements VisitSaid {}

    /** It was to be moved to where it is. */
    record NoOtherPlace() implements VisitSaid {}

    /** A form that moves things came without one. */
    record NothingToMove() implements VisitSaid {}

    /** What was entered at several corners was to go to this one. */
    record SeveralCorners(Corner corner) implements VisitSaid {}

    record PutRightMeanwhile() implements VisitSaid {}

    record ReadingElsewhere(String reading) implements VisitSaid {}

    record ReadingOtherwise(String reading) implements VisitSaid {}

    record RetorqueTooEarly(LocalDate date, Amount odometer, LocalDate earliest, Amount lowest) implements VisitSaid {}

    record RetorqueOutOfRange(Amount torque, Amount least, Amount most) implements VisitSaid {}

    record NoOpenRetorque(String visit) implements VisitSaid {}
}
