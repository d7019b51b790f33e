package cornerbook.app.desk;

import cornerbook.app.book.rack.KeptSet;
import cornerbook.app.book.rack.StockLedger;
import cornerbook.core.store.Place;
import cornerbook.core.store.PlaceChoice;
import cornerbook.core.store.StoreMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Which place of the store a set is to be laid at.
 *
 * @param soon cars that are to come within 30 days
 */
public record FreePlaces(StoreMap map, List<KeptSet> sets, Set<String> soon) {
    /** So long before it goes on a set lies near the door. Common practice, no source. */
    private static final int SOON_DAYS = 30;

    public FreePlaces {
        sets = List.copyOf(sets);
        soon = Set.copyOf(soon);
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
        return new FreePlaces(
                desk.book().racks().map(),
                sets,
                desk.book().appointments().list(today, today.plusDays(SOON_DAYS)).stream()
                        .filter(each -> each.state().isOpen())
                        .map(each -> each.car().id())
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
        return new PlaceChoice(map, StockLedger.lying(sets), kept())
                .propose(lastPlace(set), soon.contains(set.key().vehicleId()));
    }

    private static @Nullable String lastPlace(KeptSet set) {
        var last = set.last();
        return set.place() != null ? set.place() : last == null ? null : last.from();
    }
}
