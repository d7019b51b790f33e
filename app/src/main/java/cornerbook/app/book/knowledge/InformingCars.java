package cornerbook.app.book.knowledge;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.SequencedMap;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/**
 * Which cars a book is learned from: all of them, and of a kind of which there are very many so many that more would tell next to
 * nothing. So a book of any size is learned in bounded time and memory.
 */
public final class InformingCars {
    /** The error of a mean over so many cars is a twentieth of what cars differ by. */
    public static final int OF_A_KIND = 400;

    private InformingCars() {}

    /** What cars are learned from together: the driven axle, and the tyres of a season. */
    public record Kind(
            String drive, @Nullable String season, @Nullable String tyreModel) {}

    /**
     * Ids, in the order in which a book lists its cars.
     *
     * @param mostOfAKind from which on cars may be left out
     */
    static List<String> choose(Handle handle, int mostOfAKind) {
        var kinds = new LinkedHashMap<String, Set<Kind>>();
        handle.select(
                        "select vehicle.id, vehicle.drive, wheel_set.season, wheel.tyre_model from vehicle left join wheel_set on wheel_set.vehicle_id = vehicle.id left join wheel on wheel.vehicle_id = vehicle.id and wheel.set_id = wheel_set.id where vehicle.drive is not null order by vehicle.name, vehicle.id")
                .map((row, context) -> kinds.computeIfAbsent(row.getString("id"), id -> new LinkedHashSet<>())
                        .add(new Kind(row.getString("drive"), row.getString("season"), row.getString("tyre_model"))))
                .list();
        return choose(kinds, mostOfAKind);
    }

    /**
     * Of each kind all cars, or at least so many.
     *
     * @param kindsOfCars by the car's id
     */
    public static List<String> choose(SequencedMap<String, ? extends Collection<Kind>> kindsOfCars, int mostOfAKind) {
        var ids = new ArrayList<>(kindsOfCars.keySet());
        // In an order that has to do with nothing: a shop names and numbers its cars in the order of time.
        ids.sort(Comparator.<String>comparingInt(InformingCars::scattered).thenComparing(Comparator.naturalOrder()));
        var chosenOf = new HashMap<Kind, Integer>();
        var chosen = new LinkedHashSet<String>();
        for (var id : ids) {
            var kinds = Objects.requireNonNull(kindsOfCars.get(id));
            if (kinds.stream().anyMatch(kind -> chosenOf.getOrDefault(kind, 0) < mostOfAKind)) {
                chosen.add(id);
                kinds.forEach(kind -> chosenOf.merge(kind, 1, Integer::sum));
            }
        }
        return kindsOfCars.keySet().stream().filter(chosen::contains).toList();
    }

    /**
     * The place of a car in an order that has to do with nothing. The cars that are chosen are, of each kind, the {@link #OF_A_KIND}
     * that come first, by their ids where places are the same.
     *
     * <p>Multiplicative hashing (Knuth, The Art of Computer Programming 3, 6.4), or ids that follow each other would stay side by side.
     */
    public static int scattered(String id) {
        return Integer.reverse(id.hashCode() * 0x9E3779B1);
    }
}
