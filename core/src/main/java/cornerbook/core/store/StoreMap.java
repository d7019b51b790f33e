package cornerbook.core.store;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** All places of the store by their names. Small and capital letters, and blanks at the ends, make no other name. */
public final class StoreMap {
    private final Map<String, Place> byName = new LinkedHashMap<>();

    private StoreMap() {}

    /** Of racks of which no two have a place of one name. */
    public static StoreMap of(Collection<Rack> racks) {
        var map = new StoreMap();
        for (var rack : racks) {
            for (var place : rack.places()) {
                if (map.byName.putIfAbsent(key(place.name()), place) != null) {
                    throw new IllegalArgumentException("two places are called " + place.name());
                }
            }
        }
        return map;
    }

    /** How a name is compared. */
    public static String key(String name) {
        return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    /** The place that is called so, as a person typed it or a scanner read it. */
    public Optional<Place> find(String name) {
        return Optional.ofNullable(byName.get(key(name)));
    }

    /** All places, rack by rack. */
    public List<Place> places() {
        return List.copyOf(byName.values());
    }
}
