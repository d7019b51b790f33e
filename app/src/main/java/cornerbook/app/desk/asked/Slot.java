package cornerbook.app.desk.asked;

import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A place for one reading of a visit; null where the measure has no such thing. */
public record Slot(
        Measure measure,
        @Nullable Corner corner,
        @Nullable String wheelTag,
        @Nullable Spot spot) {
    /** Name of its field in the form. */
    public String key() {
        return String.join(
                ".",
                measure.name(),
                corner == null ? "" : corner.name(),
                spot == null ? "" : spot.name(),
                wheelTag == null ? "" : wheelTag);
    }

    /** The reading that stands here. */
    public Optional<Reading> findIn(Visit visit) {
        return findIn(new StandingReadings(visit));
    }

    /** The same for whoever looks for many. */
    public Optional<Reading> findIn(StandingReadings readings) {
        return readings.at(measure, corner, wheelTag, spot);
    }

    /** All slots of a measure at one corner, across from outside. */
    static Stream<Slot> at(@Nullable Corner corner, @Nullable String wheelTag, Measure measure) {
        return measure.spots().isEmpty()
                ? Stream.of(new Slot(measure, corner, wheelTag, null))
                : Stream.of(Spot.OUTER, Spot.CENTRE, Spot.INNER)
                        .filter(measure.spots()::contains)
                        .map(spot -> new Slot(measure, corner, wheelTag, spot));
    }
}
