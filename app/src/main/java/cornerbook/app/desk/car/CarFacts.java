package cornerbook.app.desk.car;

import cornerbook.app.request.Told;
import cornerbook.core.air.PressureWarning;
import cornerbook.core.battery.TwelveVoltBattery;
import cornerbook.core.brake.BrakeDetails;
import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.brake.DiscBrake;
import cornerbook.core.brake.DrumBrake;
import cornerbook.core.brake.UnknownBrake;
import cornerbook.core.car.AxleSpecification;
import cornerbook.core.car.Tyre;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.WheelDetails;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.PlaceOfLaw;
import cornerbook.core.lift.CarBody;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import cornerbook.core.torque.WheelFastener;
import cornerbook.core.wheelplan.DifferenceLimits;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What is known of a car beyond its specification; what is not is said too. */
public final class CarFacts {
    private CarFacts() {}

    /** One line. */
    public record Fact(String name, String words) {}

    public static List<Fact> of(Vehicle vehicle) {
        var details = vehicle.details();
        var use = details.use();
        var fluid = details.fluidChange();
        var grade = vehicle.brakeFluid();
        var mounting = details.mounting();
        var warning = details.pressureWarning();
        return List.of(
                fact("differences", differences(details.differences())),
                fact(
                        "use",
                        join(
                                share(use.saltShare(), CarSaid.OfYearOnSalt::new),
                                use.garaged() == null ? null : new CarSaid.Garaged(use.garaged()),
                                share(use.frictionBrakeShare(), CarSaid.ByFriction::new))),
                fact("body", body(details.body())),
                new Fact(Told.labels("app/desk/car").of("fact-lift-points"), liftPoints(details.body())),
                new Fact(
                        Told.labels("app/desk/car").of("fact-discs"),
                        eachSaid(Arrays.stream(Axle.values())
                                .filter(axle -> vehicle.axle(axle).brake().hasDisc())
                                .map(axle -> new CarSaid.OfAxle(
                                        axle, disc(vehicle.axle(axle).brake().details())))
                                .toList())),
                fact(
                        "brakes_by_wire",
                        details.unseen().brakesByWire() == null
                                ? new CarSaid.NotKnown()
                                : new CarSaid.ByWire(details.unseen().brakesByWire())),
                fact(
                        "brake_fluid",
                        join(
                                grade == null ? null : Said.verbatim(grade.label()),
                                fluid.changedOn() == null ? null : new CarSaid.FluidChanged(fluid.changedOn()),
                                fluid.intervalYears() == null
                                        ? null
                                        : new CarSaid.FluidEvery(Amount.exact(fluid.intervalYears(), "")))),
                fact(
                        "pressure_warning",
                        join(
                                warning.kind() == null
                                        ? null
                                        : new CarSaid.WarningKind(warning.kind() == PressureWarning.Kind.DIRECT),
                                warning.learning() == null ? null : new CarSaid.Learns(warning.learning()))),
                fact(
                        "copied_from",
                        details.copiedFrom() == null
                                ? new CarSaid.NothingCopied()
                                : new CarSaid.CopiedFrom(details.copiedFrom())),
                fact("mounting", mounting == null ? new CarSaid.NotKnown() : Said.verbatim(mounting.written())));
    }

    private static Fact fact(String key, Said words) {
        return new Fact(Told.labels("app/desk/car").of("fact", "name", key), Told.say(words));
    }

    /** How the caliper of an axle works, and the parking brake with it. */
    public static String caliper(BrakeSpecification brake) {
        if (!brake.isKnown()) {
            return notKnown();
        }
        var labels = Told.labels("app/desk/car");
        var kind = brake.details().parkingBrake();
        return labels.of(
                "parking-brake",
                "caliper",
                labels.of(
                        "caliper-kind",
                        "caliper",
                        brake.hasDrum() ? "DRUM" : brake.caliper().name()),
                "kind",
                kind != null ? kind.name() : brake.electricParkingBrake() ? "ELECTRIC" : "NONE");
    }

    /** Friction material of a pad or a shoe: new, and its minimum. */
    public static String friction(BrakeSpecification brake) {
        return switch (brake.friction()) {
            case DrumBrake drum -> newAndLimit(drum.liningNewMm(), drum.liningMinimumMm());
            case DiscBrake disc -> newAndLimit(disc.padNewMm(), disc.padMinimumMm());
            case UnknownBrake unknown -> notKnown();
        };
    }

    /** Thickness of a disc: new, and its minimum; of a drum its inside diameter, and that at which it is discarded. */
    public static String rotor(BrakeSpecification brake) {
        return switch (brake.friction()) {
            case DrumBrake drum -> newAndLimit(drum.drumNewMm(), drum.drumDiscardMm());
            case DiscBrake disc -> newAndLimit(disc.discNewMm(), disc.discMinimumMm());
            case UnknownBrake unknown -> notKnown();
        };
    }

    /** What the placard asks of the tyres of an axle. */
    public static String tyre(AxleSpecification axle) {
        return axle.loadIndex() == null && axle.speedSymbol() == null
                ? axle.tyreSize()
                : axle.tyreSize() + " " + Told.say(axle.service());
    }

    /** Model and size, as far as they are known. */
    public static String tyre(Tyre tyre) {
        return tyre.model() == null ? tyre.size() : tyre.model() + ", " + tyre.size();
    }

    public static String placard(AxleSpecification axle) {
        return Told.say(
                axle.placardPressureKpa() == null
                        ? new CarSaid.NotKnown()
                        : Amount.of(axle.placardPressureKpa(), "kPa"));
    }

