package cornerbook.app.bay;

import cornerbook.app.desk.Desk;
import cornerbook.app.request.Caller;
import java.util.List;
import java.util.Optional;

/**
 * Whose entries are taken from the tablet that asks.
 *
 * @param typedPin on a paired tablet those who have typed their PIN on it; empty where none is asked for
 */
record KnownPeople(Optional<List<String>> typedPin) {
    static KnownPeople onTabletThatAsks(Desk desk) {
        return new KnownPeople(
                Caller.current().tablet().map(tablet -> desk.book().devices().listWorkers(tablet.deviceId())));
    }

    /**
     * Refuses an entry of anybody else.
     *
     * @param pointer where the person stands in what was sent
     */
    void require(String person, String pointer) {
        if (!typedPin.map(known -> known.contains(person)).orElse(true)) {
            throw new RefusedEntry(pointer, new BaySaid.PinNotTyped(person));
        }
    }
}
