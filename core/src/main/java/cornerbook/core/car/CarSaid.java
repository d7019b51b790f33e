package cornerbook.core.car;

import cornerbook.core.corner.Spot;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.util.List;

/** What is said of a car, its visits and its readings before anything is judged. */
public interface CarSaid extends Said {
    /** Numbers that have a range. */
    enum CarNumber implements CarSaid {
        AXLE_LOAD,
        PLACARD_PRESSURE,
        DEPTH_WHEN_NEW,
        ODOMETER
    }

    /**
     * An odometer that rose farther than a car drives, or ran back.
     *
     * @param by how far it rose or fell
     * @param reckoned the distance that is reckoned instead
     */
    record OdometerDoubted(boolean ranBack, Amount by, LocalDate from, LocalDate until, Amount reckoned, Amount perDay)
            implements CarSaid {}

    /** What is done at brakes by wire where others have their pedal pumped. */
    record BrakesByWireReady() implements CarSaid {}

    /** How a value was come by that stands in a reading. */
    record HowRead(String written) implements CarSaid {}

    /** The same where the gauge is known to show too much. */
    record HowReadByGauge(String written, Amount offset, String gauge) implements CarSaid {}

    record NotOnScale(Quoted written, List<Said> words) implements CarSaid {
        public NotOnScale {
            words = List.copyOf(words);
        }
    }

    record PointsAroundDisc(int points, int fewest, int most) implements CarSaid {}

    record NeedsCorner(MeasureName measure) implements CarSaid {}

    record HasNoCorner(MeasureName measure) implements CarSaid {}

    record NeedsWheel(MeasureName measure) implements CarSaid {}

    record HasNoWheel(MeasureName measure) implements CarSaid {}

    record NeedsSpot(MeasureName measure, List<Spot> spots) implements CarSaid {
        public NeedsSpot {
            spots = List.copyOf(spots);
        }
    }

    record HasNoSpot(MeasureName measure, Spot spot) implements CarSaid {}

    record OtherSpot(MeasureName measure, Spot spot, List<Spot> spots) implements CarSaid {
        public OtherSpot {
            spots = List.copyOf(spots);
        }
    }

    record CorrectionNeedsReason() implements CarSaid {}

    record TwoToolsOfAKind() implements CarSaid {}

    record VinLength(Quoted vin, int symbols, int expected) implements CarSaid {}

    record VinSymbol(Quoted vin, Quoted symbol, int position) implements CarSaid {}
}
