package cornerbook.core.store;

import cornerbook.core.say.Refused;

/**
 * Where something stands on the floor, seen from the door of the store: {@code xM} to the right, {@code yM} into the store, in metres
 * from −1000 to 1000. People walk along aisles, so a way is as long as both together.
 */
public record FloorPoint(double xM, double yM) {
    public static final FloorPoint DOOR = new FloorPoint(0, 0);

    private static final int MOST_M = 1000;

    public FloorPoint {
        if (!(Math.abs(xM) <= MOST_M && Math.abs(yM) <= MOST_M)) {
            throw new Refused(new StoreSaid.MetresOutOfRange(-MOST_M, MOST_M));
        }
    }

    /** How far it is to walk to another point along aisles that stand at right angles, in metres. */
    public double walkToM(FloorPoint other) {
        return Math.abs(xM - other.xM) + Math.abs(yM - other.yM);
    }
}
