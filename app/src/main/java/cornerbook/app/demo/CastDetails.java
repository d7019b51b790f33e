package cornerbook.app.demo;

import cornerbook.core.air.PressureWarning;
import cornerbook.core.brake.BrakeDetails;
import cornerbook.core.brake.BrakeDetails.ParkingBrake;
import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.brake.BrakeSpecification.Caliper;
import cornerbook.core.brake.fluid.FluidChange;
import cornerbook.core.brake.seizing.CarUse;
import cornerbook.core.car.AxleSpecification;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.VehicleDetails;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelDetails;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.lift.CarBody;
import cornerbook.core.lift.CarHeights;
import cornerbook.core.lift.LiftPoints;
import cornerbook.core.tyre.Mounting;
import cornerbook.core.wheelplan.AllWheelLimit;
import cornerbook.core.wheelplan.DifferenceLimits;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What somebody looked up of the invented cars; of two of them nobody did. */
final class CastDetails {
    private static final Set<Integer> NOBODY_LOOKED = Set.of(8, 12);
    private static final double FRONT_SHARE_OF_FRONT_DRIVE = 0.58;
    private static final double FRONT_SHARE_OF_OTHERS = 0.49;
    /** A car without load weighs about this share of its permitted axle loads. */
    private static final double KERB_SHARE = 0.76;

    private CastDetails() {}

    static CastMember lookedUp(CastMember member, LocalDate today) {
        if (NOBODY_LOOKED.contains(member.number())) {
            return member;
        }
        var mounting = mounting(member.vehicle());
        return new CastMember(
                member.number(),
                vehicle(member, mounting, today),
                member.customer(),
                member.sets().stream().map(set -> set(set, mounting, today)).toList(),
                member.odometerKm(),
                member.kmPerDay(),
                member.wearMmPer1000Km(),
                member.frontPadMm(),
                member.trouble(),
                member.latestVisit());
    }

    private static Vehicle vehicle(CastMember member, Mounting mounting, LocalDate today) {
        var car = member.vehicle();
        return new Vehicle(
                car.id(),
                car.name(),
                car.plate(),
                car.vin(),
                car.drive(),
                car.electric(),
                car.jurisdiction(),
                axle(car, Axle.FRONT, ParkingBrake.NONE),
                axle(car, Axle.REAR, rearParkingBrake(car, member.number())),
                car.fastener(),
                car.battery(),
                car.brakeFluid(),
                new VehicleDetails(
                        differences(car, member.number()),
                        new CarUse(0.42, member.number() % 3 == 0, car.electric() ? 0.3 : 0.6),
                        body(car),
                        new FluidChange(today.minusMonths(14 + 2L * (member.number() % 10)), 3.0),
                        new PressureWarning(PressureWarning.Kind.DIRECT, PressureWarning.Learning.BY_DRIVING),
                        mounting));
    }

    private static DifferenceLimits differences(Vehicle car, int number) {
        return new DifferenceLimits(allWheel(car, number), null, number == 7 ? Boolean.TRUE : null);
    }

    private static @Nullable AllWheelLimit allWheel(Vehicle car, int number) {
        if (car.drive() != DriveLayout.ALL) {
            return null;
        }
        return number == 3
                ? new AllWheelLimit(AllWheelLimit.Kind.ROLLING_CIRCUMFERENCE, 16)
                : new AllWheelLimit(AllWheelLimit.Kind.TREAD_DEPTH, 3);
    }

    private static CarBody body(Vehicle car) {
        return new CarBody(
                Math.rint(KERB_SHARE
                        * (Objects.requireNonNull(car.front().axleLoadKg())
                                + Objects.requireNonNull(car.rear().axleLoadKg()))),
                car.drive() == DriveLayout.FRONT ? FRONT_SHARE_OF_FRONT_DRIVE : FRONT_SHARE_OF_OTHERS,
                2680.0,
                1560.0,
                new CarHeights(150.0, 175.0, 1560.0),
                22.5,
                LiftPoints.symmetric(620, 2050, 1480));
    }

    private static AxleSpecification axle(Vehicle car, Axle axle, ParkingBrake parkingBrake) {
        var known = car.axle(axle);
        var brake = known.brake();
        return new AxleSpecification(
                known.axleLoadKg(),
                known.tyreSize(),
                known.loadIndex(),
                known.speedSymbol(),
                known.placardPressureKpa(),
                brake(brake, axle == Axle.FRONT, parkingBrake));
    }

    private static BrakeSpecification brake(BrakeSpecification brake, boolean front, ParkingBrake parkingBrake) {
        boolean motor =
                parkingBrake == ParkingBrake.MOTOR_ON_CALIPER || parkingBrake == ParkingBrake.MOTOR_PULLING_CABLES;
        if (brake.hasDrum()) {
            return new BrakeSpecification(
                    brake.friction(), motor, new BrakeDetails(parkingBrake, null, null, null, null));
        }
        return new BrakeSpecification(
                brake.caliper(),
                motor,
                brake.padNewMm(),
                brake.padMinimumMm(),
                brake.discNewMm(),
                brake.discMinimumMm(),
                brake.runoutLimitMm(),
                brake.thicknessVariationLimitMm(),
                new BrakeDetails(
                        parkingBrake, brake.discMinimumMm() + 0.5, front ? 8.6 : 7.9, front ? 320.0 : 310.0, null));
    }

    private static ParkingBrake rearParkingBrake(Vehicle car, int number) {
        if (!car.electric()) {
            return ParkingBrake.CABLE;
        }
        if (car.rear().brake().caliper() == Caliper.FIXED) {
            return ParkingBrake.DRUM_IN_DISC;
        }
        return number % 4 == 3 ? ParkingBrake.MOTOR_PULLING_CABLES : ParkingBrake.MOTOR_ON_CALIPER;
    }

    private static Mounting mounting(Vehicle car) {
        var fastener = Objects.requireNonNull(car.fastener());
        return new Mounting(
                5,
                Objects.requireNonNull(car.front().axleLoadKg()) > 1200 ? 120 : 108,
                fastener.thread().replace('×', 'X'),
                fastener.seat(),
                63.4,
                45,
                7.5);
    }

    /** Winter wheels are half an inch narrower. */
    private static WheelSet set(WheelSet set, Mounting own, LocalDate today) {
        var mounting = set.season() == SeasonKind.WINTER
                ? new Mounting(own.holes(), own.circleMm(), own.thread(), own.seat(), own.boreMm(), own.offsetMm(), 7)
                : own;
        var details = new WheelDetails(mounting, "433 MHz", today.minusMonths(46));
        List<Wheel> wheels = set.wheels().stream()
                .map(wheel -> new Wheel(wheel.tag(), wheel.tyre(), wheel.sensorId(), details))
                .toList();
        return new WheelSet(set.id(), set.season(), set.storePlace(), wheels);
    }
}
