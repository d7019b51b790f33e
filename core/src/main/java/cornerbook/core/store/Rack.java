package cornerbook.core.store;

import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.store.StoreSaid.Counted;
import java.util.ArrayList;
import java.util.List;

/**
 * A rack as it stands: shelves above each other, places beside each other.
 *
 * @param room as the shop calls it, at most 40 characters
 * @param first where one stands before its first place
 * @param along which way its places go from there
 * @param placeWidthM from one place to the next, 0 to 20 m
 * @param capacity sets at one place, 1 to 20
 */
public record Rack(String room, Naming naming, FloorPoint first, Along along, double placeWidthM, int capacity) {
    public static final int LONGEST_ROOM = 40;
    public static final int MOST_SETS = 20;
    private static final int WIDEST_M = 20;

    /** Which way a rack goes on from its first place. */
    public enum Along implements Said {
        RIGHT(1, 0),
        LEFT(-1, 0),
        INWARD(0, 1),
        OUTWARD(0, -1);

        private final int x;
        private final int y;

        Along(int x, int y) {
            this.x = x;
            this.y = y;
        }
    }

    public Rack {
        room = room.strip();
        if (room.isEmpty() || room.length() > LONGEST_ROOM) {
            throw new Refused(new StoreSaid.NoRoom(LONGEST_ROOM));
        }
        if (!(placeWidthM >= 0 && placeWidthM <= WIDEST_M)) {
            throw new Refused(new StoreSaid.WidthOutOfRange(WIDEST_M));
        }
        Naming.check(Counted.SETS, capacity, MOST_SETS);
        at(first, along, placeWidthM, naming.places());
    }

    /** Its places, shelf by shelf from below, each from the first one on. */
    public List<Place> places() {
        var all = new ArrayList<Place>();
        for (int shelf = 1; shelf <= naming.shelves(); shelf++) {
            for (int place = 1; place <= naming.places(); place++) {
                all.add(new Place(naming.name(shelf, place), room, at(first, along, placeWidthM, place), capacity));
            }
        }
        return all;
    }

    private static FloorPoint at(FloorPoint first, Along along, double placeWidthM, int place) {
        double awayM = (place - 1) * placeWidthM;
        return new FloorPoint(first.xM() + along.x * awayM, first.yM() + along.y * awayM);
    }
}
