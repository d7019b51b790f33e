package cornerbook.core.car;

import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.quantity.Range;

/**
 * One axle of the vehicle: what it carries, and what the placard asks of its tyres.
 *
 * @param axleLoadKg permitted axle load
 * @param tyreSize size designation of the placard, as "225/55R18"
 * @param loadIndex lowest load index that the placard allows
 * @param speedSymbol lowest speed symbol that the placard allows
 * @param placardPressureKpa cold gauge pressure
 */
public record AxleSpecification(
        double axleLoadKg,
        String tyreSize,
        int loadIndex,
        String speedSymbol,
        double placardPressureKpa,
        BrakeSpecification brake) {
    public AxleSpecification {
        Range.check(CarSaid.CarNumber.AXLE_LOAD, axleLoadKg, 100, 5000, "kg");
        Range.check(CarSaid.CarNumber.PLACARD_PRESSURE, placardPressureKpa, 100, 600, "kPa");
    }
}
