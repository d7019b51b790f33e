package cornerbook.core.brake;

/**
 * One reading of a dial indicator on a face.
 *
 * @param angleDegrees of the hub, from stud 1 in the direction in which the studs are numbered
 * @param valueMm away from the car is positive; where zero lies does not matter
 */
public record DialReading(double angleDegrees, double valueMm) {
    public DialReading {
        Checks.range("angle", angleDegrees, -360, 720, "°");
        Checks.range("dial reading", valueMm, -10, 10, " mm");
    }
}
