package cornerbook.core.store;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Which free place a set goes to. The rule, in this order (common practice, no source):
 *
 * <ol>
 *   <li>the place where it lay before, when that is on the map and free: people find it there without looking; not one in a store
 *       elsewhere when it goes on soon;
 *   <li>the tenth of all places that is nearest to the door is for sets that go on soon; such a set takes the nearest of them;
 *   <li>any other set takes the nearest place behind that tenth, and one of that tenth only when nothing else is free;
 *   <li>a place to which the set on a car will come back is taken last, and one in a store elsewhere after all that are here.
 * </ol>
 *
 * @param map of the store
 * @param lying how many sets lie at a place, by {@link StoreMap#key}; a place that is not there is empty
 * @param kept places to which sets that are on cars will come back, by {@link StoreMap#key}
 * @param elsewhere places from which a set has to be brought first, by {@link StoreMap#key}
 */
public record PlaceChoice(StoreMap map, Map<String, Integer> lying, Set<String> kept, Set<String> elsewhere) {
    private static final double NEAR_DOOR = 0.1;

    public PlaceChoice {
        lying = Map.copyOf(lying);
        kept = Set.copyOf(kept);
        elsewhere = Set.copyOf(elsewhere);
    }

    /**
     * The place for a set.
     *
     * @param before where it lay before, as it was written; null when nobody knows
     * @param soon whether it goes on a car soon
     * @return empty when nothing is free
     */
    public Optional<Place> propose(@Nullable String before, boolean soon) {
        var own = Optional.ofNullable(before)
                .flatMap(map::find)
                .filter(this::isFree)
                .filter(place -> !soon || isHere(place));
        if (own.isPresent()) {
            return own;
        }
        var nearestFirst = new ArrayList<>(map.places());
        nearestFirst.sort(Comparator.comparing((Place place) -> !isHere(place)).thenComparingDouble(Place::fromDoorM));
        int near = (int) Math.ceil(nearestFirst.stream().filter(this::isHere).count() * NEAR_DOOR);
        var turn = new ArrayList<Place>();
        turn.addAll(soon ? nearestFirst : nearestFirst.subList(near, nearestFirst.size()));
        turn.addAll(soon ? List.of() : nearestFirst.subList(0, near));
        return turn.stream()
                .filter(this::isFree)
                .min(Comparator.comparing((Place place) -> !isHere(place))
                        .thenComparing(place -> kept.contains(StoreMap.key(place.name()))));
    }

    private boolean isHere(Place place) {
        return !elsewhere.contains(StoreMap.key(place.name()));
    }

    /** Whether another set has room there. */
    public boolean isFree(Place place) {
        return lying.getOrDefault(StoreMap.key(place.name()), 0) < place.capacity();
    }
}
