package cornerbook.app.desk;

import cornerbook.app.book.rack.KeptSet;
import cornerbook.app.book.rack.StockLedger;
import cornerbook.app.sheet.label.StorePlace;
import cornerbook.core.store.Place;
import cornerbook.core.store.PlaceChoice;
import cornerbook.core.store.StoreMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Which place of the store a set is to be laid at.
 *
 * @param soon cars that are to come within 30 days
 * @param elsewhere places from which a set has to be brought first, as names are compared
 */
public record FreePlaces(StoreMap map, List<KeptSet> sets, Set<String> soon, Set<String> elsewhere) {
    /** So long before it goes on a set lies near the door. Common practice, no source. */
    private static final int SOON_DAYS = 30;

    public FreePlaces {
        sets = List.copyOf(sets);
        soon = Set.copyOf(soon);
        elsewhere = Set.copyOf(elsewhere);
    }

    public static FreePlaces of(Desk desk) {
        return of(desk, desk.book().stock().list());
    }

    /** Where none is proposed: the sets of all cars are not read. */
    public static FreePlaces withoutSets(Desk desk) {
        return of(desk, List.of());
    }

    private static FreePlaces of(Desk desk, List<KeptSet> sets) {
        var today = desk.today();
        var map = desk.book().racks().map();
        var rooms = desk.book().bringing().listRooms().keySet();
        return new FreePlaces(
                map,
                sets,
                desk.book().appointments().list(today, today.plusDays(SOON_DAYS)).stream()
                        .filter(each -> each.state().isOpen())
                        .map(each -> each.car().id())
                        .collect(Collectors.toSet()),
                map.places().stream()
                        .filter(place -> rooms.contains(StoreMap.key(place.room())))
                        .map(place -> StoreMap.key(place.name()))
                        .collect(Collectors.toSet()));
    }

    /** Places to which sets that are on cars will come back, as names are compared. */
    public Set<String> kept() {
        return sets.stream()
                .filter(set -> set.ran().onCar())
                .flatMap(set -> Optional.ofNullable(set.place()).stream())
                .map(StoreMap::key)
                .collect(Collectors.toSet());
    }

    /** The free place for a set; empty when there is none. */
    public Optional<Place> propose(KeptSet set) {
        return propose(set, soon.contains(set.key().vehicleId()));
    }

    /** The free place for a set that was brought for its car; empty when there is none here. */
    public Optional<Place> proposeHere(KeptSet set) {
        return propose(set, true).filter(place -> !elsewhere.contains(StoreMap.key(place.name())));
    }

    /**
     * Where each of these sets lies, as its labels say it, or a place that is free for it: no two are given the same. A set that left
     * on its car keeps the place that is written down.
     */
    public Map<KeptSet.Key, StorePlace> forLabels(Predicate<KeptSet> which) {
        var lying = new HashMap<>(StockLedger.lying(sets));
        var places = new HashMap<KeptSet.Key, StorePlace>();
        for (var set : sets) {
            if (!which.test(set)) {
                continue;
            }
            var written = set.place();
            var free = set.lies() || set.ran().on() == KeptSet.On.LEFT
                    ? Optional.<Place>empty()
                    : new PlaceChoice(map, lying, kept(), elsewhere)
                            .propose(lastPlace(set), soon.contains(set.key().vehicleId()));
            if (free.isPresent()) {
                lying.merge(StoreMap.key(free.get().name()), 1, Integer::sum);
                places.put(set.key(), new StorePlace(free.get().name(), true));
            } else if (written != null) {
                places.put(set.key(), new StorePlace(written, false));
            }
        }
        return places;
    }

    private Optional<Place> propose(KeptSet set, boolean goesOnSoon) {
        return new PlaceChoice(map, StockLedger.lying(sets), kept(), elsewhere).propose(lastPlace(set), goesOnSoon);
    }

    private static @Nullable String lastPlace(KeptSet set) {
        var last = set.last();
        return set.place() != null ? set.place() : last == null ? null : last.from();
    }
}
