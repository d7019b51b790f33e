package cornerbook.core.brake.disc;

import cornerbook.core.quantity.Range;

/**
 * One reading of a dial indicator on a face.
 *
 * @param angleDegrees of the hub, from stud 1 in the direction in which the studs are numbered
 * @param valueMm away from the car is positive; where zero lies does not matter
 */
public record DialReading(double angleDegrees, double valueMm) {
    public DialReading {
        Range.check("angle", angleDegrees, -360, 720, "°");
        Range.check("dial reading", valueMm, -10, 10, "mm");
    }
}
