package cornerbook.core.car;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.quantity.Range;
import cornerbook.core.say.Refused;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One measured value. Readings are never changed: a correction is a new reading that names the one it corrects, with a
 * reason. Its parts are the columns of one line of the book.
 *
 * @param id unique in the book, born where the reading was taken
 * @param corner where it was taken; null only for a measure of the whole vehicle
 * @param wheelTag the wheel that it belongs to; null unless the measure belongs to a wheel
 * @param spot groove or pad side; null when the measure has only one
 * @param value in the measure's unit
 * @param asWritten what the person wrote, with its unit
 * @param corrects id of the reading that this one replaces, or null
 * @param reason why it was corrected; null when it corrects nothing
 */
public record Reading(
        String id,
        Measure measure,
        @Nullable Corner corner,
        @Nullable String wheelTag,
        @Nullable Spot spot,
        double value,
        String asWritten,
        @Nullable String corrects,
        @Nullable String reason) {

    public Reading {
        var name = new MeasureName(measure);
        Range.check(name, value, measure.lowest(), measure.highest(), measure.scale() == null ? measure.unit() : "");
        if (value == 0) {
            // A minus before it means nothing, and no two stores keep it alike.
            value = 0;
        }
        if ((measure.carrier() != Measure.Carrier.VEHICLE) != (corner != null)) {
            throw new Refused(corner == null ? new CarSaid.NeedsCorner(name) : new CarSaid.HasNoCorner(name));
        }
        if ((measure.carrier() == Measure.Carrier.WHEEL) != (wheelTag != null)) {
            throw new Refused(wheelTag == null ? new CarSaid.NeedsWheel(name) : new CarSaid.HasNoWheel(name));
        }
        if (spot == null ? !measure.spots().isEmpty() : !measure.spots().contains(spot)) {
            throw new Refused(wrongSpot(name, spot));
        }
        if ((corrects == null) != (reason == null)) {
            throw new Refused(new CarSaid.CorrectionNeedsReason());
        }
    }

    private static CarSaid wrongSpot(MeasureName name, @Nullable Spot spot) {
        var spots = name.measure().spots().stream().sorted().toList();
        if (spot == null) {
            return new CarSaid.NeedsSpot(name, spots);
        }
        return spots.isEmpty() ? new CarSaid.HasNoSpot(name, spot) : new CarSaid.OtherSpot(name, spot, spots);
    }

    /** Whether it is the last word of its scale, which is the gravest. */
    public boolean isWorst() {
        return measure.scale() != null && Math.round(value) == measure.highest();
    }

    /** Whether both measured the same thing at the same place. */
    public boolean isAtSamePlaceAs(Reading other) {
        return measure == other.measure
                && corner == other.corner
                && spot == other.spot
                && Objects.equals(wheelTag, other.wheelTag);
    }
}
