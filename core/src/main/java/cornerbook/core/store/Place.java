package cornerbook.core.store;

/**
 * A place in the store, as its label calls it.
 *
 * @param at where one stands before it
 * @param capacity sets that lie there at most
 */
public record Place(String name, String room, FloorPoint at, int capacity) {
    /** How far it is from the door, in metres. */
    public double fromDoorM() {
        return FloorPoint.DOOR.walkToM(at);
    }
}
