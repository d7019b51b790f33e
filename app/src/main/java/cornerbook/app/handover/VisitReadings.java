package cornerbook.app.handover;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.visit.Measure;
import cornerbook.core.visit.Reading;
import cornerbook.core.visit.Visit;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Looks up what was read in a visit; a reading that was corrected does not count. */
record VisitReadings(Visit visit) {
    private Stream<Reading> of(Measure measure) {
        var corrected = visit.readings().stream()
                .map(Reading::corrects)
                .filter(Objects::nonNull)
                .collect(Collectors.toSet());
        return visit.readings().stream()
                .filter(reading -> reading.measure() == measure && !corrected.contains(reading.id()));
    }

    boolean has(Measure measure) {
        return of(measure).findAny().isPresent();
    }

    /** The last one of a wheel. */
    Optional<Reading> lastOfWheel(Measure measure, String wheelTag) {
        return of(measure)
                .filter(reading -> wheelTag.equals(reading.wheelTag()))
                .reduce((first, last) -> last);
    }

    /** The last one of a wheel at a spot. */
    Optional<Reading> ofWheel(Measure measure, String wheelTag, Spot spot) {
        return of(measure)
                .filter(reading -> wheelTag.equals(reading.wheelTag()) && reading.spot() == spot)
                .reduce((first, last) -> last);
    }

    /** The lowest one of a wheel. */
    Optional<Reading> lowestOfWheel(Measure measure, String wheelTag) {
        return of(measure)
                .filter(reading -> wheelTag.equals(reading.wheelTag()))
                .min(Comparator.comparingDouble(Reading::value));
    }

    /** The lowest one at a corner. */
    Optional<Reading> lowestAtCorner(Measure measure, Corner corner) {
        return of(measure)
                .filter(reading -> reading.corner() == corner)
                .min(Comparator.comparingDouble(Reading::value));
    }
}
