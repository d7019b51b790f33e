package cornerbook.app.desk.store;

import cornerbook.app.book.rack.KeptSet;
import cornerbook.app.book.rack.StockCount;
import cornerbook.app.book.rack.StockDifference;
import cornerbook.app.book.rack.StockScan;
import cornerbook.core.store.StoreMap;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Counts of the store, and one of them.
 *
 * @param counts the latest first
 * @param count that goes on or is looked at; null when none is
 * @param place that was scanned last; empty before the first
 * @param scans of it, the latest first
 * @param differences of it once it has ended
 * @param error why the last scan or answer was refused; empty when it was not
 */
public record CountPage(
        Shelves shelves,
        List<StockCount> counts,
        @Nullable StockCount count,
        String place,
        List<StockScan> scans,
        List<StockDifference> differences,
        String error) {
    private static final int SHOWN_SCANS = 8;

    public CountPage {
        counts = List.copyOf(counts);
        scans = List.copyOf(scans);
        differences = List.copyOf(differences);
    }

    public boolean goesOn() {
        return count != null && count.ended() == null;
    }

    public List<StockScan> latest() {
        return scans.stream()
                .filter(each -> !each.code().isEmpty())
                .limit(SHOWN_SCANS)
                .toList();
    }

    /** Counts but the one that is looked at. */
    public List<StockCount> others() {
        return counts.stream()
                .filter(each -> count == null || !each.id().equals(count.id()))
                .toList();
    }

    /** The kinds of which there is something. */
    public List<StockDifference.Kind> kinds() {
        return differences.stream()
                .map(StockDifference::kind)
                .distinct()
                .sorted()
                .toList();
    }

    public List<StockDifference> of(StockDifference.Kind kind) {
        return differences.stream().filter(each -> each.kind() == kind).toList();
    }

    public @Nullable KeptSet set(KeptSet.@Nullable Key key) {
        return shelves.sets().stream()
                .filter(set -> set.key().equals(key))
                .findFirst()
                .orElse(null);
    }

    /** Whether the book has the set at another place than where it was scanned. */
    public boolean isElsewhere(StockScan scan) {
        var set = set(scan.key());
        return set != null
                && !(set.lies() && StoreMap.key(String.valueOf(set.place())).equals(StoreMap.key(scan.place())));
    }

    public LocalDate day(Instant moment) {
        return LocalDate.ofInstant(moment, shelves.shop());
    }

    /** Places of the map at which nobody has looked yet, in the order of the map. */
    public List<String> notLookedAt() {
        var left = new ArrayList<String>();
        shelves.map().places().forEach(each -> left.add(each.name()));
        scans.forEach(each -> left.remove(each.place()));
        return left;
    }

    public String id() {
        return UUID.randomUUID().toString();
    }
}
