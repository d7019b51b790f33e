package cornerbook.app.bay;

import cornerbook.app.bay.BaySheet.Expected;
import cornerbook.app.bay.BaySheet.Field;
import cornerbook.app.bay.BaySheet.Last;
import cornerbook.app.web.Slot;
import cornerbook.app.web.Words;
import cornerbook.core.visit.Measure;
import cornerbook.core.visit.Visit;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Makes fields of places for readings, with what was read there at the visits before. */
final class FieldMaker {
    private static final List<Measure> WEAR_DOWN = List.of(Measure.PAD_THICKNESS, Measure.DISC_THICKNESS);
    /** A gauge may err by this much upwards before a question is worth the time. Common practice, no source. */
    private static final double THICKER_MM = 0.3;

    private final List<Visit> before;

    /**
     * Of a car.
     *
     * @param before its visits before this one, earliest first
     */
    FieldMaker(List<Visit> before) {
        this.before = List.copyOf(before);
    }

    Field make(Slot slot, boolean goesOn) {
        var measure = slot.measure();
        var scale = measure.scale();
        boolean ofWheel = measure.carrier() == Measure.Carrier.WHEEL;
        var last = ofWheel ? Optional.<LastReading>empty() : findLast(slot);
        return new Field(
                measure,
                slot.corner(),
                slot.spot(),
                ofWheel,
                goesOn,
                measure == Measure.TREAD_DEPTH || measure == Measure.PRESSURE_FOUND,
                Words.measure(measure, slot.spot()),
                scale == null ? measure.unit() : "",
                scale == null ? List.of() : scale.words(),
                measure.mayBePoints(),
                measure.lowest(),
                measure.highest(),
                last.map(LastReading::shown).orElse(null),
                last.map(found -> notThicker(measure, found)).orElse(null));
    }

    /** The last reading of a place before this visit. */
    Optional<LastReading> findLast(Slot slot) {
        return before.reversed().stream()
                .flatMap(visit -> slot
                        .findIn(visit)
                        .map(reading -> new LastReading(
                                new Last(BayStates.shown(reading), Words.day(visit.date())), reading.value()))
                        .stream())
                .findFirst();
    }

    record LastReading(Last shown, double value) {}

    private static @Nullable Expected notThicker(Measure measure, LastReading last) {
        return WEAR_DOWN.contains(measure)
                ? new Expected(
                        measure.lowest(),
                        last.value() + THICKER_MM,
                        "Thicker than the %s of %s: measure again, or was the part replaced?"
                                .formatted(last.shown().written(), last.shown().day()))
                : null;
    }
}
