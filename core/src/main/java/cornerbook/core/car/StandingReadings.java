package cornerbook.core.car;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The readings of a visit that stand: those that a later one corrects are left out. Where several stand at one place, the
 * last one counts. Whoever asks what was read at a visit asks here.
 */
public final class StandingReadings {
    private final Set<String> corrected;
    private final List<Reading> readings;

    public StandingReadings(Visit visit) {
        this(visit.readings());
    }

    /**
     * Those of these readings that stand.
     *
     * @param all readings of one visit
     */
    public StandingReadings(List<Reading> all) {
        corrected = all.stream().map(Reading::corrects).filter(Objects::nonNull).collect(Collectors.toSet());
        readings = all.stream()
                .filter(reading -> !corrected.contains(reading.id()))
                .sorted(StandingReadings::compareByPlace)
                .toList();
    }

    /** Whether a later reading of the visit stands in its place. */
    public boolean isCorrected(Reading reading) {
        return corrected.contains(reading.id());
    }

    /** By measure and place, whatever order they came in; at one place in the order in which they came into the book. */
    public List<Reading> all() {
        return readings;
    }

    /** The same of one measure. */
    public List<Reading> all(Measure measure) {
        return readings.stream().filter(reading -> reading.measure() == measure).toList();
    }

    /** What stands at the place of a reading. */
    public Optional<Reading> at(Reading place) {
        return last(place::isAtSamePlaceAs);
    }

    /** What stands at a place; null where the measure has no such thing. */
    public Optional<Reading> at(
            Measure measure, @Nullable Corner corner, @Nullable String wheelTag, @Nullable Spot spot) {
        return last(reading -> reading.measure() == measure
                && reading.corner() == corner
                && Objects.equals(reading.wheelTag(), wheelTag)
                && reading.spot() == spot);
    }

    public Optional<Reading> ofVehicle(Measure measure) {
        return last(reading -> reading.measure() == measure);
    }

    public Optional<Reading> ofCorner(Measure measure, Corner corner, @Nullable Spot spot) {
        return last(reading -> reading.measure() == measure && reading.corner() == corner && reading.spot() == spot);
    }

    /** Of a wheel, wherever it stood and at whatever spot. */
    public Optional<Reading> ofWheel(Measure measure, String wheelTag) {
        return last(reading -> reading.measure() == measure && wheelTag.equals(reading.wheelTag()));
    }

    /** Of a wheel at a spot, wherever it stood. */
    public Optional<Reading> ofWheel(Measure measure, String wheelTag, Spot spot) {
        return last(reading ->
                reading.measure() == measure && wheelTag.equals(reading.wheelTag()) && reading.spot() == spot);
    }

    /**
     * What is added up in another order comes to another last digit. A wheel may be read at two corners, one after the other.
     * Written out, as it is asked some thousand times whenever a car is judged.
     */
    private static int compareByPlace(Reading one, Reading other) {
        int order = one.measure().compareTo(other.measure());
        if (order == 0) {
            order = compareNullsFirst(one.wheelTag(), other.wheelTag());
        }
        if (order == 0 && one.wheelTag() == null) {
            order = compareNullsFirst(one.corner(), other.corner());
        }
        return order == 0 ? compareNullsFirst(one.spot(), other.spot()) : order;
    }

    private static <T extends Comparable<? super T>> int compareNullsFirst(@Nullable T one, @Nullable T other) {
        if (one == null || other == null) {
            return Boolean.compare(one != null, other != null);
        }
        return one.compareTo(other);
    }

    private Optional<Reading> last(Predicate<Reading> wanted) {
        return readings.stream().filter(wanted).reduce((first, last) -> last);
    }
}
