package cornerbook.core.car;

import cornerbook.core.air.PressureWarning;
import cornerbook.core.brake.fluid.FluidChange;
import cornerbook.core.brake.seizing.CarUse;
import cornerbook.core.lift.CarBody;
import cornerbook.core.tyre.Mounting;
import cornerbook.core.wheelplan.DifferenceLimits;
import org.jspecify.annotations.Nullable;

/**
 * What the models use of a car when somebody has looked it up; without it they say what they cannot judge, or take what is
 * usual.
 *
 * @param mounting the hub with the car's own wheels, or null
 * @param unseen what hands have to know of before they reach in, and eyes do not see
 * @param copiedFrom the car of the same kind, or the data sheet, that data were taken from, as people call it; null when none were
 */
public record VehicleDetails(
        DifferenceLimits differences,
        CarUse use,
        CarBody body,
        FluidChange fluidChange,
        PressureWarning pressureWarning,
        @Nullable Mounting mounting,
        Unseen unseen,
        @Nullable String copiedFrom) {
    /** Nothing is known. */
    public static final VehicleDetails NOT_KNOWN = new VehicleDetails(
            DifferenceLimits.NOT_KNOWN,
            CarUse.USUAL,
            CarBody.NOT_KNOWN,
            FluidChange.NOT_KNOWN,
            PressureWarning.NOT_KNOWN,
            null,
            Unseen.NOT_KNOWN,
            null);

    /**
     * What moves or shocks by itself.
     *
     * @param hybrid whether an engine and a high-voltage battery drive it together; null when nobody said
     * @param brakesByWire whether a motor or a pump closes the brakes and the pedal only says how hard; null when nobody said
     */
    public record Unseen(@Nullable Boolean hybrid, @Nullable Boolean brakesByWire) {
        /** Nobody has said. */
        public static final Unseen NOT_KNOWN = new Unseen(null, null);
    }

    public @Nullable Boolean hybrid() {
        return unseen.hybrid();
    }

    /** A car of which nobody said whether it is a hybrid, or brakes by wire. */
    public VehicleDetails(
            DifferenceLimits differences,
            CarUse use,
            CarBody body,
            FluidChange fluidChange,
            PressureWarning pressureWarning,
            @Nullable Mounting mounting) {
        this(differences, use, body, fluidChange, pressureWarning, mounting, Unseen.NOT_KNOWN, null);
    }
}