    public static String axleLoad(AxleSpecification axle) {
        return Told.say(axle.axleLoadKg() == null ? new CarSaid.NotKnown() : Amount.exact(axle.axleLoadKg(), "kg"));
    }

    public static String drive(Vehicle vehicle) {
        var labels = Told.labels("app/desk/car");
        return labels.of(
                "drive-is",
                "drive",
                vehicle.drive() == null ? new CarSaid.NotKnown() : vehicle.drive(),
                "power",
                vehicle.electric() ? "ELECTRIC" : vehicle.highVoltage() ? "HYBRID" : "ENGINE");
    }

    public static String fastener(@Nullable WheelFastener fastener) {
        return fastener == null
                ? notKnown()
                : Told.labels("app/desk/car")
                        .of(
                                "fastener",
                                "n",
                                fastener.count(),
                                "thread",
                                fastener.thread(),
                                "seat",
                                fastener.seat(),
                                "torque",
                                Amount.of(fastener.torqueNm(), "N·m"),
                                "km",
                                Amount.exact(fastener.retorqueAfterKm(), "km"));
    }

    public static String battery(@Nullable TwelveVoltBattery battery) {
        if (battery == null) {
            return notKnown();
        }
        var labels = Told.labels("app/desk/car");
        var chemistry = labels.of("chemistry", "chemistry", battery.chemistry());
        var capacity = Amount.exact(battery.ratedCapacityAh(), "A·h");
        var cranking = battery.ratedCrankingCurrentA();
        return cranking == null
                ? labels.of("battery-capacity", "chemistry", chemistry, "capacity", capacity)
                : labels.of(
                        "battery-cranking",
                        "chemistry",
                        chemistry,
                        "capacity",
                        capacity,
                        "cranking",
                        Amount.exact(cranking, "A"),
                        "standard",
                        String.valueOf(battery.ratingStandard()));
    }

    public static String place(Vehicle vehicle) {
        return vehicle.jurisdiction().equals(Vehicle.ANY_PLACE)
                ? notKnown()
                : Told.say(PlaceOfLaw.of(vehicle.jurisdiction()));
    }

    private static String notKnown() {
        return Told.say(new CarSaid.NotKnown());
    }

    private static String newAndLimit(double newMm, double limitMm) {
        return Told.exact(newMm, "mm") + ", " + Told.exact(limitMm, "mm");
    }

    /** How the wheels of a set sit and what sensors they have. */
    public static String wheels(WheelSet set) {
        var words = set.wheels().stream()
                .map(wheel -> wheel(wheel.details()))
                .distinct()
                .toList();
        return words.isEmpty() ? Told.say(new CarSaid.NoWheels()) : eachSaid(words);
    }

    private static Said wheel(WheelDetails details) {
        var mounting = details.mounting();
        return join(
                mounting == null ? new CarSaid.RimNotKnown() : Said.verbatim(mounting.written()),
                details.sensorType() == null ? null : new CarSaid.Sensor(details.sensorType()),
                details.sensorBatteryOn() == null ? null : new CarSaid.SensorBattery(details.sensorBatteryOn()));
    }

    private static Said differences(DifferenceLimits differences) {
        var allWheel = differences.allWheel();
        return join(
                allWheel == null
                        ? null
                        : new CarSaid.AmongAllFour(Amount.exact(allWheel.valueMm(), "mm"), allWheel.kind()),
                measure(differences.sameAxleMm(), "mm", CarSaid.OnOneAxle::new),
                differences.deeperPairAtRear() == null ? null : new CarSaid.DeeperPair(differences.deeperPairAtRear()));
    }

    private static Said body(CarBody body) {
        return join(
                measure(body.kerbMassKg(), "kg", CarSaid.WithoutLoad::new),
                share(body.frontShare(), CarSaid.InFront::new),
                measure(body.wheelbaseMm(), "mm", CarSaid.Wheelbase::new),
                measure(body.trackMm(), "mm", CarSaid.Track::new));
    }

    private static String liftPoints(CarBody body) {
        var points = body.liftPoints();
        return points == null
                ? Told.say(new CarSaid.NotKnown())
                : eachSaid(Arrays.stream(Corner.values())
                        .map(corner -> new CarSaid.LiftPoint(
                                corner,
                                Amount.exact(points.get(corner).behindFrontAxleMm(), "mm"),
                                Amount.exact(Math.abs(points.get(corner).leftOfCentreMm()), "mm"),
                                points.get(corner).leftOfCentreMm() >= 0))
                        .toList());
    }

    private static Said disc(BrakeDetails details) {
        return join(
                measure(details.refinishThicknessMm(), "mm", CarSaid.AfterMachining::new),
                measure(details.discMassKg(), "kg", CarSaid.Each::new),
                measure(details.discDiameterMm(), "mm", CarSaid.Across::new),
                measure(details.discTemperatureLimitC(), "°C", CarSaid.AtMost::new));
    }

    private static @Nullable Said measure(@Nullable Double value, String unit, Function<Amount, Said> of) {
        return value == null ? null : of.apply(Amount.exact(value, unit));
    }

    private static @Nullable Said share(@Nullable Double share, Function<Amount, Said> of) {
        return share == null ? null : of.apply(Amount.of(share * 100, "%"));
    }

    /** What is known of these, one behind the other. */
    private static Said join(@Nullable Said... parts) {
        var known = new ArrayList<Said>();
        Arrays.stream(parts).filter(Objects::nonNull).forEach(known::add);
        return known.isEmpty() ? new CarSaid.NotKnown() : Listed.commas(known);
    }

    private static String eachSaid(List<? extends Said> parts) {
        return parts.stream().map(Told::say).collect(Collectors.joining("; "));
    }
}
