package cornerbook.core.sight.judge;

import cornerbook.core.car.Measure;
import cornerbook.core.car.Scale;
import cornerbook.core.finding.Subject.Part;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.sight.judge.SightSaid.Ground;
import java.util.Objects;

/**
 * What can be seen, with the part that it is told of and where its gravity comes from. A sign that is there or not, and is there,
 * is unsafe; of the others the technician says how grave they are.
 */
enum Sign {
    BULGE(Measure.TYRE_BULGE, Part.TYRE_DAMAGE, Ground.TYRE_LAW),
    CORDS(Measure.TYRE_CORDS, Part.TYRE_DAMAGE, Ground.TYRE_LAW),
    CUT(Measure.TYRE_CUT, Part.TYRE_DAMAGE, Ground.TYRE_LAW),
    AGE_CRACKS(Measure.TYRE_AGE_CRACKS, Part.TYRE_DAMAGE, Ground.COMMON_PRACTICE),
    BEAD(Measure.TYRE_BEAD, Part.TYRE_DAMAGE, Ground.COMMON_PRACTICE),
    VALVE(Measure.TYRE_VALVE, Part.TYRE_DAMAGE, Ground.TYRE_LAW),
    RIM_BENT(Measure.RIM_BENT, Part.RIM, Ground.WHEEL_LAW),
    RIM_CRACK(Measure.RIM_CRACK, Part.RIM, Ground.WHEEL_LAW),
    RIM_CORROSION(Measure.RIM_CORROSION, Part.RIM, Ground.WHEEL_LAW),
    STUDS(Measure.WHEEL_STUDS, Part.WHEEL_FASTENERS, Ground.WHEEL_LAW),
    BEARING(Measure.WHEEL_BEARING, Part.SUSPENSION, Ground.COMMON_PRACTICE),
    BALL_JOINT(Measure.BALL_JOINT, Part.SUSPENSION, Ground.SUSPENSION_LAW),
    DRIVE_SHAFT_BOOT(Measure.DRIVE_SHAFT_BOOT, Part.SUSPENSION, Ground.COMMON_PRACTICE),
    DAMPER(Measure.DAMPER, Part.SUSPENSION, Ground.SUSPENSION_LAW),
    SPRING(Measure.SPRING, Part.SUSPENSION, Ground.SUSPENSION_LAW),
    BRAKE_HOSE(Measure.BRAKE_HOSE, Part.BRAKE_LINE, Ground.BRAKE_LAW),
    BRAKE_PIPE(Measure.BRAKE_PIPE, Part.BRAKE_LINE, Ground.BRAKE_LAW),
    STRUCTURE_CORROSION(Measure.STRUCTURE_CORROSION, Part.STRUCTURE, Ground.COMMON_PRACTICE),
    LEAK(Measure.LEAK, Part.STRUCTURE, Ground.COMMON_PRACTICE),
    WIPERS(Measure.WIPERS, Part.VISIBILITY, Ground.COMMON_PRACTICE),
    WASHER(Measure.WASHER, Part.VISIBILITY, Ground.COMMON_PRACTICE),
    LIGHTS(Measure.LIGHTS, Part.VISIBILITY, Ground.COMMON_PRACTICE);

    private final Measure measure;
    private final Part part;
    private final Ground ground;

    Sign(Measure measure, Part part, Ground ground) {
        this.measure = measure;
        this.part = part;
        this.ground = ground;
    }

    Measure measure() {
        return measure;
    }

    Part part() {
        return part;
    }

    Ground ground() {
        return ground;
    }

    Scale scale() {
        return Objects.requireNonNull(measure.scale());
    }

    /** What is done about it when it may not stay: no tyre whose carcass is hurt, and no cracked rim, is repaired. */
    Todo.Action remedy() {
        return switch (this) {
            case BULGE, CORDS, CUT, AGE_CRACKS, RIM_CRACK -> Todo.Action.REPLACE;
            default -> Todo.Action.REPAIR;
        };
    }

    /**
     * What a reading comes to.
     *
     * @param value place of its word in the scale; sound is {@code HOLDS}
     */
    Verdict verdict(double value) {
        int place = scale().told(value).place();
        return place == 0 || scale() == Scale.STATE ? Verdict.values()[place] : Verdict.UNSAFE;
    }
}
