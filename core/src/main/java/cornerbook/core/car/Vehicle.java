package cornerbook.core.car;

import cornerbook.core.battery.TwelveVoltBattery;
import cornerbook.core.brake.fluid.BrakeFluid;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.torque.WheelFastener;
import org.jspecify.annotations.Nullable;

/**
 * A car with the specification that the models need: its data sheet, of which each part with more than one value is a value
 * of its own. At the door little of it is known; what is null nobody has looked up yet, nothing is judged by it, and
 * {@link DataGap} says so.
 *
 * @param name what people call the car, as "Fjordling Volta, blue"
 * @param vin vehicle identification number, or null
 * @param drivesElectric whether it drives by electricity alone
 * @param jurisdiction whose rules it is judged by, a code of the limits file as "CA-QC"; {@link #ANY_PLACE} when nobody said
 * @param brakeFluid grade that the vehicle manufacturer asks for, or null when it is not known
 */
public record Vehicle(
        String id,
        String name,
        String plate,
        @Nullable String vin,
        @Nullable DriveLayout drive,
        @Nullable Boolean drivesElectric,
        String jurisdiction,
        AxleSpecification front,
        AxleSpecification rear,
        @Nullable WheelFastener fastener,
        @Nullable TwelveVoltBattery battery,
        @Nullable BrakeFluid brakeFluid,
        VehicleDetails details) {
    /** The place of a car of which nobody said whose rules it is judged by: only what holds anywhere counts. */
    public static final String ANY_PLACE = "*";

    public AxleSpecification axle(Axle axle) {
        return axle == Axle.FRONT ? front : rear;
    }

    /** Whether the two axles carry different tyre sizes. */
    public boolean staggered() {
        return !front.tyreSize().equals(rear.tyreSize());
    }

    /** Whether an axle is known to have one, so that it has to be put into its service mode. */
    public boolean hasElectricParkingBrake() {
        return front.brake().electricParkingBrake() || rear.brake().electricParkingBrake();
    }

    /** How many nuts or bolts hold each wheel; 0 where nobody has looked it up. */
    public int fastenerCount() {
        return fastener == null ? 0 : fastener.count();
    }

    /** Whether an axle is known to have shoes, in a drum or inside its discs: they are only seen with the wheel off. */
    public boolean hasShoes() {
        return hasParkingShoes() || front.brake().hasDrum() || rear.brake().hasDrum();
    }

    /** Whether shoes inside the discs of an axle hold it when it stands, as its data say. */
    public boolean hasParkingShoes() {
        return front.hasParkingShoes() || rear.hasParkingShoes();
    }

    /** The same while nobody has looked: what may move by itself is minded. */
    public boolean mayHaveElectricParkingBrake() {
        return hasElectricParkingBrake()
                || !front.brake().isKnown()
                || !rear.brake().isKnown();
    }

    /** Whether it is known to drive by electricity alone. */
    public boolean electric() {
        return Boolean.TRUE.equals(drivesElectric);
    }

    /** Whether it has a high-voltage battery: an electric car, or a hybrid that is known as one. It regenerates, too. */
    public boolean highVoltage() {
        return electric() || Boolean.TRUE.equals(details.hybrid());
    }

    /** The same while nobody has said what drives it: high voltage is minded until it is known that there is none. */
    public boolean mayHaveHighVoltage() {
        return highVoltage() || (drivesElectric == null && details.hybrid() == null);
    }

    /** Whether it is known to brake by wire: the pedal moves no fluid. */
    public boolean brakesByWire() {
        return Boolean.TRUE.equals(details.unseen().brakesByWire());
    }

    /** The same while nobody has said: brakes that may close by themselves are minded. */
    public boolean mayBrakeByWire() {
        return !Boolean.FALSE.equals(details.unseen().brakesByWire());
    }

    /** Whether the wheels of an axle are driven, as far as anybody knows. */
    public boolean mayDrive(Axle axle) {
        return drive == null || drive.drives(axle);
    }

    /** The layout by which wear is reckoned: while it is not known, that whose every axle wears as a driven one, the faster. */
    public DriveLayout wearsAs() {
        return drive == null ? DriveLayout.ALL : drive;
    }

    public Vehicle withDetails(VehicleDetails known) {
        return new Vehicle(
                id,
                name,
                plate,
                vin,
                drive,
                drivesElectric,
                jurisdiction,
                front,
                rear,
                fastener,
                battery,
                brakeFluid,
                known);
    }
}
