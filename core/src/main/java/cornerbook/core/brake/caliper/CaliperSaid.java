package cornerbook.core.brake.caliper;

import cornerbook.core.car.Measure;
import cornerbook.core.car.ScaleWord;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;

/** What is said of what moves and holds the pads, and of the parking brake. */
public interface CaliperSaid extends Said {
    /** What a piece of evidence is, or its value where that is no number. */
    enum Label implements CaliperSaid {
        PISTON_RETURN,
        ON_THE_PINS,
        SERVICE_MODE,
        IN_SERVICE_MODE,
        TRIED
    }

    /** How something was come by. */
    enum Ground implements CaliperSaid {
        PISTON_CLEARS_THE_DISC,
        HAND_AND_EYE,
        YEARLY_CLEANING,
        THIS_VISIT,
        TRIED_AT_THE_VISIT
    }

    record Looked(Measure measure) implements CaliperSaid {}

    record AsFound(ScaleWord found, boolean mended) implements CaliperSaid {}

    record Returned(Amount returned, Amount movedOut, Amount runoutAllowed) implements CaliperSaid {}

    /**
     * A part that is not as it should be.
     *
     * @param place of the word on the scale of its measure, 1 or 2
     */
    record Fault(Measure measure, int place) implements CaliperSaid {}

    record PistonStaysOut() implements CaliperSaid {}

    record PasteOnSlidePins() implements CaliperSaid {}

    record MovesTitle(Corner corner) implements CaliperSaid {}

    record Moves(Corner corner) implements CaliperSaid {}

    record FaultsTitle(Corner corner, Listed faults) implements CaliperSaid {}

    record NeedsCare(Corner corner, Listed faults) implements CaliperSaid {}

    record PutRightNow(Corner corner, Listed faults) implements CaliperSaid {}

    record StuckTitle(Corner corner, Spot side, boolean seized, boolean freed) implements CaliperSaid {}

    record Stuck(Corner corner, boolean seized, boolean freed) implements CaliperSaid {}

    record ByHand(Spot side) implements CaliperSaid {}

    record ParkingBrakeTitle(ParkingBrakeState state) implements CaliperSaid {}

    record ParkingBrakeWords(ParkingBrakeState state) implements CaliperSaid {}

    record ParkingBrakeNotTried() implements CaliperSaid {}

    /** How the parking brake was found. */
    enum ParkingBrakeState {
        HOLDS,
        HOLDS_WEAKLY,
        DOES_NOT_HOLD,
        IN_SERVICE_MODE
    }
}
