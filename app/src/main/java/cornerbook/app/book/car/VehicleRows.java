package cornerbook.app.book.car;

import cornerbook.app.book.store.TableRow;
import cornerbook.core.battery.TwelveVoltBattery;
import cornerbook.core.brake.DiscBrake;
import cornerbook.core.brake.DrumBrake;
import cornerbook.core.brake.UnknownBrake;
import cornerbook.core.car.AxleSpecification;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Wheel;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.torque.WheelFastener;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The rows that a car and its wheels are written to. */
final class VehicleRows {
    private VehicleRows() {}

    /** All but the customer's id. */
    static TableRow vehicle(Vehicle vehicle) {
        var details = vehicle.details();
        var allWheel = Optional.ofNullable(details.differences().allWheel());
        var mounting = details.mounting();
        var row = new TableRow("vehicle")
                .set("id", vehicle.id())
                .set("name", vehicle.name())
                .set("plate", vehicle.plate())
                .set("vin", vehicle.vin())
                .set("drive", vehicle.drive())
                .set("electric", vehicle.drivesElectric())
                .set("jurisdiction", vehicle.jurisdiction())
                .set("brake_fluid", vehicle.brakeFluid())
                .set("all_wheel_limit_kind", allWheel.map(limit -> limit.kind()).orElse(null))
                .set(
                        "all_wheel_limit_mm",
                        allWheel.map(limit -> limit.valueMm()).orElse(null))
                .set("same_axle_limit_mm", details.differences().sameAxleMm())
                .set("deeper_pair_at_rear", details.differences().deeperPairAtRear())
                .set("salt_share", details.use().saltShare())
                .set("garaged", details.use().garaged())
                .set("friction_brake_share", details.use().frictionBrakeShare())
                .set("kerb_mass_kg", details.body().kerbMassKg())
                .set("front_share", details.body().frontShare())
                .set("wheelbase_mm", details.body().wheelbaseMm())
                .set("track_mm", details.body().trackMm())
                .set("ground_clearance_mm", details.body().heights().groundClearanceMm())
                .set("lift_point_height_mm", details.body().heights().liftPointMm())
                .set("wheel_mass_kg", details.body().wheelMassKg())
                .set("height_mm", details.body().heights().roofMm())
                .set("brake_fluid_changed_on", details.fluidChange().changedOn())
                .set("brake_fluid_interval_years", details.fluidChange().intervalYears())
                .set("pressure_warning", details.pressureWarning().kind())
                .set("sensor_learning", details.pressureWarning().learning())
                .set("mounting", mounting == null ? null : mounting.written())
                .set("hybrid", details.hybrid())
                .set("brakes_by_wire", details.unseen().brakesByWire())
                .set("copied_from", details.copiedFrom());
        fastener(Optional.ofNullable(vehicle.fastener()), row);
        battery(Optional.ofNullable(vehicle.battery()), row);
        return row;
    }

    private static void fastener(Optional<WheelFastener> known, TableRow row) {
        row.set("fastener_thread", known.map(WheelFastener::thread).orElse(null))
                .set("fastener_count", known.map(WheelFastener::count).orElse(null))
                .set("fastener_seat", known.map(WheelFastener::seat).orElse(null))
                .set("fastener_torque_nm", known.map(WheelFastener::torqueNm).orElse(null))
                .set(
                        "retorque_after_km",
                        known.map(WheelFastener::retorqueAfterKm).orElse(null));
    }

    private static void battery(Optional<TwelveVoltBattery> known, TableRow row) {
        row.set("battery_chemistry", known.map(TwelveVoltBattery::chemistry).orElse(null))
                .set(
                        "battery_capacity_ah",
                        known.map(TwelveVoltBattery::ratedCapacityAh).orElse(null))
                .set(
                        "battery_cranking_a",
                        known.map(TwelveVoltBattery::ratedCrankingCurrentA).orElse(null))
                .set(
                        "battery_standard",
                        known.map(TwelveVoltBattery::ratingStandard).orElse(null))
                .set(
                        "battery_installed_on",
                        known.map(TwelveVoltBattery::installedOn).orElse(null))
                .set(
                        "battery_charge_below_v",
                        known.map(TwelveVoltBattery::chargeBelowV).orElse(null));
    }

    static List<TableRow> liftPoints(Vehicle vehicle) {
        var points = vehicle.details().body().liftPoints();
        if (points == null) {
            return List.of();
        }
        return Arrays.stream(Corner.values())
                .map(corner -> new TableRow("lift_point")
                        .set("vehicle_id", vehicle.id())
                        .set("corner", corner)
                        .set("behind_front_axle_mm", points.get(corner).behindFrontAxleMm())
                        .set("left_of_centre_mm", points.get(corner).leftOfCentreMm()))
                .toList();
    }

    static TableRow axle(String vehicleId, Axle axle, AxleSpecification specification) {
        var brake = specification.brake();
        var details = brake.details();
        var row = new TableRow("vehicle_axle")
                .set("vehicle_id", vehicleId)
                .set("axle", axle)
                .set("axle_load_kg", specification.axleLoadKg())
                .set("tyre_size", specification.tyreSize())
                .set("load_index", specification.loadIndex())
                .set("speed_symbol", specification.speedSymbol())
                .set("placard_pressure_kpa", specification.placardPressureKpa())
                .set("electric_parking_brake", brake.electricParkingBrake())
                .set("parking_brake", details.parkingBrake())
                .set("refinish_thickness_mm", details.refinishThicknessMm())
                .set("disc_mass_kg", details.discMassKg())
                .set("disc_diameter_mm", details.discDiameterMm())
                .set("disc_temperature_limit_c", details.discTemperatureLimitC())
                .set("pistons", details.pistons())
                .set("lining_riveted", details.liningRiveted())
                .set("parking_lining_minimum_mm", details.parkingLiningMinimumMm());
        return switch (brake.friction()) {
            case DiscBrake disc ->
                row.set("caliper", disc.caliper())
                        .set("pad_new_mm", disc.padNewMm())
                        .set("pad_minimum_mm", disc.padMinimumMm())
                        .set("disc_new_mm", disc.discNewMm())
                        .set("disc_minimum_mm", disc.discMinimumMm())
                        .set("runout_limit_mm", disc.runoutLimitMm())
                        .set("thickness_variation_limit_mm", disc.thicknessVariationLimitMm());
            case DrumBrake drum ->
                row.set("drum_new_mm", drum.drumNewMm())
                        .set("drum_discard_mm", drum.drumDiscardMm())
                        .set("lining_new_mm", drum.liningNewMm())
                        .set("lining_minimum_mm", drum.liningMinimumMm());
            case UnknownBrake unknown -> row;
        };
    }

    /** All but car, set and place in it. */
    static TableRow wheel(Wheel wheel) {
        var tyre = wheel.tyre();
        var mounting = wheel.details().mounting();
        return new TableRow("wheel")
                .set("tag", wheel.tag())
                .set("tyre_model", tyre.model())
                .set("tyre_size", tyre.size())
                .set("load_index", tyre.loadIndex())
                .set("speed_symbol", tyre.speedSymbol())
                .set("tin", tyre.tin())
                .set("directional", tyre.directional())
                .set("\"asymmetric\"", tyre.asymmetric())
                .set("new_depth_mm", tyre.newDepthMm())
                .set("sensor_id", wheel.sensorId())
                .set("mounting", mounting == null ? null : mounting.written())
                .set("sensor_type", wheel.details().sensorType())
                .set("sensor_battery_on", wheel.details().sensorBatteryOn());
    }
}
