package cornerbook.app.exchange;

import static cornerbook.app.exchange.HistoryWriter.putIfPresent;
import static cornerbook.app.exchange.HistoryWriter.quantity;

import cornerbook.core.air.PressureWarning;
import cornerbook.core.brake.BrakeDetails;
import cornerbook.core.brake.fluid.FluidChange;
import cornerbook.core.brake.seizing.CarUse;
import cornerbook.core.car.VehicleDetails;
import cornerbook.core.car.WheelDetails;
import cornerbook.core.corner.Corner;
import cornerbook.core.lift.CarBody;
import cornerbook.core.lift.LiftPoints;
import cornerbook.core.wheelplan.DifferenceLimits;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ObjectNode;

/** Writes what is known of a car, its brakes and its wheels, and leaves out what is not. */
final class DetailsWriter {
    private DetailsWriter() {}

    static void write(VehicleDetails details, ObjectNode json) {
        if (!details.differences().equals(DifferenceLimits.NOT_KNOWN)) {
            write(details.differences(), json.putObject("differences"));
        }
        if (!details.use().equals(CarUse.USUAL)) {
            write(details.use(), json.putObject("use"));
        }
        if (!details.body().equals(CarBody.NOT_KNOWN)) {
            write(details.body(), json.putObject("body"));
        }
        if (!details.fluidChange().equals(FluidChange.NOT_KNOWN)) {
            var change = json.putObject("brakeFluidChange");
            putIfPresent(change, "changedOn", details.fluidChange().changedOn());
            putNumber(change, "intervalYears", details.fluidChange().intervalYears());
        }
        if (!details.pressureWarning().equals(PressureWarning.NOT_KNOWN)) {
            var warning = json.putObject("pressureWarning");
            putWord(warning, "kind", details.pressureWarning().kind());
            putWord(warning, "learning", details.pressureWarning().learning());
        }
        var mounting = details.mounting();
        putIfPresent(json, "mounting", mounting == null ? null : mounting.written());
        putFlag(json, "hybrid", details.hybrid());
        putFlag(json, "brakesByWire", details.unseen().brakesByWire());
        putIfPresent(json, "copiedFrom", details.copiedFrom());
    }

    static void write(BrakeDetails details, ObjectNode json) {
        putWord(json, "parkingBrake", details.parkingBrake());
        putQuantity(json, "refinishThickness", details.refinishThicknessMm(), "mm");
        putQuantity(json, "discMass", details.discMassKg(), "kg");
        putQuantity(json, "discDiameter", details.discDiameterMm(), "mm");
        putQuantity(json, "discTemperatureLimit", details.discTemperatureLimitC(), "°C");
        putFlag(json, "liningRiveted", details.liningRiveted());
        putQuantity(json, "parkingLiningMinimum", details.parkingLiningMinimumMm(), "mm");
        var pistons = details.pistons();
        if (pistons != null) {
            json.put("pistons", pistons);
        }
    }

    static void write(WheelDetails details, ObjectNode json) {
        var mounting = details.mounting();
        putIfPresent(json, "mounting", mounting == null ? null : mounting.written());
        putIfPresent(json, "sensorType", details.sensorType());
        putIfPresent(json, "sensorBatteryOn", details.sensorBatteryOn());
    }

    private static void write(DifferenceLimits differences, ObjectNode json) {
        var allWheel = differences.allWheel();
        if (allWheel != null) {
            json.putObject("allWheel")
                    .put("kind", Spelling.of(allWheel.kind()))
                    .set("limit", quantity(allWheel.valueMm(), "mm"));
        }
        putQuantity(json, "sameAxle", differences.sameAxleMm(), "mm");
        putFlag(json, "deeperPairAtRear", differences.deeperPairAtRear());
    }

    private static void write(CarUse use, ObjectNode json) {
        putNumber(json, "saltShare", use.saltShare());
        putFlag(json, "garaged", use.garaged());
        putNumber(json, "frictionBrakeShare", use.frictionBrakeShare());
    }

    private static void write(CarBody body, ObjectNode json) {
        putQuantity(json, "kerbMass", body.kerbMassKg(), "kg");
        putNumber(json, "frontShare", body.frontShare());
        putQuantity(json, "wheelbase", body.wheelbaseMm(), "mm");
        putQuantity(json, "track", body.trackMm(), "mm");
        putQuantity(json, "groundClearance", body.heights().groundClearanceMm(), "mm");
        putQuantity(json, "liftPointHeight", body.heights().liftPointMm(), "mm");
        putQuantity(json, "wheelMass", body.wheelMassKg(), "kg");
        putQuantity(json, "height", body.heights().roofMm(), "mm");
        var points = body.liftPoints();
        if (points != null) {
            write(points, json.putObject("liftPoints"));
        }
    }

    private static void write(LiftPoints points, ObjectNode json) {
        for (var corner : Corner.values()) {
            var point = points.get(corner);
            json.putObject(corner.name())
                    .set("behindFrontAxle", quantity(point.behindFrontAxleMm(), "mm"))
                    .set("leftOfCentre", quantity(point.leftOfCentreMm(), "mm"));
        }
    }

    static void putQuantity(ObjectNode json, String name, @Nullable Double value, String unit) {
        if (value != null) {
            json.set(name, quantity(value, unit));
        }
    }

    static void putNumber(ObjectNode json, String name, @Nullable Double value) {
        if (value != null) {
            json.put(name, value);
        }
    }

    static void putNumber(ObjectNode json, String name, @Nullable Integer value) {
        if (value != null) {
            json.put(name, value);
        }
    }

    static void putFlag(ObjectNode json, String name, @Nullable Boolean value) {
        if (value != null) {
            json.put(name, value);
        }
    }

    private static void putWord(ObjectNode json, String name, @Nullable Enum<?> value) {
        putIfPresent(json, name, value == null ? null : Spelling.of(value));
    }
}
