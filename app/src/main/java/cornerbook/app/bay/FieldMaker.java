package cornerbook.app.bay;

import cornerbook.app.bay.BaySheet.Expected;
import cornerbook.app.bay.BaySheet.Field;
import cornerbook.app.bay.BaySheet.Last;
import cornerbook.app.desk.asked.Slot;
import cornerbook.core.brake.judge.ThicknessPrediction;
import cornerbook.core.car.Measure;
import cornerbook.core.car.MeasureAt;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Makes fields of places for readings, with what was read there at the visits before and what is expected there now. */
final class FieldMaker {
    private final Vehicle vehicle;
    private final List<Before> latestFirst;
    private final List<ThicknessPrediction> predictions;
    private final BayReader bay;

    /**
     * Of a car.
     *
     * @param before its visits before this one, earliest first
     * @param predictions of its pads and discs
     */
    FieldMaker(Vehicle vehicle, List<Visit> before, List<ThicknessPrediction> predictions, BayReader bay) {
        this.vehicle = vehicle;
        this.latestFirst = before.reversed().stream()
                .map(visit -> new Before(visit, new StandingReadings(visit)))
                .toList();
        this.predictions = List.copyOf(predictions);
        this.bay = bay;
    }

    private record Before(Visit visit, StandingReadings readings) {}

    BayReader bay() {
        return bay;
    }

    Field make(Slot slot, boolean goesOn) {
        var measure = slot.measure();
        boolean ofWheel = measure.carrier() == Measure.Carrier.WHEEL;
        return new Field(
                measure,
                slot.corner(),
                slot.spot(),
                ofWheel,
                goesOn,
                measure == Measure.TREAD_DEPTH || measure == Measure.PRESSURE_FOUND,
                bay.say(MeasureAt.of(vehicle, measure, slot.spot())),
                shortLabel(slot),
                bay.unit(measure),
                bay.entry().suffix(measure),
                bay.choices(measure),
                measure.mayBePoints(),
                bay.entry().number(measure.lowest(), measure),
                bay.entry().number(measure.highest(), measure),
                ofWheel ? null : findLast(slot).orElse(null),
                findExpected(slot).orElse(null));
    }

    /** At the corners of the car several fields share a narrow space. */
    private @Nullable String shortLabel(Slot slot) {
        var words = bay.labels();
        return switch (slot.measure()) {
            case TREAD_DEPTH -> words.of("groove", "spot", Objects.requireNonNull(slot.spot()));
            case SENSOR_PRESSURE -> words.of("sensor-pressure");
            case SENSOR_TEMPERATURE -> words.of("sensor-temperature");
            default -> null;
        };
    }

    /** The last reading of a place before this visit. */
    private Optional<Last> findLast(Slot slot) {
        return latestFirst.stream()
                .flatMap(before ->
                        slot.findIn(before.readings()).map(reading -> bay.last(reading, before.visit())).stream())
                .findFirst();
    }

    private Optional<Expected> findExpected(Slot slot) {
        return predictions.stream()
                .filter(each -> each.measure() == slot.measure()
                        && each.corner() == slot.corner()
                        && each.side() == slot.spot())
                .findFirst()
                .map(each ->
                        bay.expected(each.measure(), each.expectedMm().mean(), each.credibleWithinMm(), each.asks()));
    }
}
