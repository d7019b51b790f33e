package cornerbook.app.demo;

import cornerbook.core.car.Measure;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What the brakes of one car of the cast show besides its pads and discs, at its latest measured visit. */
@SuppressWarnings("ImmutableEnumChecker") // every list is made by List.of
enum BrakeStory {
    /** The outer pad is stuck: its face rusts, and the piston on that side hardly comes back. */
    STUCK_PAD(
            2,
            new Told(Measure.DISC_RUST, Corner.RR, Spot.OUTER, "28 %"),
            new Told(Measure.DISC_RUST, Corner.RR, Spot.INNER, "4 %"),
            new Told(Measure.BRAKE_HARDWARE, Corner.RR, null, "worn")),
    /** A wedge: one slide pin holds. */
    TAPER(
            3,
            new Told(Measure.PAD_THICKNESS_TRAILING, Corner.LF, Spot.INNER, "6.1 mm"),
            new Told(Measure.SLIDE_PIN_MOVEMENT, Corner.LF, null, "tight")),
    /** The runout is the hub's for the most part, and is least two studs on. */
    HUB_RUNOUT(
            4,
            new Told(Measure.DISC_RUNOUT, Corner.RF, null, "35 28 7 -18 -35 -28 -7 18 µm"),
            new Told(Measure.DISC_RUNOUT_MOVED, Corner.RF, null, "14 7 -4 -13 -14 -7 4 13 µm"),
            new Told(Measure.DISC_MOVED_BY, Corner.RF, null, "2 studs")),
    /** A fixed caliper whose retaining pins are tight; a disc behind that may be machined. */
    VARIATION(
            5,
            new Told(Measure.RETAINING_PIN_MOVEMENT, Corner.LF, null, "tight"),
            new Told(
                    Measure.DISC_THICKNESS_VARIATION,
                    Corner.LR,
                    null,
                    "25.45 25.46 25.47 25.46 25.44 25.43 25.43 25.44 mm")),
    PISTON(
            7,
            new Told(Measure.PISTON_MOVEMENT, Corner.LR, null, "tight"),
            new Told(Measure.PISTON_RETURN, Corner.LR, null, "0.03 mm"),
            new Told(Measure.BRAKE_BOOTS, Corner.LR, null, "worn")),
    /** Rust lifts the friction material of a pad that is thick yet. */
    EDGE_LIFT(
            9,
            new Told(Measure.PAD_EDGE_LIFT, Corner.LR, Spot.INNER, "slight"),
            new Told(Measure.DISC_RUST, Corner.LR, Spot.INNER, "12 %"),
            new Told(Measure.DISC_RUST, Corner.LR, Spot.OUTER, "3 %")),
    WEAK_PARKING_BRAKE(10, new Told(Measure.PARKING_BRAKE_HOLDING, null, null, "holds weakly"));

    /** A reading as it is written. */
    record Told(
            Measure measure,
            @Nullable Corner corner,
            @Nullable Spot spot,
            String written) {}

    private final int car;
    private final List<Told> told;

    BrakeStory(int car, Told... told) {
        this.car = car;
        this.told = List.of(told);
    }

    /** The story of a car of the cast; empty for one whose brakes are as they should be. */
    static Optional<BrakeStory> ofCar(int number) {
        return Arrays.stream(values()).filter(story -> story.car == number).findFirst();
    }

    List<Told> told() {
        return told;
    }
}
