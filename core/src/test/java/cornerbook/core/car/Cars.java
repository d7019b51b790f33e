package cornerbook.core.car;

import cornerbook.core.battery.Chemistry;
import cornerbook.core.battery.RatingStandard;
import cornerbook.core.battery.TwelveVoltBattery;
import cornerbook.core.brake.BrakeDetails;
import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.brake.DrumBrake;
import cornerbook.core.brake.fluid.BrakeFluid;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.SetSpan;
import cornerbook.core.say.Said;
import cornerbook.core.torque.Seat;
import cornerbook.core.torque.WheelFastener;
import cornerbook.core.tread.judge.CornerContrast;
import cornerbook.core.tread.judge.SetForecast;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Invented cars for the tests of this feature. */
public final class Cars {
    private static final Said INVENTED = Said.verbatim("invented");
    public static final LocalDate AUTUMN = LocalDate.of(2026, 10, 20);

    public static final List<Limit> LIMITS = List.of(
            limit(Limit.Kind.TREAD_LEGAL, null, 1.6),
            limit(Limit.Kind.TREAD_SEASON, SeasonKind.WINTER, 4.0),
            limit(Limit.Kind.TREAD_SEASON, null, 3.0),
            limit(Limit.Kind.TREAD_AT_FITTING, null, 4.8),
            limit(Limit.Kind.TREAD_SAME_AXLE, null, 1.5),
            limit(Limit.Kind.TREAD_ALL_WHEEL, null, 2.4),
            limit(Limit.Kind.TREAD_DEEPER_PAIR, null, 1.5),
            limit(Limit.Kind.PAD_LEGAL, null, 1.6),
            limit(Limit.Kind.RIVETED_LINING_LEGAL, null, 1.0),
            limit(Limit.Kind.SEIZING_RISK, null, 0.1),
            limit(Limit.Kind.TYRE_AGE_INSPECT, null, 6),
            limit(Limit.Kind.TYRE_AGE_REPLACE, null, 10));

    private Cars() {}

    public static Limit limit(Limit.Kind kind, @Nullable SeasonKind season, double value) {
        return new Limit("*", kind, season, value, null, null, Said.verbatim("invented for tests"));
    }

    public static Vehicle vehicle() {
        return vehicle(BrakeFluid.DOT_4);
    }

    public static Vehicle vehicle(@Nullable BrakeFluid fluid) {
        return vehicle(fluid, brake(BrakeSpecification.Caliper.SLIDING, true, BrakeDetails.NOT_KNOWN));
    }

    public static Vehicle withBrake(BrakeSpecification.Caliper caliper, boolean electricParkingBrake) {
        return vehicle(BrakeFluid.DOT_4, brake(caliper, electricParkingBrake, BrakeDetails.NOT_KNOWN));
    }

    public static Vehicle withBrake(BrakeDetails details) {
        return vehicle(BrakeFluid.DOT_4, brake(BrakeSpecification.Caliper.SLIDING, true, details));
    }

    /** The same car with drums at the rear and no motor at any parking brake, an engine in front. */
    public static Vehicle withRearDrums(DrumBrake drum, BrakeDetails details) {
        return withRearBrake(new BrakeSpecification(drum, false, details));
    }

    /**
     * The same with discs at the rear that have the parking brake's shoes inside.
     *
     * @param minimumMm of their lining by the car's data; null where nobody has looked it up
     */
    public static Vehicle withRearParkingShoes(@Nullable Double minimumMm) {
        var details =
                new BrakeDetails(BrakeDetails.ParkingBrake.DRUM_IN_DISC, null, null, null, null, null, null, minimumMm);
        return withRearBrake(brake(BrakeSpecification.Caliper.SLIDING, false, details));
    }

    private static Vehicle withRearBrake(BrakeSpecification brake) {
        var car = combustion(withBrake(BrakeSpecification.Caliper.SLIDING, false));
        var rear = car.rear();
        return new Vehicle(
                car.id(),
                car.name(),
                car.plate(),
                car.vin(),
                DriveLayout.FRONT,
                false,
                car.jurisdiction(),
                car.front(),
                new AxleSpecification(
                        rear.axleLoadKg(),
                        rear.tyreSize(),
                        rear.loadIndex(),
                        rear.speedSymbol(),
                        rear.placardPressureKpa(),
                        brake),
                car.fastener(),
                car.battery(),
                car.brakeFluid(),
                car.details());
    }

    private static BrakeSpecification brake(
            BrakeSpecification.Caliper caliper, boolean electricParkingBrake, BrakeDetails details) {
        return new BrakeSpecification(caliper, electricParkingBrake, 11, 3, 28, 26, 0.05, 0.015, details);
    }

    private static Vehicle vehicle(@Nullable BrakeFluid fluid, BrakeSpecification brake) {
        var axle = new AxleSpecification(1100, "225/55R18", 98, "V", 250, brake);
        return new Vehicle(
                "car-1",
                "Invented hatchback",
                "INV 001",
                null,
                DriveLayout.ALL,
                true,
                "CA-QC",
                axle,
                axle,
                new WheelFastener("M14×1.5", 5, Seat.CONE, 140, 80),
                new TwelveVoltBattery(Chemistry.FLOODED, 60, 500.0, RatingStandard.EN, null),
                fluid,
                VehicleDetails.NOT_KNOWN);
    }

    /** The same car under another identity. */
    public static Vehicle withId(Vehicle car, String id) {
        return with(car, id, car.fastener(), car.battery());
    }

    public static Vehicle withFastener(@Nullable WheelFastener fastener) {
        var car = vehicle();
        return with(car, car.id(), fastener, car.battery());
    }

