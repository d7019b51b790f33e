package cornerbook.app.book.car;

import cornerbook.core.air.PressureWarning;
import cornerbook.core.brake.BrakeDetails;
import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.brake.DiscBrake;
import cornerbook.core.brake.DrumBrake;
import cornerbook.core.brake.FrictionBrake;
import cornerbook.core.brake.UnknownBrake;
import cornerbook.core.brake.fluid.FluidChange;
import cornerbook.core.brake.seizing.CarUse;
import cornerbook.core.car.VehicleDetails;
import cornerbook.core.car.WheelDetails;
import cornerbook.core.corner.Corner;
import cornerbook.core.lift.CarBody;
import cornerbook.core.lift.CarHeights;
import cornerbook.core.lift.LiftPoint;
import cornerbook.core.lift.LiftPoints;
import cornerbook.core.tyre.Mounting;
import cornerbook.core.wheelplan.AllWheelLimit;
import cornerbook.core.wheelplan.DifferenceLimits;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.EnumMap;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Reads what may be not known of a car, its brakes and its wheels. */
public final class DetailRows {
    private DetailRows() {}

    static VehicleDetails vehicle(ResultSet row, @Nullable LiftPoints liftPoints) throws SQLException {
        var kind = constant(row, "all_wheel_limit_kind", AllWheelLimit.Kind.class);
        return new VehicleDetails(
                new DifferenceLimits(
                        kind == null ? null : new AllWheelLimit(kind, row.getDouble("all_wheel_limit_mm")),
                        number(row, "same_axle_limit_mm"),
                        flag(row, "deeper_pair_at_rear")),
                new CarUse(number(row, "salt_share"), flag(row, "garaged"), number(row, "friction_brake_share")),
                new CarBody(
                        number(row, "kerb_mass_kg"),
                        number(row, "front_share"),
                        number(row, "wheelbase_mm"),
                        number(row, "track_mm"),
                        new CarHeights(
                                number(row, "ground_clearance_mm"),
                                number(row, "lift_point_height_mm"),
                                number(row, "height_mm")),
                        number(row, "wheel_mass_kg"),
                        liftPoints),
                new FluidChange(
                        CarReader.date(row, "brake_fluid_changed_on"), number(row, "brake_fluid_interval_years")),
                new PressureWarning(
                        constant(row, "pressure_warning", PressureWarning.Kind.class),
                        constant(row, "sensor_learning", PressureWarning.Learning.class)),
                mounting(row),
                new VehicleDetails.Unseen(flag(row, "hybrid"), flag(row, "brakes_by_wire")),
                row.getString("copied_from"));
    }

    static @Nullable LiftPoints liftPoints(Handle handle, String vehicleId) {
        var points = new EnumMap<Corner, LiftPoint>(Corner.class);
        handle.select("select * from lift_point where vehicle_id = ?", vehicleId)
                .map((row, context) -> points.put(
                        Corner.valueOf(row.getString("corner")),
                        new LiftPoint(row.getDouble("behind_front_axle_mm"), row.getDouble("left_of_centre_mm"))))
                .list();
        var lf = points.get(Corner.LF);
        var rf = points.get(Corner.RF);
        var lr = points.get(Corner.LR);
        var rr = points.get(Corner.RR);
        return lf == null || rf == null || lr == null || rr == null ? null : new LiftPoints(lf, rf, lr, rr);
    }

    static BrakeDetails brake(ResultSet row) throws SQLException {
        return new BrakeDetails(
                constant(row, "parking_brake", BrakeDetails.ParkingBrake.class),
                number(row, "refinish_thickness_mm"),
                number(row, "disc_mass_kg"),
                number(row, "disc_diameter_mm"),
                number(row, "disc_temperature_limit_c"),
                whole(row, "pistons"),
                flag(row, "lining_riveted"),
                number(row, "parking_lining_minimum_mm"));
    }

    static FrictionBrake friction(ResultSet row) throws SQLException {
        var caliper = row.getString("caliper");
        var drumNewMm = number(row, "drum_new_mm");
        if (caliper == null) {
            return drumNewMm == null ? new UnknownBrake() : drum(row, drumNewMm);
        }
        return new DiscBrake(
                BrakeSpecification.Caliper.valueOf(caliper),
                row.getDouble("pad_new_mm"),
                row.getDouble("pad_minimum_mm"),
                row.getDouble("disc_new_mm"),
                row.getDouble("disc_minimum_mm"),
                row.getDouble("runout_limit_mm"),
                row.getDouble("thickness_variation_limit_mm"));
    }

    private static DrumBrake drum(ResultSet row, double drumNewMm) throws SQLException {
        return new DrumBrake(
                drumNewMm,
                row.getDouble("drum_discard_mm"),
                row.getDouble("lining_new_mm"),
                row.getDouble("lining_minimum_mm"));
    }

    static WheelDetails wheel(ResultSet row) throws SQLException {
        return new WheelDetails(mounting(row), row.getString("sensor_type"), CarReader.date(row, "sensor_battery_on"));
    }

    public static @Nullable Double number(ResultSet row, String column) throws SQLException {
        double value = row.getDouble(column);
        return row.wasNull() ? null : value;
    }

    static @Nullable Integer whole(ResultSet row, String column) throws SQLException {
        int value = row.getInt(column);
        return row.wasNull() ? null : (Integer) value;
    }

    public static <E extends Enum<E>> @Nullable E constant(ResultSet row, String column, Class<E> type)
            throws SQLException {
        var name = row.getString(column);
        return name == null ? null : Enum.valueOf(type, name);
    }

    public static @Nullable Boolean flag(ResultSet row, String column) throws SQLException {
        int value = row.getInt(column);
        return row.wasNull() ? null : value == 1;
    }

    private static @Nullable Mounting mounting(ResultSet row) throws SQLException {
        var text = row.getString("mounting");
        return text == null ? null : Mounting.parse(text);
    }
}
