package cornerbook.app.book.car;

import cornerbook.app.book.store.BookException;
import cornerbook.app.book.tool.ToolRows;
import cornerbook.app.book.work.StandingTicks;
import cornerbook.app.book.work.TickRow;
import cornerbook.app.book.work.WorkTick;
import cornerbook.core.battery.Chemistry;
import cornerbook.core.battery.RatingStandard;
import cornerbook.core.battery.TwelveVoltBattery;
import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.brake.fluid.BrakeFluid;
import cornerbook.core.car.AxleSpecification;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import cornerbook.core.car.JobCard;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Tyre;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import cornerbook.core.lift.LiftPoints;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.tool.ShopTool;
import cornerbook.core.torque.Seat;
import cornerbook.core.torque.WheelFastener;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Reads a car with all its visits back into the value that core knows. */
public final class CarReader {
    /** Whose visits are read. */
    private enum Of {
        VEHICLE("visit.vehicle_id"),
        VISIT("visit.id");

        private final String column;

        Of(String column) {
            this.column = column;
        }
    }

    /** That a row of readings was not moved to the right car since. */
    public static final String STANDS =
            "not exists (select 1 from moved_reading where moved_reading.reading_id = reading.id)";

    private final Handle handle;

    public CarReader(Handle handle) {
        this.handle = handle;
    }

    /**
     * The car of that id; empty when there is none.
     *
     * @throws BookException when a part of it is missing or cannot stand
     */
    public Optional<CarHistory> find(String vehicleId) {
        try {
            return handle.select("select id from vehicle where id = ?", vehicleId)
                    .mapTo(String.class)
                    .findFirst()
                    .map(this::get);
        } catch (IllegalArgumentException | DateTimeException e) {
            throw unreadable(vehicleId, e);
        }
    }

    /** Says that a row of a car cannot stand, and why as far as it is known. */
    public static BookException unreadable(String vehicleId, RuntimeException e) {
        return new BookException(new CarSaid.Unreadable(vehicleId, why(e)), e);
    }

    private static @Nullable Said why(RuntimeException e) {
        return switch (e) {
            case DateTimeParseException day -> new CarSaid.NoDay(day.getParsedString());
            case IllegalArgumentException value -> Refused.said(value);
            default -> null;
        };
    }

    /** The visit of that id alone; empty when there is none, or it was cancelled. */
    public Optional<Visit> findVisit(String visitId) {
        return visits(Of.VISIT, visitId).stream().findFirst();
    }

    private CarHistory get(String vehicleId) {
        var axles = new EnumMap<Axle, AxleSpecification>(Axle.class);
        query(
                "select * from vehicle_axle where vehicle_id = ?",
                vehicleId,
                row -> axles.put(Axle.valueOf(row.getString("axle")), axle(row)));
        var front = required(axles.get(Axle.FRONT), vehicleId, CarSaid.Part.FRONT_AXLE);
        var rear = required(axles.get(Axle.REAR), vehicleId, CarSaid.Part.REAR_AXLE);
        var vehicles = new ArrayList<Vehicle>();
        query(
                "select * from vehicle where id = ?",
                vehicleId,
                row -> vehicles.add(vehicle(row, front, rear, DetailRows.liftPoints(handle, vehicleId))));
        var customers = new ArrayList<Customer>();
        query(
                "select customer.* from customer join vehicle on vehicle.customer_id = customer.id where vehicle.id = ?",
                vehicleId,
                row -> customers.add(customer(row)));
        var customer = required(customers.isEmpty() ? null : customers.getFirst(), vehicleId, CarSaid.Part.CUSTOMER);
        return new CarHistory(vehicles.getFirst(), customer, sets(vehicleId), visits(Of.VEHICLE, vehicleId));
    }

    private static <T> T required(@Nullable T found, String vehicleId, CarSaid.Part part) {
        if (found == null) {
            throw new BookException(new CarSaid.PartMissing(vehicleId, part));
        }
        return found;
    }

