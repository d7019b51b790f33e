package cornerbook.core.lift;

import cornerbook.core.quantity.Range;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Masses and measures of the car, from the vehicle manufacturer's data or the scales; null for what is not known.
 *
 * @param kerbMassKg ready to drive without load, 300 to 8000 kg
 * @param frontShare share of that mass on the front axle, 0.2 to 0.8
 * @param wheelbaseMm 1500 to 5500 mm
 * @param trackMm distance of the left and right wheels' middles, 1000 to 2200 mm
 * @param wheelMassKg one wheel with its tyre, 5 to 80 kg
 * @param liftPoints where the vehicle's maker lets a pad touch
 */
public record CarBody(
        @Nullable Double kerbMassKg,
        @Nullable Double frontShare,
        @Nullable Double wheelbaseMm,
        @Nullable Double trackMm,
        CarHeights heights,
        @Nullable Double wheelMassKg,
        @Nullable LiftPoints liftPoints) {
    /** Nothing is known. */
    public static final CarBody NOT_KNOWN = new CarBody(null, null, null, null, CarHeights.NOT_KNOWN, null, null);

    private static final double EVEN = 0.5;

    public CarBody {
        Range.checkKnown(LiftSaid.Part.KERB_MASS, kerbMassKg, 300, 8000, "kg");
        Range.checkKnown(LiftSaid.Part.FRONT_SHARE, frontShare, 0.2, 0.8, "");
        Range.checkKnown(LiftSaid.Part.WHEELBASE, wheelbaseMm, 1500, 5500, "mm");
        Range.checkKnown(LiftSaid.Part.TRACK, trackMm, 1000, 2200, "mm");
        Range.checkKnown(LiftSaid.Part.WHEEL_MASS, wheelMassKg, 5, 80, "kg");
    }

    /** The car on its wheels, even left and right; empty when a part of it is not known. */
    public Optional<CarMass> findMass() {
        if (wheelbaseMm == null || trackMm == null) {
            return Optional.empty();
        }
        return findMass(wheelbaseMm, trackMm);
    }

    /** The same of usual wheelbase and track, which make no difference while the pads stand under the axles. */
    public Optional<CarMass> findMassOnAxles() {
        return findMass(CarMass.USUAL_WHEELBASE_MM, CarMass.USUAL_TRACK_MM);
    }

    private Optional<CarMass> findMass(double lengthMm, double widthMm) {
        if (kerbMassKg == null || frontShare == null) {
            return Optional.empty();
        }
        return Optional.of(
                new CarMass(kerbMassKg * frontShare, kerbMassKg * (1 - frontShare), lengthMm, EVEN, widthMm));
    }
}
