package cornerbook.core.brake;

import cornerbook.core.brake.BrakeDetails.ParkingBrake;
import cornerbook.core.quantity.Range;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import org.jspecify.annotations.Nullable;

/**
 * The brake of one axle, a part for each line of the vehicle manufacturer's data.
 *
 * @param electricParkingBrake whether a motor moves the parking brake of this axle
 * @param padMinimumMm friction material left at which the pad is to be replaced
 * @param discMinimumMm minimum thickness of the disc (the wear limit, not the refinishing limit)
 */
public record BrakeSpecification(
        Caliper caliper,
        boolean electricParkingBrake,
        double padNewMm,
        double padMinimumMm,
        double discNewMm,
        double discMinimumMm,
        double runoutLimitMm,
        double thicknessVariationLimitMm,
        BrakeDetails details) {

    /** How the caliper reaches the outer pad. */
    public enum Caliper implements Said {
        SLIDING,
        FIXED
    }

    /** Why a kind of parking brake cannot be. */
    public enum ParkingBrakeRefusal implements Said {
        MOTOR_NOT_ELECTRIC,
        ELECTRIC_WITHOUT_MOTOR
    }

    public BrakeSpecification {
        Range.check(BrakePart.PAD_NEW, padNewMm, 1, 30, "mm");
        Range.check(BrakePart.PAD_MINIMUM, padMinimumMm, 0, padNewMm, "mm");
        Range.check(BrakePart.DISC_NEW, discNewMm, 3, 60, "mm");
        Range.check(BrakePart.DISC_MINIMUM, discMinimumMm, 1, discNewMm, "mm");
        Range.check(BrakePart.RUNOUT_LIMIT, runoutLimitMm, 0.005, 1, "mm");
        Range.check(BrakePart.THICKNESS_VARIATION_LIMIT, thicknessVariationLimitMm, 0.001, 1, "mm");
        Range.checkKnown(BrakePart.REFINISH_THICKNESS, details.refinishThicknessMm(), discMinimumMm, discNewMm, "mm");
        checkParkingBrake(details.parkingBrake(), electricParkingBrake);
    }

    /** A brake of which only the limits are known. */
    public BrakeSpecification(
            Caliper caliper,
            boolean electricParkingBrake,
            double padNewMm,
            double padMinimumMm,
            double discNewMm,
            double discMinimumMm,
            double runoutLimitMm,
            double thicknessVariationLimitMm) {
        this(
                caliper,
                electricParkingBrake,
                padNewMm,
                padMinimumMm,
                discNewMm,
                discMinimumMm,
                runoutLimitMm,
                thicknessVariationLimitMm,
                BrakeDetails.NOT_KNOWN);
    }

    private static void checkParkingBrake(@Nullable ParkingBrake kind, boolean electric) {
        if (kind == null || kind == ParkingBrake.DRUM_IN_DISC) {
            return;
        }
        boolean motor = kind == ParkingBrake.MOTOR_ON_CALIPER || kind == ParkingBrake.MOTOR_PULLING_CABLES;
        if (motor != electric) {
            throw new Refused(
                    motor ? ParkingBrakeRefusal.MOTOR_NOT_ELECTRIC : ParkingBrakeRefusal.ELECTRIC_WITHOUT_MOTOR);
        }
    }
}
