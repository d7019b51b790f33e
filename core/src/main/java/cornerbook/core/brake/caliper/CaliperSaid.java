package cornerbook.core.brake.caliper;

import cornerbook.core.car.Measure;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;

/** What is said of what moves and holds the pads, and of the parking brake. */
public interface CaliperSaid extends Said {
    /** What moves and holds: the pads, the shoes of a drum brake, or those of the parking brake inside a disc. */
    enum Gear {
        CALIPER,
        DRUM,
        PARKING_SHOES
    }

    /** What a piece of evidence is, or its value where that is no number. */
    enum Label implements CaliperSaid {
        PISTON_RETURN,
        ON_THE_PINS,
        SERVICE_MODE,
        IN_SERVICE_MODE,
        TRIED,
        AFTER_SERVICE,
        TRAVEL
    }

    /** How something was come by. */
    enum Ground implements CaliperSaid {
        PISTON_CLEARS_THE_DISC,
        HAND_AND_EYE,
        DRUM_GEAR,
        YEARLY_CLEANING,
        THIS_VISIT,
        TRIED_AT_THE_VISIT
    }

    /**
     * At a part that moves or holds.
     *
     * @param piston its number where pistons are told apart, else 0
     */
    record Looked(Measure measure, int piston) implements CaliperSaid {
        /** At a part that is no piston, or not told apart from others. */
        public Looked(Measure measure) {
            this(measure, 0);
        }
    }

    /**
     * How a part was found.
     *
     * @param place of the word on the scale of its measure
     * @param mended whether it was put right at the visit
     */
    record AsFound(Measure measure, int place, boolean mended) implements CaliperSaid {}

    /** By their places on the scale of movement. */
    record FoundAndLeft(int found, int left) implements CaliperSaid {}

    record Returned(Amount returned, Amount movedOut, Amount runoutAllowed) implements CaliperSaid {}

    /**
     * A part that is not as it should be.
     *
     * @param place of the word on the scale of its measure, 1 or 2
     * @param piston its number where pistons are told apart, else 0
     */
    record Fault(Measure measure, int place, int piston) implements CaliperSaid {
        /** Of a part that is no piston, or not told apart from others. */
        public Fault(Measure measure, int place) {
            this(measure, place, 0);
        }
    }

    /**
     * A part that was found worse than it was left.
     *
     * @param how of {@link FoundAndLeft}, or {@link AsFound} where it was replaced
     */
    record Mended(Looked part, CaliperSaid how) implements CaliperSaid {}

    record PistonStaysOut() implements CaliperSaid {}

    record PasteOnSlidePins() implements CaliperSaid {}

    record MovesTitle(Corner corner, Gear gear) implements CaliperSaid {}

    record Moves(Corner corner, Gear gear) implements CaliperSaid {}

    record PutRightTitle(Corner corner, Listed parts, Gear gear) implements CaliperSaid {}

    record PutRight(Corner corner, Listed parts) implements CaliperSaid {}

    record FaultsTitle(Corner corner, Listed faults, Gear gear) implements CaliperSaid {
        /** Of a caliper. */
        public FaultsTitle(Corner corner, Listed faults) {
            this(corner, faults, Gear.CALIPER);
        }
    }

    record NeedsCare(Corner corner, Listed faults, Gear gear) implements CaliperSaid {}

    record PutRightNow(Corner corner, Listed faults, Gear gear) implements CaliperSaid {}

    record DoNotDrive(Corner corner, Listed faults) implements CaliperSaid {}

    record StuckTitle(Corner corner, Spot side, boolean seized, boolean freed) implements CaliperSaid {}

    record Stuck(Corner corner, boolean seized, boolean freed) implements CaliperSaid {}

    /** Pads that were not free, or less so than before, after their guides were cleaned. */
    record LeftStuckTitle(Corner corner, boolean seized) implements CaliperSaid {}

    record LeftStuck(Corner corner, boolean seized) implements CaliperSaid {}

    record ByHand(Spot side) implements CaliperSaid {}

    /** By its place on the scale of movement. */
    record PadMoves(int place) implements CaliperSaid {}

    record ParkingBrakeTitle(ParkingBrakeState state) implements CaliperSaid {}

    record ParkingBrakeWords(ParkingBrakeState state) implements CaliperSaid {}

    record Clicks(Amount travel, Amount most) implements CaliperSaid {}

    record ParkingBrakeNotTried() implements CaliperSaid {}

    /** How the parking brake was found. */
    enum ParkingBrakeState {
        HOLDS,
        /** And its lever goes farther than it should. */
        TRAVELS_TOO_FAR,
        HOLDS_WEAKLY,
        DOES_NOT_HOLD,
        IN_SERVICE_MODE
    }
}
