package cornerbook.app.desk.car;

import cornerbook.app.desk.Words;
import cornerbook.core.air.PressureWarning;
import cornerbook.core.brake.BrakeDetails;
import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.WheelDetails;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.lift.CarBody;
import cornerbook.core.wheelplan.AllWheelLimit;
import cornerbook.core.wheelplan.DifferenceLimits;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What is known of a car beyond its specification, in words; what is not is said too. */
public final class CarFacts {
    private static final String NOT_KNOWN = "not known";

    private CarFacts() {}

    /** One line. */
    public record Fact(String name, String words) {}

    public static List<Fact> of(Vehicle vehicle) {
        var details = vehicle.details();
        var fluid = details.fluidChange();
        var grade = vehicle.brakeFluid();
        var mounting = details.mounting();
        return List.of(
                new Fact("Wheels may differ by", differences(details.differences())),
                new Fact(
                        "Salt, garage, friction braking",
                        join(
                                share(details.use().saltShare(), "of the year on salt"),
                                details.use().garaged() == null
                                        ? null
                                        : details.use().garaged() ? "stands inside" : "stands outside",
                                share(details.use().frictionBrakeShare(), "of the braking by friction"))),
                new Fact("Mass and measures", body(details.body())),
                new Fact("Lift points", liftPoints(details.body())),
                new Fact(
                        "Discs",
                        Arrays.stream(Axle.values())
                                .map(axle -> (axle == Axle.FRONT ? "front: " : "rear: ")
                                        + disc(vehicle.axle(axle).brake().details()))
                                .collect(Collectors.joining("; "))),
                new Fact(
                        "Brake fluid",
                        join(
                                grade == null ? null : grade.label(),
                                fluid.changedOn() == null ? null : "changed " + Words.day(fluid.changedOn()),
                                fluid.intervalYears() == null
                                        ? null
                                        : "every " + Words.number(fluid.intervalYears()) + " years")),
                new Fact("Pressure warning", warning(details.pressureWarning())),
                new Fact("Hub and own wheels", mounting == null ? NOT_KNOWN : mounting.written()));
    }

    /** How the parking brake of an axle works, to stand behind the caliper. */
    public static String parkingBrake(BrakeSpecification brake) {
        var kind = brake.details().parkingBrake();
        if (kind == null) {
            return brake.electricParkingBrake() ? ", electric parking brake" : "";
        }
        return switch (kind) {
            case NONE -> "";
            case CABLE -> ", parking brake by cable";
            case DRUM_IN_DISC -> ", parking brake in a drum";
            case MOTOR_ON_CALIPER -> ", parking brake motor on the caliper";
            case MOTOR_PULLING_CABLES -> ", parking brake motor pulling cables";
        };
    }

    /** How the wheels of a set sit and what sensors they have. */
    public static String wheels(WheelSet set) {
        var words = set.wheels().stream()
                .map(wheel -> wheel(wheel.details()))
                .distinct()
                .toList();
        return words.isEmpty() ? "no wheels" : String.join("; ", words);
    }

    private static String wheel(WheelDetails details) {
        var mounting = details.mounting();
        return join(
                mounting == null ? "rim not known" : mounting.written(),
                details.sensorType() == null ? null : "sensor " + details.sensorType(),
                details.sensorBatteryOn() == null ? null : "its battery of " + Words.day(details.sensorBatteryOn()));
    }

    private static String differences(DifferenceLimits differences) {
        return join(
                differences.allWheel() == null ? null : allWheel(differences.allWheel()),
                differences.sameAxleMm() == null
                        ? null
                        : Words.number(differences.sameAxleMm()) + "\u00a0mm on one axle",
                differences.deeperPairAtRear() == null
                        ? null
                        : differences.deeperPairAtRear() ? "deeper pair at the rear" : "deeper pair at either axle");
    }

    private static String allWheel(AllWheelLimit limit) {
        return Words.number(limit.valueMm())
                + "\u00a0mm of "
                + (limit.kind() == AllWheelLimit.Kind.TREAD_DEPTH ? "tread depth" : "rolling circumference")
                + " among all four";
    }

    private static String body(CarBody body) {
        return join(
                measure(body.kerbMassKg(), "kg", "without load"),
                share(body.frontShare(), "of it in front"),
                measure(body.wheelbaseMm(), "mm", "wheelbase"),
                measure(body.trackMm(), "mm", "track"));
    }

    private static String liftPoints(CarBody body) {
        var points = body.liftPoints();
        return points == null
                ? NOT_KNOWN
                : Arrays.stream(Corner.values())
                        .map(corner -> "%s %s\u00a0mm behind the front axle, %s\u00a0mm %s"
                                .formatted(
                                        corner,
                                        Words.number(points.get(corner).behindFrontAxleMm()),
                                        Words.number(Math.abs(points.get(corner).leftOfCentreMm())),
                                        points.get(corner).leftOfCentreMm() < 0 ? "right" : "left"))
                        .collect(Collectors.joining("; "));
    }

    private static String disc(BrakeDetails details) {
        return join(
                measure(details.refinishThicknessMm(), "mm", "after machining at least"),
                measure(details.discMassKg(), "kg", "each"),
                measure(details.discDiameterMm(), "mm", "across"),
                measure(details.discTemperatureLimitC(), "°C", "at most"));
    }

    private static String warning(PressureWarning warning) {
        var parts = new ArrayList<@Nullable String>();
        var kind = warning.kind();
        if (kind != null) {
            parts.add(kind == PressureWarning.Kind.DIRECT ? "direct, a sensor in each wheel" : "indirect");
        }
        var learning = warning.learning();
        if (learning != null) {
            parts.add(
                    switch (learning) {
                        case BY_ITSELF -> "learns by itself";
                        case BY_TOOL -> "learns by tool";
                        case BY_DRIVING -> "learns by driving";
                    });
        }
        return join(parts.toArray(String[]::new));
    }

    private static @Nullable String measure(@Nullable Double value, String unit, String of) {
        return value == null ? null : Words.number(value) + "\u00a0" + unit + " " + of;
    }

    private static @Nullable String share(@Nullable Double share, String of) {
        return share == null ? null : Words.percent(share) + " " + of;
    }

    private static String join(@Nullable String... parts) {
        var known = Arrays.stream(parts).filter(Objects::nonNull).collect(Collectors.joining(", "));
        return known.isEmpty() ? NOT_KNOWN : known;
    }
}
