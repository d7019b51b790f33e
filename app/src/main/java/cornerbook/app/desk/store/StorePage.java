package cornerbook.app.desk.store;

import cornerbook.app.book.rack.Bringing;
import cornerbook.app.book.rack.KeptRack;
import cornerbook.app.book.rack.KeptSet;
import cornerbook.app.book.rack.StockLedger;
import cornerbook.app.desk.Desk;
import cornerbook.core.store.Naming;
import cornerbook.core.store.Place;
import cornerbook.core.store.Rack;
import cornerbook.core.store.StoreMap;
import cornerbook.core.store.TypedPlaces;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The store as it is: its racks, what lies there, and what lies where nobody knows.
 *
 * @param elsewhere how sets come from rooms that are elsewhere, by the name of the room as names are compared
 * @param form the rack form that was refused, else a fresh one
 */
public record StorePage(Shelves shelves, List<KeptRack> racks, Map<String, Bringing> elsewhere, RackForm form) {
    private static final int MOST_LISTED = 40;

    public StorePage {
        racks = List.copyOf(racks);
        elsewhere = Map.copyOf(elsewhere);
    }

    static StorePage of(Desk desk, RackForm form) {
        return new StorePage(
                Shelves.of(desk),
                desk.book().racks().list(),
                desk.book().bringing().listRooms(),
                form);
    }

    /** How sets come from a room; null for one that is here. */
    public @Nullable Bringing bringing(String room) {
        return elsewhere.get(StoreMap.key(room));
    }

    /** The rooms of the store. */
    public List<String> rooms() {
        return racks.stream().map(each -> each.rack().room()).distinct().toList();
    }

    public List<KeptRack> racks(String room) {
        return racks.stream().filter(each -> each.rack().room().equals(room)).toList();
    }

    /** Why a change was refused of a rack that stands no more; empty when none was. */
    public String refusedOfNone() {
        return form.isNew() ? "" : form.error();
    }

    public RackForm newForm() {
        return form.isNew() ? form : RackForm.fresh();
    }

    public String picture(Rack rack) {
        return shelves.picture(rack);
    }

    public int lyingIn(Rack rack) {
        return rack.places().stream()
                .mapToInt(place -> shelves.lyingAt(place).size())
                .sum();
    }

    public int free() {
        Map<String, Integer> lying = StockLedger.lying(shelves.sets());
        return shelves.map().places().stream()
                .mapToInt(place -> Math.max(0, place.capacity() - lying.getOrDefault(StoreMap.key(place.name()), 0)))
                .sum();
    }

    public int room() {
        return shelves.map().places().stream().mapToInt(Place::capacity).sum();
    }

    /** Sets that lie at a place that is not on the map. */
    public List<KeptSet> offMap() {
        return shelves.sets().stream()
                .filter(KeptSet::lies)
                .filter(set -> shelves.map().find(String.valueOf(set.place())).isEmpty())
                .toList();
    }

    /** Racks that the typed places could be of: also those to which sets that are on cars will come back. */
    public List<Naming> toPutOnTheMap() {
        return TypedPlaces.racks(shelves.sets().stream()
                .map(KeptSet::place)
                .flatMap(Stream::ofNullable)
                .filter(place -> shelves.map().find(place).isEmpty())
                .sorted()
                .collect(Collectors.toCollection(LinkedHashSet::new)));
    }

    /** So many are listed; the file of the stock has all. */
    public List<KeptSet> listed(List<KeptSet> sets) {
        return sets.stream().limit(MOST_LISTED).toList();
    }

    public List<KeptSet> out() {
        return shelves.sets().stream().filter(KeptSet::isOut).toList();
    }

    /** Off the car, and nobody knows where. */
    public List<KeptSet> lost() {
        return shelves.sets().stream().filter(KeptSet::isLost).toList();
    }

    public @Nullable LocalDate since(KeptSet set) {
        return shelves.since(set);
    }
}
