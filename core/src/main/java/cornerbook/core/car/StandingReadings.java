package cornerbook.core.car;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * The readings of a visit that stand: those that a later one corrects are left out. Where several stand at one place, the
 * last one counts. Whoever asks what was read at a visit asks here.
 */
public final class StandingReadings {
    private static final int MEASURES = Measure.values().length;

    private final Set<String> corrected;
    /** By measure and place; at one place in the order in which they came into the book. */
    private final List<Reading> readings;
    /** Where those of each measure begin, by its ordinal, and behind them where the last end: a question walks its measure only. */
    private final int[] begins;

    public StandingReadings(Visit visit) {
        this(visit.readings());
    }

    /**
     * Those of these readings that stand.
     *
     * @param all readings of one visit
     */
    public StandingReadings(List<Reading> all) {
        corrected = new HashSet<>();
        for (var reading : all) {
            var corrects = reading.corrects();
            if (corrects != null) {
                corrected.add(corrects);
            }
        }
        begins = new int[MEASURES + 1];
        for (var reading : all) {
            if (!isCorrected(reading)) {
                begins[reading.measure().ordinal() + 1]++;
            }
        }
        for (int measure = 0; measure < MEASURES; measure++) {
            begins[measure + 1] += begins[measure];
        }
        var ordered = new Reading[begins[MEASURES]];
        var next = begins.clone();
        for (var reading : all) {
            if (!isCorrected(reading)) {
                ordered[next[reading.measure().ordinal()]++] = reading;
            }
        }
        for (int measure = 0; measure < MEASURES; measure++) {
            if (begins[measure + 1] - begins[measure] > 1) {
                Arrays.sort(ordered, begins[measure], begins[measure + 1], StandingReadings::compareByPlace);
            }
        }
        readings = List.of(ordered);
    }

    /** Whether a later reading of the visit stands in its place. */
    public boolean isCorrected(Reading reading) {
        return !corrected.isEmpty() && corrected.contains(reading.id());
    }

    /** By measure and place, whatever order they came in; at one place in the order in which they came into the book. */
    public List<Reading> all() {
        return readings;
    }

    /** The same of one measure. */
    public List<Reading> all(Measure measure) {
        return readings.subList(begins[measure.ordinal()], begins[measure.ordinal() + 1]);
    }

    /** What stands at the place of a reading. */
    public Optional<Reading> at(Reading place) {
        return last(place.measure(), place::isAtSamePlaceAs);
    }

    /** What stands at a place; null where the measure has no such thing. */
    public Optional<Reading> at(
            Measure measure, @Nullable Corner corner, @Nullable String wheelTag, @Nullable Spot spot) {
        return last(
                measure,
                reading -> reading.corner() == corner
                        && Objects.equals(reading.wheelTag(), wheelTag)
                        && reading.spot() == spot);
    }

    public Optional<Reading> ofVehicle(Measure measure) {
        return last(measure, reading -> true);
    }

    public Optional<Reading> ofCorner(Measure measure, Corner corner, @Nullable Spot spot) {
        return last(measure, reading -> reading.corner() == corner && reading.spot() == spot);
    }

    /** Of a wheel, wherever it stood and at whatever spot. */
    public Optional<Reading> ofWheel(Measure measure, String wheelTag) {
        return last(measure, reading -> wheelTag.equals(reading.wheelTag()));
    }

    /** Of a wheel at a spot, wherever it stood. */
    public Optional<Reading> ofWheel(Measure measure, String wheelTag, Spot spot) {
        return last(measure, reading -> wheelTag.equals(reading.wheelTag()) && reading.spot() == spot);
    }

    /**
     * Of readings of one measure. What is added up in another order comes to another last digit. A wheel may be read at two corners, one after the other.
     * Written out, as it is asked some thousand times whenever a car is judged.
     */
    private static int compareByPlace(Reading one, Reading other) {
        int order = compareNullsFirst(one.wheelTag(), other.wheelTag());
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

    private Optional<Reading> last(Measure measure, Predicate<Reading> wanted) {
        for (int place = begins[measure.ordinal() + 1] - 1; place >= begins[measure.ordinal()]; place--) {
            var reading = readings.get(place);
            if (wanted.test(reading)) {
                return Optional.of(reading);
            }
        }
        return Optional.empty();
    }
}
