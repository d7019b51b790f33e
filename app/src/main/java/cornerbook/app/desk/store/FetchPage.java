package cornerbook.app.desk.store;

import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.rack.KeptSet;
import cornerbook.app.book.rack.SetElsewhere;
import cornerbook.core.store.Place;
import cornerbook.core.store.Walk;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The sets to fetch for a day, in the order of the shortest walk.
 *
 * @param rounds from the door and back
 * @param elsewhere sets that have to be brought first, or were and lie nowhere yet
 * @param offMap sets that lie at no place of the map, by what was written down
 * @param notHere sets of these cars that are out, or of which nobody knows where they lie
 */
public record FetchPage(
        Asked asked, Walk walk, List<List<Stop>> rounds, List<Stop> elsewhere, List<Stop> offMap, List<Stop> notHere) {
    private static final double HUNDRED = 100;

    public FetchPage {
        rounds = rounds.stream().map(List::copyOf).toList();
        elsewhere = List.copyOf(elsewhere);
        offMap = List.copyOf(offMap);
        notHere = List.copyOf(notHere);
    }

    /**
     * What is asked for.
     *
     * @param carried sets that one carries at once, as it was typed
     * @param error why that cannot be; empty when it can
     */
    public record Asked(LocalDate day, String carried, String error) {}

    public LocalDate day() {
        return asked.day();
    }

    /**
     * A set that is needed.
     *
     * @param place null when it lies at no place of the map
     * @param bringing null where it need not be brought
     */
    public record Stop(
            Appointment appointment,
            KeptSet set,
            @Nullable Place place,
            @Nullable SetElsewhere bringing) {}

    static FetchPage of(
            Asked asked, int carried, List<Appointment> appointments, Shelves shelves, List<SetElsewhere> away) {
        var awayBySet =
                away.stream().collect(Collectors.toMap(each -> each.set().key(), each -> each));
        List<Stop> elsewhere = new ArrayList<>();
        List<Stop> onMap = new ArrayList<>();
        List<Stop> offMap = new ArrayList<>();
        List<Stop> notHere = new ArrayList<>();
        for (var each : appointments) {
            for (var set : shelves.sets()) {
                if (!set.key().vehicleId().equals(each.car().id()) || set.ran().onCar()) {
                    continue;
                }
                var place = set.lies()
                        ? shelves.map().find(String.valueOf(set.place())).orElse(null)
                        : null;
                var bringing = awayBySet.get(set.key());
                (bringing != null ? elsewhere : place != null ? onMap : set.lies() ? offMap : notHere)
                        .add(new Stop(each, set, place, bringing));
            }
        }
        var walk = Walk.of(
                onMap.stream()
                        .flatMap(stop -> Optional.ofNullable(stop.place()).stream())
                        .map(Place::at)
                        .toList(),
                carried);
        return new FetchPage(
                asked,
                walk,
                walk.rounds().stream()
                        .map(round -> round.stream().map(onMap::get).toList())
                        .toList(),
                elsewhere,
                offMap,
                notHere);
    }

    public int count() {
        return rounds.stream().mapToInt(List::size).sum();
    }

    /** How much shorter a way could be at most, in whole per cent and not less than one. */
    public int atMostShorter() {
        return walk.lengthM() == 0 ? 0 : (int) Math.ceil((walk.lengthM() - walk.atLeastM()) / walk.lengthM() * HUNDRED);
    }

    /** Whether all of them lie at the door as far as the map knows: nobody has said where the racks stand. */
    public boolean saysNothing() {
        return count() > 1 && walk.lengthM() == 0;
    }
}
