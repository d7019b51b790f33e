package cornerbook.core.wheelplan;

import static cornerbook.core.corner.Corner.LF;
import static cornerbook.core.corner.Corner.LR;
import static cornerbook.core.corner.Corner.RF;
import static cornerbook.core.corner.Corner.RR;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.say.Said;
import java.util.List;

/** The customary patterns of the trade, done at each change-over. Source: service literature (docs/methods/wheelplan.md). */
public enum RotationPattern implements Said {
    /** Front tyres go straight back, rear tyres cross to the front: front-wheel drive. */
    FORWARD_CROSS(LR, RR, RF, LF),
    /** Rear tyres go straight forward, front tyres cross to the rear: rear- and all-wheel drive. */
    REARWARD_CROSS(RR, LR, LF, RF),
    /** Front to rear on the same side: directional tyres. */
    SAME_SIDE(LR, RR, LF, RF),
    /** Left to right on the same axle: staggered sizes. */
    ACROSS(RF, LF, RR, LR);

    private final Corner fromLeftFront;
    private final Corner fromRightFront;
    private final Corner fromLeftRear;
    private final Corner fromRightRear;

    RotationPattern(Corner fromLeftFront, Corner fromRightFront, Corner fromLeftRear, Corner fromRightRear) {
        this.fromLeftFront = fromLeftFront;
        this.fromRightFront = fromRightFront;
        this.fromLeftRear = fromLeftRear;
        this.fromRightRear = fromRightRear;
    }

    /** Where the wheel of a corner goes. */
    public Corner from(Corner corner) {
        return switch (corner) {
            case LF -> fromLeftFront;
            case RF -> fromRightFront;
            case LR -> fromLeftRear;
            case RR -> fromRightRear;
        };
    }

    /** What the trade does on such a car; empty when neither side nor axle may be changed. */
    public static List<RotationPattern> customary(DriveLayout drive, boolean directional, boolean staggered) {
        if (staggered) {
            return directional ? List.of() : List.of(ACROSS);
        }
        if (directional) {
            return List.of(SAME_SIDE);
        }
        return List.of(drive == DriveLayout.FRONT ? FORWARD_CROSS : REARWARD_CROSS);
    }
}