    List<WheelSet> sets(String vehicleId) {
        var wheels = new HashMap<String, List<Wheel>>();
        query(
                "select * from wheel where vehicle_id = ? order by set_id, place_in_list",
                vehicleId,
                row -> wheels.computeIfAbsent(row.getString("set_id"), key -> new ArrayList<>())
                        .add(wheel(row)));
        var sets = new ArrayList<WheelSet>();
        query(
                "select * from wheel_set where vehicle_id = ? order by place_in_list",
                vehicleId,
                row -> sets.add(new WheelSet(
                        row.getString("id"),
                        SeasonKind.valueOf(row.getString("season")),
                        row.getString("store_place"),
                        wheels.getOrDefault(row.getString("id"), List.of()))));
        return sets;
    }

    private List<Visit> visits(Of of, String id) {
        var arrived = new HashMap<String, Map<Corner, String>>();
        var left = new HashMap<String, Map<Corner, String>>();
        query(
                "select visit_wheel.* from visit_wheel join visit on visit.id = visit_wheel.visit_id where " + of.column
                        + " = ?",
                id,
                row -> (row.getString("moment").equals("LEFT") ? left : arrived)
                        .computeIfAbsent(row.getString("visit_id"), key -> new EnumMap<>(Corner.class))
                        .put(Corner.valueOf(row.getString("corner")), row.getString("wheel_tag")));
        var readings = new HashMap<String, List<Reading>>();
        query(
                "select reading.* from reading join visit on visit.id = reading.visit_id where " + of.column
                        + " = ? and " + STANDS + " order by reading.visit_id, reading.place_in_list",
                id,
                row -> readings.computeIfAbsent(row.getString("visit_id"), key -> new ArrayList<>())
                        .add(reading(row)));
        var work = new HashMap<String, List<String>>();
        query(
                "select work_line.* from work_line join visit on visit.id = work_line.visit_id where " + of.column
                        + " = ? order by work_line.visit_id, work_line.place_in_list",
                id,
                row -> work.computeIfAbsent(row.getString("visit_id"), key -> new ArrayList<>())
                        .add(row.getString("line")));
        var tools = new HashMap<String, List<ShopTool>>();
        query(
                UsedToolLedger.query(of.column),
                id,
                row -> tools.computeIfAbsent(row.getString("visit_id"), key -> new ArrayList<>())
                        .add(ToolRows.tool(row)));
        var tightened = tightened(of, id, left);
        var visits = new ArrayList<Visit>();
        query(
                "select * from visit where " + of.column + " = ? and cancelled = 0 order by visit_date, odometer_km",
                id,
                row -> {
                    var visitId = row.getString("id");
                    visits.add(new Visit(
                            visitId,
                            LocalDate.parse(row.getString("visit_date")),
                            row.getDouble("odometer_km"),
                            arrived.getOrDefault(visitId, Map.of()),
                            left.getOrDefault(visitId, Map.of()),
                            readings.getOrDefault(visitId, List.of()),
                            new JobCard(
                                    row.getString("technician"),
                                    work.getOrDefault(visitId, List.of()),
                                    row.getString("notes"),
                                    date(row, "next_visit_due"),
                                    tools.getOrDefault(visitId, List.of())),
                            tightened.getOrDefault(visitId, Set.of())));
                });
        return visits;
    }

    /** By visit, the corners at which every fastener of the wheel that it left on was ticked. */
    private Map<String, Set<Corner>> tightened(Of of, String id, Map<String, Map<Corner, String>> left) {
        var ticks = new HashMap<String, List<WorkTick>>();
        var counts = new HashMap<String, Integer>();
        query(
                "select work_tick.*, vehicle.fastener_count from work_tick join visit on visit.id = work_tick.visit_id join vehicle on vehicle.id = visit.vehicle_id where "
                        + of.column
                        + " = ? and work_tick.wheel_tag is not null and vehicle.fastener_count is not null order by work_tick.visit_id, work_tick.place_in_list",
                id,
                row -> {
                    var visitId = row.getString("visit_id");
                    counts.put(visitId, row.getInt("fastener_count"));
                    ticks.computeIfAbsent(visitId, key -> new ArrayList<>()).add(TickRow.read(row, List.of()));
                });
        var tightened = new HashMap<String, Set<Corner>>();
        counts.forEach((visitId, count) -> tightened.put(
                visitId,
                StandingTicks.of(ticks.getOrDefault(visitId, List.of()))
                        .tightened(count, left.getOrDefault(visitId, Map.of()))));
        return tightened;
    }

