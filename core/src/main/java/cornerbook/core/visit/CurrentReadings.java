package cornerbook.core.visit;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The readings of a visit as they stand: those that a later one corrects are left out. */
final class CurrentReadings {
    private final List<Reading> readings;

    CurrentReadings(Visit visit) {
        this(visit.readings());
    }

    /** @param all readings of one visit */
    CurrentReadings(List<Reading> all) {
        var corrected =
                all.stream().map(Reading::corrects).filter(Objects::nonNull).collect(Collectors.toSet());
        readings = all.stream()
                .filter(reading -> !corrected.contains(reading.id()))
                .toList();
    }

    List<Reading> all(Measure measure) {
        return readings.stream().filter(reading -> reading.measure() == measure).toList();
    }

    Optional<Reading> ofVehicle(Measure measure) {
        return readings.stream().filter(reading -> reading.measure() == measure).reduce((first, last) -> last);
    }

    Optional<Reading> ofCorner(Measure measure, Corner corner, @Nullable Spot spot) {
        return readings.stream()
                .filter(reading -> reading.measure() == measure && reading.corner() == corner && reading.spot() == spot)
                .reduce((first, last) -> last);
    }

    Optional<Reading> ofWheel(Measure measure, String wheelTag) {
        return readings.stream()
                .filter(reading -> reading.measure() == measure && wheelTag.equals(reading.wheelTag()))
                .reduce((first, last) -> last);
    }
}
