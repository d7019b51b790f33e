package cornerbook.core.torque;

import cornerbook.core.quantity.Range;

/**
 * The nuts or bolts that hold a wheel.
 *
 * @param thread as "M14×1.5"
 * @param torqueNm the vehicle manufacturer's tightening torque, clean and dry
 * @param retorqueAfterKm distance after which they are tightened again
 */
public record WheelFastener(String thread, int count, Seat seat, double torqueNm, double retorqueAfterKm) {
    /** Where nobody has looked up what the manufacturer asks: within the usual 50 to 100 km. common practice, no source. */
    public static final double USUAL_RETORQUE_AFTER_KM = 80;

    public WheelFastener {
        Range.check(TorqueSaid.Part.FASTENERS_PER_WHEEL, count, 3, 10, "");
        Range.check(TorqueSaid.Part.WHEEL_TORQUE, torqueNm, 40, 400, "N·m");
        Range.check(TorqueSaid.Part.RETORQUE_DISTANCE, retorqueAfterKm, 10, 500, "km");
    }
}
