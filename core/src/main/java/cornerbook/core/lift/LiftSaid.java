package cornerbook.core.lift;

import cornerbook.core.corner.Corner;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is said about the car on the hoist. */
public interface LiftSaid extends Said {
    /** Parts of an input, and of the car's body, as a sentence names them. */
    enum Part implements LiftSaid {
        KERB_MASS,
        FRONT_SHARE,
        WHEELBASE,
        TRACK,
        GROUND_CLEARANCE,
        LIFT_POINT_HEIGHT,
        WHEEL_MASS,
        LIFT_POINTS,
        FRONT_AXLE_LOAD,
        REAR_AXLE_LOAD,
        LEFT_SHARE,
        ARM_COUNT,
        ADAPTER_HEIGHT,
        BLOCK_HEIGHT,
        ARM_RATING,
        HOIST_RATING,
        POINT_BEHIND_FRONT_AXLE,
        POINT_LEFT_OF_CENTRE,
        HEIGHT_OF_POINT,
        CLEARANCE_ON_WAY,
        HEIGHT_OF_ARM,
        HEIGHT_OF_ADAPTER,
        ADAPTER_RATING,
        DRIVE_OVER_HEIGHT,
        RAISED_PADS,
        CAR_HEIGHT,
        CEILING
    }

    /** Names of steps and evidence, and where they come from. */
    enum Label implements LiftSaid {
        CAR_ON_WHEELS,
        AXLE_LOADS_ENTERED,
        BEHIND_FRONT_AXLE,
        LEFT_OF_CENTRE,
        LEFT_OF_CENTRE_FORMULA,
        MOMENTS,
        MARGIN,
        POINT_AND_LINE,
        GEOMETRY,
        ARM_SOURCE,
        BLOCKS_AT_POINT,
        BLOCKS_ON_WAY,
        ROOM_LEFT,
        LARGER_OF_BOTH,
        SUM_OF_HEIGHTS,
        SUM_OF_HEIGHTS_AND_PLAY,
        MARGIN_OF_CENTRE,
        MARGIN_SOURCE,
        FIRST_OF_ALL,
        MAKERS_POINTS,
        RAISE_AND_ROCK,
        NOT_JUDGED,
        WHEEL_MASS_NOT_KNOWN,
        ARMS_UNDER_CAR,
        ROOM_TO_DRIVE_OVER,
        PADS_UNDER_CEILING,
        HIGHEST_PADS,
        SMALLER_OF_BOTH,
        SUM_OF_HEIGHTS_AND_GAP,
        ADAPTERS,
        PADS_UNDER_AXLES,
        KERB_MASS_ON_PLATE,
        MOST_OF_AN_ARM
    }

    /** What to mind at every lift, and what is told the customer. */
    enum Sentence implements LiftSaid {
        PADS_AT_POINTS,
        DAMAGED_HIGH_VOLTAGE,
        RAISE_AND_LOOK,
        TOO_HEAVY,
        PARTS_TOO_HEAVY,
        PADS_UNDER_AXLES,
        ARM_PLATES_NOT_READ,
        CUSTOMER_TOO_HEAVY,
        CUSTOMER_NOT_UNDER,
        CUSTOMER_NOT_OVER,
        CUSTOMER_ADAPTERS_TOO_WEAK,
        CUSTOMER_NEAR_LIMIT,
        CUSTOMER_WITHIN,
        CUSTOMER_WOULD_TIP
    }

    /** Whether the wheels are on the car while it is lifted. */
    enum Wheels implements LiftSaid {
        ON,
        OFF
    }

    /** Wheels that are off the car. */
    enum Off implements LiftSaid {
        FRONT_WHEELS,
        REAR_WHEELS
    }

    record MassOf(Said part) implements LiftSaid {}

    record PlaceBehind(Said part) implements LiftSaid {}

    record PlaceLeft(Said part) implements LiftSaid {}

    record WouldTip(Amount behind, Amount left, Amount outside) implements LiftSaid {}

    record ArmOverloaded(Corner corner, Amount load, Amount rating) implements LiftSaid {}