    /** The person of a row of {@code customer}. */
    public static Customer customer(ResultSet row) throws SQLException {
        return new Customer(
                row.getString("id"),
                row.getString("name"),
                row.getString("phone"),
                row.getString("email"),
                row.getString("language"));
    }

    private static Vehicle vehicle(
            ResultSet row, AxleSpecification front, AxleSpecification rear, @Nullable LiftPoints liftPoints)
            throws SQLException {
        return new Vehicle(
                row.getString("id"),
                row.getString("name"),
                row.getString("plate"),
                row.getString("vin"),
                DetailRows.constant(row, "drive", DriveLayout.class),
                DetailRows.flag(row, "electric"),
                row.getString("jurisdiction"),
                front,
                rear,
                fastener(row),
                battery(row),
                DetailRows.constant(row, "brake_fluid", BrakeFluid.class),
                DetailRows.vehicle(row, liftPoints));
    }

    private static @Nullable WheelFastener fastener(ResultSet row) throws SQLException {
        var thread = row.getString("fastener_thread");
        return thread == null
                ? null
                : new WheelFastener(
                        thread,
                        row.getInt("fastener_count"),
                        Seat.valueOf(row.getString("fastener_seat")),
                        row.getDouble("fastener_torque_nm"),
                        row.getDouble("retorque_after_km"));
    }

    private static @Nullable TwelveVoltBattery battery(ResultSet row) throws SQLException {
        var chemistry = DetailRows.constant(row, "battery_chemistry", Chemistry.class);
        return chemistry == null
                ? null
                : new TwelveVoltBattery(
                        chemistry,
                        row.getDouble("battery_capacity_ah"),
                        DetailRows.number(row, "battery_cranking_a"),
                        DetailRows.constant(row, "battery_standard", RatingStandard.class),
                        date(row, "battery_installed_on"),
                        DetailRows.number(row, "battery_charge_below_v"));
    }

    private static AxleSpecification axle(ResultSet row) throws SQLException {
        return new AxleSpecification(
                DetailRows.number(row, "axle_load_kg"),
                row.getString("tyre_size"),
                DetailRows.whole(row, "load_index"),
                row.getString("speed_symbol"),
                DetailRows.number(row, "placard_pressure_kpa"),
                new BrakeSpecification(
                        DetailRows.friction(row), row.getInt("electric_parking_brake") == 1, DetailRows.brake(row)));
    }

    private static Wheel wheel(ResultSet row) throws SQLException {
        return new Wheel(
                row.getString("tag"),
                new Tyre(
                        row.getString("tyre_model"),
                        row.getString("tyre_size"),
                        DetailRows.whole(row, "load_index"),
                        row.getString("speed_symbol"),
                        row.getString("tin"),
                        DetailRows.flag(row, "directional"),
                        DetailRows.flag(row, "asymmetric"),
                        DetailRows.number(row, "new_depth_mm")),
                row.getString("sensor_id"),
                DetailRows.wheel(row));
    }

    public static Reading reading(ResultSet row) throws SQLException {
        return measured(row, row.getString("corrects"), row.getString("reason"));
    }

    /** What a row of readings or of rivals measured. */
    public static Reading measured(ResultSet row, @Nullable String corrects, @Nullable String reason)
            throws SQLException {
        var corner = row.getString("corner");
        var spot = row.getString("spot");
        return new Reading(
                row.getString("id"),
                Measure.valueOf(row.getString("measure")),
                corner == null ? null : Corner.valueOf(corner),
                row.getString("wheel_tag"),
                spot == null ? null : Spot.valueOf(spot),
                row.getDouble("amount"),
                row.getString("as_written"),
                corrects,
                reason);
    }

    static @Nullable LocalDate date(ResultSet row, String column) throws SQLException {
        var text = row.getString(column);
        return text == null ? null : LocalDate.parse(text);
    }

    /** What to do with one row. */
    private interface RowTaker {
        void take(ResultSet row) throws SQLException;
    }

    private void query(String sql, String argument, RowTaker taker) {
        handle.select(sql, argument)
                .map((row, context) -> {
                    taker.take(row);
                    return row.getRow();
                })
                .forEach(row -> {});
    }
}
