package cornerbook.app.desk.store;

import cornerbook.app.book.rack.KeptSet;
import cornerbook.app.book.visit.VisitSummary;
import cornerbook.core.store.Place;
import cornerbook.core.store.StoreMap;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The one field that a scanner types into, with what came before it.
 *
 * @param visits of today, for whose cars sets are fetched
 * @param visit the one that sets are fetched for now; null when sets are put away
 * @param hand the set whose wheel was scanned and that waits for its place; null when none does
 * @param was the set that was moved last; null when none was
 * @param place that was scanned with no set in hand; null when none was
 * @param lying at that place
 * @param error why the last scan was refused; empty when it was not
 */
public record ScanPage(
        Shelves shelves,
        List<VisitSummary> visits,
        @Nullable VisitSummary visit,
        @Nullable KeptSet hand,
        @Nullable KeptSet was,
        @Nullable Place place,
        List<KeptSet> lying,
        String error) {
    public ScanPage {
        visits = List.copyOf(visits);
        lying = List.copyOf(lying);
    }

    /** What the next scan is to be. */
    public String asks() {
        return visit != null ? "scan-to-fetch" : hand != null ? "scan-place" : "scan-wheel";
    }

    /** The sets of the car that sets are fetched for. */
    public List<KeptSet> ofCar() {
        return Optional.ofNullable(visit).stream()
                .flatMap(car -> shelves.sets().stream()
                        .filter(set -> set.key().vehicleId().equals(car.vehicleId())))
                .toList();
    }

    /** The free place for the set in hand. */
    public @Nullable Place proposal() {
        return hand == null ? null : shelves.proposal(hand);
    }

    /** Whether the set in hand lies where it is to lie. */
    public boolean liesAlready(Place at) {
        return hand != null
                && hand.lies()
                && StoreMap.key(at.name()).equals(StoreMap.key(Objects.requireNonNullElse(hand.place(), "")));
    }

    public String id() {
        return UUID.randomUUID().toString();
    }
}
