package cornerbook.core.car;

import cornerbook.core.battery.TwelveVoltBattery;
import cornerbook.core.brake.fluid.BrakeFluid;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.torque.WheelFastener;
import org.jspecify.annotations.Nullable;

/**
 * A car with the specification that the models need: its data sheet, of which each part with more than one value is a value
 * of its own.
 *
 * @param name what people call the car, as "Fjordling Volta, blue"
 * @param vin vehicle identification number, or null
 * @param jurisdiction whose rules it is judged by, a code of the limits file as "CA-QC"
 * @param brakeFluid grade that the vehicle manufacturer asks for, or null when it is not known
 */
public record Vehicle(
        String id,
        String name,
        String plate,
        @Nullable String vin,
        DriveLayout drive,
        boolean electric,
        String jurisdiction,
        AxleSpecification front,
        AxleSpecification rear,
        WheelFastener fastener,
        TwelveVoltBattery battery,
        @Nullable BrakeFluid brakeFluid,
        VehicleDetails details) {
    public AxleSpecification axle(Axle axle) {
        return axle == Axle.FRONT ? front : rear;
    }

    /** Whether the two axles carry different tyre sizes. */
    public boolean staggered() {
        return !front.tyreSize().equals(rear.tyreSize());
    }

    /** Whether an axle has one, so that it has to be put into its service mode. */
    public boolean hasElectricParkingBrake() {
        return front.brake().electricParkingBrake() || rear.brake().electricParkingBrake();
    }

    /** Whether it has a high-voltage battery: an electric car, or a hybrid that is known as one. It regenerates, too. */
    public boolean highVoltage() {
        return electric || Boolean.TRUE.equals(details.hybrid());
    }

    public Vehicle withDetails(VehicleDetails known) {
        return new Vehicle(
                id, name, plate, vin, drive, electric, jurisdiction, front, rear, fastener, battery, brakeFluid, known);
    }
}