    /** With one pad bearing nothing. */
    record ArmUneven(Corner corner, Amount most, Amount share) implements LiftSaid {}

    record BadlyPlaced(Amount margin) implements LiftSaid {}

    record CarriesNothing(Corner corner) implements LiftSaid {}

    record FrontAndRear(Amount front, Amount rear) implements LiftSaid {}

    record PartIsOff(Said part) implements LiftSaid {}

    record AtBehindFrontAxle(Amount behind) implements LiftSaid {}

    record BehindFormula(Amount total) implements LiftSaid {}

    record ArmAt(Corner corner) implements LiftSaid {}

    record ArmFormula(Amount most) implements LiftSaid {}

    record HalfOfAxle(Amount most) implements LiftSaid {}

    record NotAhead(Corner front, Corner rear) implements LiftSaid {}

    record NotLeft(Corner left, Corner right) implements LiftSaid {}

    record NeedsBlocks(Amount blocks) implements LiftSaid {}

    record PointFormula(Amount arm, Amount adapter, Amount play, Amount point) implements LiftSaid {}

    record WayFormula(Amount arm, Amount play, Amount clearance) implements LiftSaid {}

    record OverFormula(Amount clearance, Amount over, Amount play) implements LiftSaid {}

    record WouldTouch(Amount over, Amount clearance, Amount play) implements LiftSaid {}

    record CeilingFormula(Amount ceiling, Amount gap, Amount roof, Amount point, Amount adapter) implements LiftSaid {}

    record RaiseNoHigher(Amount pads, Amount gap) implements LiftSaid {}

    record OtherArmCount(String hoist, int arms) implements LiftSaid {}

    record NotKnown(String hoist, List<Said> parts) implements LiftSaid {
        public NotKnown {
            parts = List.copyOf(parts);
        }
    }

    record UnderNotKnown(String hoist, List<Said> parts) implements LiftSaid {
        public UnderNotKnown {
            parts = List.copyOf(parts);
        }
    }

    record ArmsNotKnown(String hoist, List<Said> parts) implements LiftSaid {
        public ArmsNotKnown {
            parts = List.copyOf(parts);
        }
    }

    record PointsNotKnown(String hoist, List<Said> parts) implements LiftSaid {
        public PointsNotKnown {
            parts = List.copyOf(parts);
        }
    }

    record CeilingNotKnown(String hoist, List<Said> parts) implements LiftSaid {
        public CeilingNotKnown {
            parts = List.copyOf(parts);
        }
    }

    record PlatesNotRead(String hoist, List<Said> parts) implements LiftSaid {
        public PlatesNotRead {
            parts = List.copyOf(parts);
        }
    }

    /**
     * The car on a hoist.
     *
     * @param share the largest of a rating, with even pads
     * @param uneven the largest of an arm's, with one pad bearing nothing; null where arms are not judged
     * @param inside how far the centre of gravity lies inside the lift points; null where they are not known
     */
    record OnHoist(
            String hoist,
            Amount share,
            @Nullable Amount uneven,
            @Nullable Amount inside) implements LiftSaid {}

    record TipsOnHoist(String hoist, Amount outside) implements LiftSaid {}

    record OfRating(Amount load, Amount share, Amount rating) implements LiftSaid {}

    record EvenPads(Amount most, Amount share) implements LiftSaid {}

    record HoistWith(Wheels wheels) implements LiftSaid {}

    record CentreAt(Amount behind, Amount inside) implements LiftSaid {}

    record WithBlocks(Amount blocks) implements LiftSaid {}

    record RaisedTo(Amount pads, Amount under) implements LiftSaid {}

    record RaisedUnder(Amount ceiling, Amount roof, Amount gap) implements LiftSaid {}

    record ToSpare(Amount spare) implements LiftSaid {}

    record BlocksNeeded(Amount blocks) implements LiftSaid {}

    record Heights(Amount arm, Amount adapter, Amount point, Amount clearance, Amount play) implements LiftSaid {}

    record Source(Amount thinFrom, Amount margin) implements LiftSaid {}
}
