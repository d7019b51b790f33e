package cornerbook.core.car;

import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.quantity.Range;
import cornerbook.core.say.Said;
import org.jspecify.annotations.Nullable;

/**
 * One axle of the vehicle: what it carries, and what the placard asks of its tyres; null for what nobody has looked up.
 *
 * @param axleLoadKg permitted axle load
 * @param tyreSize size designation of the placard, as "225/55R18"
 * @param loadIndex lowest load index that the placard allows
 * @param speedSymbol lowest speed symbol that the placard allows
 * @param placardPressureKpa cold gauge pressure
 */
public record AxleSpecification(
        @Nullable Double axleLoadKg,
        String tyreSize,
        @Nullable Integer loadIndex,
        @Nullable String speedSymbol,
        @Nullable Double placardPressureKpa,
        BrakeSpecification brake) {
    public AxleSpecification {
        Range.checkKnown(CarSaid.CarNumber.AXLE_LOAD, axleLoadKg, 100, 5000, "kg");
        Range.checkKnown(CarSaid.CarNumber.PLACARD_PRESSURE, placardPressureKpa, 100, 600, "kPa");
    }

    /** Whether shoes inside its discs hold the car when it stands. */
    public boolean hasParkingShoes() {
        return brake.hasParkingShoes();
    }

    /** Load index and speed symbol as the placard writes them, as "99V"; a question mark for what is not known. */
    public Said service() {
        return Said.verbatim((loadIndex == null ? "?" : loadIndex) + (speedSymbol == null ? "?" : speedSymbol));
    }

    /** An axle of which everything is known. */
    public AxleSpecification(
            double axleLoadKg,
            String tyreSize,
            int loadIndex,
            String speedSymbol,
            double placardPressureKpa,
            BrakeSpecification brake) {
        this((Double) axleLoadKg, tyreSize, (Integer) loadIndex, speedSymbol, (Double) placardPressureKpa, brake);
    }
}
