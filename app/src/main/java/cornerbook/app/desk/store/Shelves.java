package cornerbook.app.desk.store;

import cornerbook.app.book.rack.KeptSet;
import cornerbook.app.book.rack.StockLedger;
import cornerbook.app.desk.Desk;
import cornerbook.app.picture.store.RackFront;
import cornerbook.app.request.Told;
import cornerbook.core.store.Place;
import cornerbook.core.store.PlaceChoice;
import cornerbook.core.store.Rack;
import cornerbook.core.store.StoreMap;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The map of the store with the sets of all cars.
 *
 * @param soon cars that are to come within 30 days
 * @param shop the time by which days are told
 */
public record Shelves(StoreMap map, List<KeptSet> sets, Set<String> soon, ZoneId shop) {
    /** So long before it goes on a set lies near the door. Common practice, no source. */
    private static final int SOON_DAYS = 30;

    public Shelves {
        sets = List.copyOf(sets);
        soon = Set.copyOf(soon);
    }

    static Shelves of(Desk desk) {
        return of(desk, desk.book().stock().list());
    }

    /** Where no place is proposed: the sets of all cars are not read. */
    static Shelves withoutSets(Desk desk) {
        return of(desk, List.of());
    }

    private static Shelves of(Desk desk, List<KeptSet> sets) {
        var today = desk.today();
        return new Shelves(
                desk.book().racks().map(),
                sets,
                desk.book().appointments().list(today, today.plusDays(SOON_DAYS)).stream()
                        .filter(each -> each.state().isOpen())
                        .map(each -> each.car().id())
                        .collect(Collectors.toSet()),
                desk.clock().getZone());
    }

    /** Places to which sets that are on cars will come back, as names are compared. */
    Set<String> kept() {
        return sets.stream()
                .filter(set -> set.ran().onCar())
                .flatMap(set -> Optional.ofNullable(set.place()).stream())
                .map(StoreMap::key)
                .collect(Collectors.toSet());
    }

    public List<KeptSet> lyingAt(Place place) {
        return sets.stream().filter(set -> set.liesAt(place)).toList();
    }

    /** A rack as one stands before it. */
    String picture(Rack rack) {
        var lying = StockLedger.lying(sets);
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
        return new PlaceChoice(map, StockLedger.lying(sets), kept())
                .propose(lastPlace(set), soon.contains(set.key().vehicleId()))
                .orElse(null);
    }

    private static @Nullable String lastPlace(KeptSet set) {
        var last = set.last();
        return set.place() != null ? set.place() : last == null ? null : last.from();
    }

    /** Since when it lies there, or is off the car; null when nobody knows. */
    public @Nullable LocalDate since(KeptSet set) {
        return set.since(shop).orElse(null);
    }
}
