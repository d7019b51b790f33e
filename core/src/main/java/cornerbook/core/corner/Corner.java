package cornerbook.core.corner;

import cornerbook.core.say.Said;

/** One of the four corners of a car; left and right as seen from the driver's seat, facing forward. */
public enum Corner implements Said {
    LF(Axle.FRONT, Side.LEFT),
    RF(Axle.FRONT, Side.RIGHT),
    LR(Axle.REAR, Side.LEFT),
    RR(Axle.REAR, Side.RIGHT);

    private final Axle axle;
    private final Side side;

    Corner(Axle axle, Side side) {
        this.axle = axle;
        this.side = side;
    }

    public Axle axle() {
        return axle;
    }

    public Side side() {
        return side;
    }
}
