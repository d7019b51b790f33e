package cornerbook.core.brake;

import cornerbook.core.quantity.Range;
import org.jspecify.annotations.Nullable;

/**
 * What is known of the brake of one axle beyond its limits; null for what is not.
 *
 * @param parkingBrake what holds this axle when the car stands
 * @param refinishThicknessMm thickness below which no machining of the disc may end, 1 to 60 mm
 * @param discMassKg mass of one disc, 0.5 to 50 kg
 * @param discDiameterMm outer diameter of the disc, 150 to 500 mm
 * @param discTemperatureLimitC temperature that the disc may reach, 100 to 800 °C
 * @param pistons of one caliper, 1 to 6
 * @param liningRiveted whether the lining of the shoes is riveted, so that it is read over the rivet heads; bonded where nobody says so
 * @param parkingLiningMinimumMm lining of the parking brake's shoes at which they are replaced, 0.3 to 10 mm
 */
public record BrakeDetails(
        @Nullable ParkingBrake parkingBrake,
        @Nullable Double refinishThicknessMm,
        @Nullable Double discMassKg,
        @Nullable Double discDiameterMm,
        @Nullable Double discTemperatureLimitC,
        @Nullable Integer pistons,
        @Nullable Boolean liningRiveted,
        @Nullable Double parkingLiningMinimumMm) {
    /** Nothing is known. */
    public static final BrakeDetails NOT_KNOWN = new BrakeDetails(null, null, null, null, null, null);

    /** Kinds of parking brake. */
    public enum ParkingBrake {
        /** This axle has none. */
        NONE,
        /** A lever or pedal pulls cables to the calipers. */
        CABLE,
        /** Shoes in a drum inside the disc. */
        DRUM_IN_DISC,
        /** A motor on each caliper. */
        MOTOR_ON_CALIPER,
        /** One motor pulls the cables. */
        MOTOR_PULLING_CABLES
    }

    public BrakeDetails {
        Range.checkKnown(BrakePart.REFINISH_THICKNESS, refinishThicknessMm, 1, 60, "mm");
        Range.checkKnown(BrakePart.DISC_MASS, discMassKg, 0.5, 50, "kg");
        Range.checkKnown(BrakePart.DISC_DIAMETER, discDiameterMm, 150, 500, "mm");
        Range.checkKnown(BrakePart.DISC_TEMPERATURE_LIMIT, discTemperatureLimitC, 100, 800, "°C");
        Range.checkKnown(BrakePart.PARKING_LINING_MINIMUM, parkingLiningMinimumMm, 0.3, 10, "mm");
        Range.checkKnown(BrakePart.PISTONS, pistons == null ? null : (Double) pistons.doubleValue(), 1, 6, "");
    }

    /** A brake of whose shoes nothing is known. */
    public BrakeDetails(
            @Nullable ParkingBrake parkingBrake,
            @Nullable Double refinishThicknessMm,
            @Nullable Double discMassKg,
            @Nullable Double discDiameterMm,
            @Nullable Double discTemperatureLimitC,
            @Nullable Integer pistons) {
        this(parkingBrake, refinishThicknessMm, discMassKg, discDiameterMm, discTemperatureLimitC, pistons, null, null);
    }

    /** A brake whose pistons nobody has counted. */
    public BrakeDetails(
            @Nullable ParkingBrake parkingBrake,
            @Nullable Double refinishThicknessMm,
            @Nullable Double discMassKg,
            @Nullable Double discDiameterMm,
            @Nullable Double discTemperatureLimitC) {
        this(parkingBrake, refinishThicknessMm, discMassKg, discDiameterMm, discTemperatureLimitC, null);
    }

    boolean tellsOfDisc() {
        return refinishThicknessMm != null
                || discMassKg != null
                || discDiameterMm != null
                || discTemperatureLimitC != null
                || pistons != null;
    }
}
