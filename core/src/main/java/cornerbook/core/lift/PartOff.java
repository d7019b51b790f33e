package cornerbook.core.lift;

import cornerbook.core.say.Said;

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
public record PartOff(Said name, double massKg, double behindFrontAxleMm, double leftOfCentreMm) {
    public PartOff {
        check(new LiftSaid.MassOf(name), massKg, 0.1, 1500, "kg");
        check(new LiftSaid.PlaceBehind(name), behindFrontAxleMm, -1500, 6000, "mm");
        check(new LiftSaid.PlaceLeft(name), leftOfCentreMm, -1500, 1500, "mm");
    }

    /** All four wheels, each of {@code wheelKg}. */
    public static List<PartOff> wheels(double wheelKg, double wheelbaseMm) {
        return List.of(
                new PartOff(LiftSaid.Off.FRONT_WHEELS, 2 * wheelKg, 0, 0),
                new PartOff(LiftSaid.Off.REAR_WHEELS, 2 * wheelKg, wheelbaseMm, 0));
    }
}
