package cornerbook.core.lift;

import static cornerbook.core.quantity.Range.check;

import java.util.List;

/**
 * A part that is off the car while it is lifted.
 *
 * @param name as the technician calls it: "wheels front", "drive battery"
 * @param massKg above 0, up to 1500 kg
 * @param behindFrontAxleMm where its own centre of gravity was, −1500 to 6000 mm
 * @param leftOfCentreMm −1500 to 1500 mm
 */
public record PartOff(String name, double massKg, double behindFrontAxleMm, double leftOfCentreMm) {
    public PartOff {
        check("mass of the " + name, massKg, 0.1, 1500, "kg");
        check("place of the %s behind the front axle".formatted(name), behindFrontAxleMm, -1500, 6000, "mm");
        check("place of the %s left of the centre".formatted(name), leftOfCentreMm, -1500, 1500, "mm");
    }

    /** All four wheels, each of {@code wheelKg}. */
    public static List<PartOff> wheels(double wheelKg, double wheelbaseMm) {
        return List.of(
                new PartOff("front wheels", 2 * wheelKg, 0, 0),
                new PartOff("rear wheels", 2 * wheelKg, wheelbaseMm, 0));
    }
}
