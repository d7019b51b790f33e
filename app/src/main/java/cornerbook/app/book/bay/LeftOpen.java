package cornerbook.app.book.bay;

import cornerbook.app.book.shop.SheetStep;
import cornerbook.app.book.work.StandingTicks;
import cornerbook.app.book.work.WorkTick;
import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.release.ReleaseRule;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A step, or the place of a reading, that somebody left open, and that is open still.
 *
 * @param place null for a step that is ticked
 */
public record LeftOpen(WorkTick tick, @Nullable Place place) {
    private static final int PARTS = 4;

    /** Where a reading is missing; its wheel is empty where it belongs to none. */
    record Place(
            Measure measure,
            @Nullable Corner corner,
            @Nullable Spot spot,
            String wheelTag) {
        /** By the name that the bay sheet gives it, as "PAD_THICKNESS.LF.INNER."; empty for anything else. */
        static Optional<Place> find(String key) {
            var parts = key.split("\\.", PARTS);
            try {
                return parts.length < PARTS
                        ? Optional.empty()
                        : Optional.of(new Place(
                                Measure.valueOf(parts[0]),
                                parts[1].isEmpty() ? null : Corner.valueOf(parts[1]),
                                parts[2].isEmpty() ? null : Spot.valueOf(parts[2]),
                                parts[3]));
            } catch (IllegalArgumentException unknown) {
                return Optional.empty();
            }
        }

        private boolean isRead(Visit visit) {
            boolean tight = measure == Measure.WHEEL_TORQUE
                    && corner != null
                    && visit.tightened().contains(corner);
            return tight
                    || new StandingReadings(visit)
                            .at(measure, corner, wheelTag.isEmpty() ? null : wheelTag, spot)
                            .filter(reading ->
                                    measure.scale() == null || !measure.scale().saysNotDone(reading.value()))
                            .isPresent();
        }

        /** Whether its wheel is one of the visit. */
        private boolean isOf(Visit visit) {
            return wheelTag.isEmpty()
                    || visit.arrivedOn().containsValue(wheelTag)
                    || visit.leftOn().isEmpty()
                    || visit.leftOn().containsValue(wheelTag);
        }
    }

    /** Whether the place of a reading has that name. */
    public static boolean isPlace(String key) {
        return Place.find(key).isPresent();
    }

    /** The name of what it is about, as the bay sheet has it. */
    public String key() {
        return tick.tick();
    }

    /** What is open at a visit. */
    public static List<LeftOpen> of(Visit visit, List<WorkTick> ticks) {
        return StandingTicks.of(ticks).leftOpen().stream()
                .map(tick -> new LeftOpen(tick, Place.find(tick.tick()).orElse(null)))
                .filter(open -> open.place() == null
                        || (!open.place().isRead(visit) && open.place().isOf(visit)))
                .toList();
    }

    /** Whether it was done, or read, at a visit. */
    public boolean isClosedAt(Visit visit, List<WorkTick> ticks) {
        return place == null
                ? StandingTicks.of(ticks)
                        .find(tick.tick(), null)
                        .filter(WorkTick::done)
                        .isPresent()
                : place.isRead(visit);
    }

    /** The step of the bay sheet in which it is done or read at a visit. */
    SheetStep step(Visit visit) {
        return place == null
                ? SheetStep.ofTick(tick.tick())
                : SheetStep.ofReading(place.measure(), place.wheelTag(), visit);
    }

    /** Null where it is of no corner. */
    @Nullable
    Corner corner() {
        return place == null ? null : place.corner();
    }

    /** What closes it, by the name that {@link ReleaseRule} has for it. */
    String closedBy() {
        if (place == null) {
            return tick.tick();
        }
        var corner = place.corner() == null ? "" : place.corner().name();
        return place.measure() == Measure.WHEEL_TORQUE
                ? ReleaseRule.TIGHT + corner
                : place.measure().name() + "." + corner;
    }
}
