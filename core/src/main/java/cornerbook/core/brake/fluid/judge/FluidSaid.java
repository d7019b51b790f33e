package cornerbook.core.brake.fluid.judge;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.time.LocalDate;

/** What is said of brake fluid: its boiling point, its water and its age. */
public interface FluidSaid extends Said {
    /** What a piece of evidence is. */
    enum Label implements FluidSaid {
        BOILING_POINT,
        MINIMUM_WET,
        MINIMUM_NEW,
        WATER,
        CHANGED_ON,
        INTERVAL
    }

    /** How something was come by. */
    enum Ground implements FluidSaid {
        WATER,
        MANUFACTURER,
        FLUID
    }

    /** What is not judged, as it is not known. */
    enum NotJudged implements FluidSaid {
        BOILING_POINT,
        AGE_WITHOUT_LAST_CHANGE,
        AGE_WITHOUT_INTERVAL
    }

    record Title(Listed parts) implements FluidSaid {}

    record NewAtThisVisit() implements FluidSaid {}

    record BoilsAt(Amount boils, String grade, Amount minimum) implements FluidSaid {}

    record Water(Amount share) implements FluidSaid {}

    record DueOn(LocalDate day) implements FluidSaid {}

    record Good() implements FluidSaid {}

    record TooWet() implements FluidSaid {}

    record TooOld() implements FluidSaid {}

    record DueBeforeNextVisit() implements FluidSaid {}

    record NoGrade(Amount boils) implements FluidSaid {}

    record OfWetGrade(String grade, Amount water) implements FluidSaid {}

    record OfNewGrade(String grade) implements FluidSaid {}

    record WetFrom(Amount water, Amount wet) implements FluidSaid {}

    record Years(Amount years) implements FluidSaid {}
}
