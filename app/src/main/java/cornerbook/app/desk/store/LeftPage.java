package cornerbook.app.desk.store;

import cornerbook.app.book.customer.Reach;
import cornerbook.app.book.rack.CalledAbout;
import cornerbook.app.book.rack.KeptSet;
import cornerbook.app.book.rack.StoredSets;
import cornerbook.core.coming.Purpose;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Sets that lie in the store for long, the longest first.
 *
 * @param reach who may be called about them
 * @param months for so long at least
 */
public record LeftPage(Shelves shelves, Map<String, CalledAbout> calls, Reach reach, LocalDate today, int months) {
    static final int USUAL_MONTHS = StoredSets.MONTHS_OF_A_SEASON;

    public LeftPage {
        calls = Map.copyOf(calls);
    }

    public List<Integer> choices() {
        return List.of(6, USUAL_MONTHS, 12, 18, 24);
    }

    /** Off the car since then, or longer; those that were handed out do not count. */
    public List<KeptSet> left() {
        var before = today.minusMonths(months);
        return shelves.sets().stream()
                .filter(set -> set.lies() || set.isLost())
                .filter(set -> set.since(shelves.shop())
                        .filter(day -> !day.isAfter(before))
                        .isPresent())
                .sorted(Comparator.comparing(set -> set.since(shelves.shop()).orElse(LocalDate.MIN)))
                .toList();
    }

    /** How many lie there of which nobody knows since when. */
    public int unknown() {
        return (int) shelves.sets().stream()
                .filter(KeptSet::lies)
                .filter(set -> set.since(shelves.shop()).isEmpty())
                .count();
    }

    public boolean mayCall(KeptSet set) {
        return reach.mayCall(set.owner().customerId(), Purpose.SEASON);
    }

    /** Null for a car that never had a visit. */
    public @Nullable CalledAbout called(KeptSet set) {
        return calls.get(set.key().vehicleId());
    }

    public @Nullable LocalDate calledOn(CalledAbout called) {
        return called.last() == null ? null : day(called.last().at());
    }

    private LocalDate day(Instant moment) {
        return LocalDate.ofInstant(moment, shelves.shop());
    }
}
