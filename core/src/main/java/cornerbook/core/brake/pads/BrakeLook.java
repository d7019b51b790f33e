package cornerbook.core.brake.pads;

/** Turns measurements into signs. Each threshold is common practice, no source, unless it says otherwise. */
public final class BrakeLook {
    /** From this difference on a pad is thinner than its partner. */
    private static final double PAD_DIFFERENCE_MM = 2;

    private static final double TAPER_MM = 1;
    private static final double SIDE_DIFFERENCE_MM = 2;
    /** Share of the swept face under rust from which it is not just what a night leaves. */
    private static final double RUSTY_SHARE = 0.15;

    private BrakeLook() {}

    public static BrakeSign innerAgainstOuter(double innerMm, double outerMm) {
        if (Math.abs(innerMm - outerMm) < PAD_DIFFERENCE_MM) {
            return BrakeSign.PADS_EVEN;
        }
        return innerMm < outerMm ? BrakeSign.INNER_PAD_THINNER : BrakeSign.OUTER_PAD_THINNER;
    }

    public static BrakeSign taper(double leadingEdgeMm, double trailingEdgeMm) {
        return Math.abs(leadingEdgeMm - trailingEdgeMm) < TAPER_MM ? BrakeSign.PAD_NOT_TAPERED : BrakeSign.PAD_TAPERED;
    }

    /** The thinnest pads of the two corners of an axle, with the same age. */
    public static BrakeSign leftAgainstRight(double hereMm, double otherSideMm) {
        if (Math.abs(hereMm - otherSideMm) < SIDE_DIFFERENCE_MM) {
            return BrakeSign.SIDES_EVEN;
        }
        return hereMm < otherSideMm ? BrakeSign.WORN_FASTER_THAN_OTHER_SIDE : BrakeSign.WORN_SLOWER_THAN_OTHER_SIDE;
    }

    /**
     * How far a piston came back by itself after it was moved out by 0.5 mm. It should clear the disc, so by more than the
     * runout that is allowed (makers' service advice).
     */
    public static BrakeSign pistonReturn(double returnedMm, double runoutLimitMm) {
        return returnedMm > runoutLimitMm ? BrakeSign.PISTON_RETURNS : BrakeSign.PISTON_STAYS;
    }

    /** Share of each swept face that is under rust, 0 to 1. */
    public static BrakeSign rust(double innerShare, double outerShare) {
        boolean inner = innerShare >= RUSTY_SHARE;
        boolean outer = outerShare >= RUSTY_SHARE;
        if (inner && outer) {
            return BrakeSign.BOTH_FACES_RUSTY;
        }
        return inner || outer ? BrakeSign.ONE_FACE_RUSTIER : BrakeSign.FACES_CLEAN;
    }
}
