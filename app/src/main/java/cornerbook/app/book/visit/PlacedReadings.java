package cornerbook.app.book.visit;

import cornerbook.app.book.car.CarWriter;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WorkStep;
import cornerbook.core.corner.Corner;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/**
 * What was read of wheels out of the store before anybody knew where they go: as soon as they are on the car, it is read at
 * their corners there. Runs inside the caller's transaction.
 */
final class PlacedReadings {
    private final Visit visit;
    private final Map<Reading, Reading> placed = new LinkedHashMap<>();

    PlacedReadings(Visit visit, Map<Corner, String> leftOn) {
        this.visit = visit;
        var cornerOf = new HashMap<String, Corner>();
        leftOn.forEach((corner, tag) -> cornerOf.put(tag, corner));
        cornerOf.keySet().removeAll(visit.arrivedOn().values());
        for (var reading : new StandingReadings(visit).all()) {
            var corner = cornerOf.get(reading.wheelTag());
            if (corner != null && corner != reading.corner() && isReadOutOfStore(reading)) {
                placed.put(reading, at(corner, reading));
            }
        }
    }

    private static boolean isReadOutOfStore(Reading reading) {
        return Arrays.stream(WorkStep.values())
                .anyMatch(step -> step.wheels() == WorkStep.Wheels.FROM_STORE
                        && reading.measure().isReadIn(step));
    }

    private static Reading at(Corner corner, Reading reading) {
        return new Reading(
                UUID.randomUUID().toString(),
                reading.measure(),
                corner,
                reading.wheelTag(),
                reading.spot(),
                reading.value(),
                reading.asWritten(),
                null,
                null);
    }

    /** The visit with each at its corner. */
    Visit visit() {
        var gone = new HashSet<String>();
        for (var reading : placed.keySet()) {
            for (var each = reading; each != null; each = corrected(each)) {
                gone.add(each.id());
            }
        }
        return visit.withReadings(Stream.concat(
                        visit.readings().stream().filter(reading -> !gone.contains(reading.id())),
                        placed.values().stream())
                .toList());
    }

    private @Nullable Reading corrected(Reading reading) {
        return visit.readings().stream()
                .filter(each -> Objects.equals(each.id(), reading.corrects()))
                .findFirst()
                .orElse(null);
    }

    /** Keeps each at its corner; where it was entered it is struck. */
    void write(Handle handle) {
        new CarWriter(handle).writeReadings(visit.id(), List.copyOf(placed.values()));
        placed.forEach((reading, now) -> MovedReadings.strike(handle, visit, reading, now));
    }
}
