package cornerbook.app.exchange;

import cornerbook.core.air.PressureWarning;
import cornerbook.core.brake.BrakeDetails;
import cornerbook.core.brake.fluid.FluidChange;
import cornerbook.core.brake.seizing.CarUse;
import cornerbook.core.car.VehicleDetails;
import cornerbook.core.car.WheelDetails;
import cornerbook.core.lift.CarBody;
import cornerbook.core.lift.CarHeights;
import cornerbook.core.lift.LiftPoint;
import cornerbook.core.lift.LiftPoints;
import cornerbook.core.tyre.Mounting;
import cornerbook.core.wheelplan.AllWheelLimit;
import cornerbook.core.wheelplan.DifferenceLimits;
import org.jspecify.annotations.Nullable;

/** What a visit file may say of a car, its brakes and its wheels, and may leave out. */
final class DetailsReader {
    private DetailsReader() {}

    static VehicleDetails vehicle(JsonObject json) {
        return new VehicleDetails(
                json.optionalChild("differences", DetailsReader::differences, DifferenceLimits.NOT_KNOWN),
                json.optionalChild("use", DetailsReader::use, CarUse.USUAL),
                json.optionalChild("body", DetailsReader::body, CarBody.NOT_KNOWN),
                json.optionalChild("brakeFluidChange", DetailsReader::fluidChange, FluidChange.NOT_KNOWN),
                json.optionalChild("pressureWarning", DetailsReader::pressureWarning, PressureWarning.NOT_KNOWN),
                mounting(json),
                new VehicleDetails.Unseen(json.optionalFlag("hybrid"), json.optionalFlag("brakesByWire")),
                json.optionalText("copiedFrom"));
    }

    static BrakeDetails brake(JsonObject json) {
        return new BrakeDetails(
                json.optionalConstant("parkingBrake", BrakeDetails.ParkingBrake.class),
                json.optionalQuantity("refinishThickness", "mm"),
                json.optionalQuantity("discMass", "kg"),
                json.optionalQuantity("discDiameter", "mm"),
                json.optionalQuantity("discTemperatureLimit", "°C"),
                json.optionalWhole("pistons"),
                json.optionalFlag("liningRiveted"),
                json.optionalQuantity("parkingLiningMinimum", "mm"));
    }

    static WheelDetails wheel(JsonObject json) {
        return new WheelDetails(mounting(json), json.optionalText("sensorType"), json.optionalDate("sensorBatteryOn"));
    }

    private static DifferenceLimits differences(JsonObject json) {
        return new DifferenceLimits(
                json.has("allWheel") ? allWheel(json.child("allWheel")) : null,
                json.optionalQuantity("sameAxle", "mm"),
                json.optionalFlag("deeperPairAtRear"));
    }

    private static AllWheelLimit allWheel(JsonObject json) {
        return json.build(
                () -> new AllWheelLimit(json.constant("kind", AllWheelLimit.Kind.class), json.quantity("limit", "mm")));
    }

    private static CarUse use(JsonObject json) {
        return new CarUse(
                json.optionalNumber("saltShare"),
                json.optionalFlag("garaged"),
                json.optionalNumber("frictionBrakeShare"));
    }

    private static CarBody body(JsonObject json) {
        return new CarBody(
                json.optionalQuantity("kerbMass", "kg"),
                json.optionalNumber("frontShare"),
                json.optionalQuantity("wheelbase", "mm"),
                json.optionalQuantity("track", "mm"),
                new CarHeights(
                        json.optionalQuantity("groundClearance", "mm"),
                        json.optionalQuantity("liftPointHeight", "mm"),
                        json.optionalQuantity("height", "mm")),
                json.optionalQuantity("wheelMass", "kg"),
                json.has("liftPoints") ? liftPoints(json.child("liftPoints")) : null);
    }

    private static LiftPoints liftPoints(JsonObject json) {
        return json.build(() -> new LiftPoints(
                liftPoint(json.child("LF")),
                liftPoint(json.child("RF")),
                liftPoint(json.child("LR")),
                liftPoint(json.child("RR"))));
    }

    private static LiftPoint liftPoint(JsonObject json) {
        return json.build(
                () -> new LiftPoint(json.quantity("behindFrontAxle", "mm"), json.quantity("leftOfCentre", "mm")));
    }

    private static FluidChange fluidChange(JsonObject json) {
        return new FluidChange(json.optionalDate("changedOn"), json.optionalNumber("intervalYears"));
    }

    private static PressureWarning pressureWarning(JsonObject json) {
        return new PressureWarning(
                json.optionalConstant("kind", PressureWarning.Kind.class),
                json.optionalConstant("learning", PressureWarning.Learning.class));
    }

    private static @Nullable Mounting mounting(JsonObject json) {
        return json.has("mounting") ? json.build(() -> Mounting.parse(json.text("mounting"))) : null;
    }
}
