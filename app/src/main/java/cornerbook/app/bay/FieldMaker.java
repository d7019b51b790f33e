package cornerbook.app.bay;

import cornerbook.app.bay.BaySheet.Expected;
import cornerbook.app.bay.BaySheet.Field;
import cornerbook.app.bay.BaySheet.Last;
import cornerbook.app.desk.asked.Slot;
import cornerbook.app.desk.Words;
import cornerbook.app.request.Told;
import cornerbook.core.brake.judge.ThicknessPrediction;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Visit;
import java.util.List;
import java.util.Optional;

/** Makes fields of places for readings, with what was read there at the visits before and what is expected there now. */
final class FieldMaker {
    private final List<Visit> before;
    private final List<ThicknessPrediction> predictions;
    private final BayUnits units;

    /**
     * Of a car.
     *
     * @param before its visits before this one, earliest first
     * @param predictions of its pads and discs
     */
    FieldMaker(List<Visit> before, List<ThicknessPrediction> predictions, BayUnits units) {
        this.before = List.copyOf(before);
        this.predictions = List.copyOf(predictions);
        this.units = units;
    }

    BayUnits units() {
        return units;
    }

    Field make(Slot slot, boolean goesOn) {
        var measure = slot.measure();
        var scale = measure.scale();
        boolean ofWheel = measure.carrier() == Measure.Carrier.WHEEL;
        return new Field(
                measure,
                slot.corner(),
                slot.spot(),
                ofWheel,
                goesOn,
                measure == Measure.TREAD_DEPTH || measure == Measure.PRESSURE_FOUND,
                units.sentence(Words.measure(measure, slot.spot())),
                units.entry().label(measure),
                units.entry().suffix(measure),
                scale == null ? List.of() : scale.words(),
                measure.mayBePoints(),
                units.entry().number(measure.lowest(), measure),
                units.entry().number(measure.highest(), measure),
                ofWheel ? null : findLast(slot).orElse(null),
                findExpected(slot).orElse(null));
    }

    /** The last reading of a place before this visit. */
    private Optional<Last> findLast(Slot slot) {
        return before.reversed().stream()
                .flatMap(visit -> slot.findIn(visit).map(reading -> units.last(reading, visit)).stream())
                .findFirst();
    }

    private Optional<Expected> findExpected(Slot slot) {
        return predictions.stream()
                .filter(each -> each.measure() == slot.measure()
                        && each.corner() == slot.corner()
                        && each.side() == slot.spot())
                .findFirst()
                .map(each ->
                        units.expected(each.measure(), each.expectedMm().mean(), each.credibleWithinMm(), Told.say(each.asks())));
    }
}
