package cornerbook.app.desk.store;

import cornerbook.app.book.rack.KeptSet;
import cornerbook.app.book.rack.StockLedger;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.FreePlaces;
import cornerbook.app.picture.store.RackFront;
import cornerbook.app.request.Told;
import cornerbook.core.store.Place;
import cornerbook.core.store.Rack;
import cornerbook.core.store.StoreMap;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The map of the store with the sets of all cars.
 *
 * @param free which of its places a set is to be laid at
 * @param shop the time by which days are told
 */
public record Shelves(FreePlaces free, ZoneId shop) {
    static Shelves of(Desk desk) {
        return new Shelves(FreePlaces.of(desk), desk.clock().getZone());
    }

    /** Where no place is proposed: the sets of all cars are not read. */
    static Shelves withoutSets(Desk desk) {
        return new Shelves(FreePlaces.withoutSets(desk), desk.clock().getZone());
    }

    public StoreMap map() {
        return free.map();
    }

    public List<KeptSet> sets() {
        return free.sets();
    }

    /** Places to which sets that are on cars will come back, as names are compared. */
    Set<String> kept() {
        return free.kept();
    }

    public List<KeptSet> lyingAt(Place place) {
        return sets().stream().filter(set -> set.liesAt(place)).toList();
    }

    /** A rack as one stands before it. */
    String picture(Rack rack) {
        var lying = StockLedger.lying(sets());
        var kept = kept();
        return RackFront.svg(
                rack,
                rack.places().stream()
                        .map(place -> StoreMap.key(place.name()))
                        .map(key -> new RackFront.Filled(lying.getOrDefault(key, 0), kept.contains(key)))
                        .toList(),
                Told.reader());
    }

    /** The free place for a set; null when there is none. */
    public @Nullable Place proposal(KeptSet set) {
        return free.propose(set).orElse(null);
    }

    /** Since when it lies there, or is off the car; null when nobody knows. */
    public @Nullable LocalDate since(KeptSet set) {
        return set.since(shop).orElse(null);
    }
}