    public static Vehicle withBattery(TwelveVoltBattery battery) {
        var car = vehicle();
        return with(car, car.id(), car.fastener(), battery);
    }

    /** The same car with an engine that is cranked. */
    public static Vehicle combustion(Vehicle car) {
        return with(car, car.id(), false, car.fastener(), car.battery());
    }

    /** The same car driven by engine and high-voltage battery together. */
    public static Vehicle hybrid(Vehicle car) {
        return with(combustion(car), new VehicleDetails.Unseen(true, null));
    }

    /** The same car, of which nobody said what drives it. */
    public static Vehicle ofUnknownPower(Vehicle car) {
        return with(car, car.id(), null, car.fastener(), car.battery());
    }

    /** The same car, of which somebody has said how its brakes are closed. */
    public static Vehicle byWire(Vehicle car, boolean by) {
        return with(car, new VehicleDetails.Unseen(null, by));
    }

    private static Vehicle with(Vehicle car, VehicleDetails.Unseen unseen) {
        var known = car.details();
        return car.withDetails(new VehicleDetails(
                known.differences(),
                known.use(),
                known.body(),
                known.fluidChange(),
                known.pressureWarning(),
                known.mounting(),
                unseen,
                null));
    }

    private static Vehicle with(
            Vehicle car, String id, @Nullable WheelFastener fastener, @Nullable TwelveVoltBattery battery) {
        return with(car, id, car.electric(), fastener, battery);
    }

    private static Vehicle with(
            Vehicle car,
            String id,
            @Nullable Boolean electric,
            @Nullable WheelFastener fastener,
            @Nullable TwelveVoltBattery battery) {
        return new Vehicle(
                id,
                car.name(),
                car.plate(),
                car.vin(),
                car.drive(),
                electric,
                car.jurisdiction(),
                car.front(),
                car.rear(),
                fastener,
                battery,
                car.brakeFluid(),
                car.details());
    }

    public static WheelSet set(SeasonKind season, String prefix) {
        var wheels = new ArrayList<Wheel>();
        for (var corner : Corner.values()) {
            wheels.add(new Wheel(
                    prefix + corner, new Tyre("Invented tread", "225/55R18", 98, "V", null, false, false, 8.0), null));
        }
        return new WheelSet(season + "-set", season, "A-3", wheels);
    }

    /** Four wheels with these TINs in the order of the corners. */
    public static WheelSet withTins(@Nullable String... tins) {
        var wheels = new ArrayList<Wheel>();
        for (var corner : Corner.values()) {
            var tyre = new Tyre("Invented tread", "225/55R18", 98, "V", tins[corner.ordinal()], false, false, 8.0);
            wheels.add(new Wheel("W-" + corner, tyre, null));
        }
        return new WheelSet("WINTER-set", SeasonKind.WINTER, null, wheels);
    }

    public static Map<Corner, String> at(String prefix) {
        var wheels = new EnumMap<Corner, String>(Corner.class);
        for (var corner : Corner.values()) {
            wheels.put(corner, prefix + corner);
        }
        return wheels;
    }

    /** Summer wheels come off at {@code summerMm}, winter wheels go on at {@code winterMm}. */
    public static CarHistory changeOver(double summerMm, double winterMm, List<Reading> more) {
        var readings = new ArrayList<Reading>(more);
        for (var corner : Corner.values()) {
            for (var spot : Spot.values()) {
                readings.add(reading(Measure.TREAD_DEPTH, corner, "S-" + corner, spot, summerMm));
                readings.add(reading(Measure.TREAD_DEPTH, corner, "W-" + corner, spot, winterMm));
            }
        }
        var spring = new Visit(
                "v1",
                LocalDate.of(2026, 4, 20),
                40_000,
                at("W-"),
                at("S-"),
                List.of(),
                new JobCard("Ida", List.of(), null, null, List.of()),
                Set.of());
        var autumn = new Visit(
                "v2",
                AUTUMN,
                48_000,
                at("S-"),
                at("W-"),
                readings,
                new JobCard("Ida", List.of(), null, null, List.of()),
                Set.of());
        return history(spring, autumn);
    }

    /** A visit in autumn on the summer wheels at which this was read. */
    public static Visit visit(List<Reading> readings) {
        return new Visit("v", AUTUMN, 48_000, at("S-"), at("S-"), readings);
    }

    public static CarHistory history(Visit... visits) {
        return history(vehicle(), visits);
    }

    public static CarHistory history(Vehicle car, Visit... visits) {
        return new CarHistory(
                car,
                new Customer("c-1", "Invented Person", null, null),
                List.of(set(SeasonKind.SUMMER, "S-"), set(SeasonKind.WINTER, "W-")),
                List.of(visits));
    }

    public static Reading reading(
            Measure measure, @Nullable Corner corner, @Nullable String tag, @Nullable Spot spot, double value) {
        return new Reading(
                "r-%s-%s-%s-%s".formatted(measure, corner, tag, spot),
                measure,
                corner,
                tag,
                spot,
                value,
                String.valueOf(value),
                null,
                null);
    }

    /** A winter set as it stands at its corners, with what is said of it: season's minimum 4 mm, legal minimum 1.6 mm. */
    public static SetForecast forecast(
            SetSpan.Role role, double chance, List<SetForecast.TyreForecast> tyres, List<CornerContrast> contrasts) {
        return new SetForecast(
                set(SeasonKind.WINTER, "W-"),
                role,
                AUTUMN,
                AUTUMN.plusDays(177),
                4,
                1.6,
                chance,
                chance < 0.9 ? LocalDate.of(2026, 12, 1) : null,
                0.9,
                40,
                8,
                INVENTED,
                INVENTED,
                INVENTED,
                tyres,
                contrasts);
    }
}
