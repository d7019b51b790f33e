package cornerbook.app.desk.car;

import cornerbook.core.air.PressureWarning;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.wheelplan.AllWheelLimit;
import java.time.LocalDate;

/** What is known of a car beyond its specification, and what is refused of the data sheet of its kind. */
sealed interface CarSaid extends Said {
    record OfYearOnSalt(Amount share) implements CarSaid {}

    record Garaged(boolean inside) implements CarSaid {}

    record ByFriction(Amount share) implements CarSaid {}

    record OnOneAxle(Amount difference) implements CarSaid {}

    record DeeperPair(boolean atRear) implements CarSaid {}

    record AmongAllFour(Amount difference, AllWheelLimit.Kind kind) implements CarSaid {}

    record WithoutLoad(Amount mass) implements CarSaid {}

    record InFront(Amount share) implements CarSaid {}

    record Wheelbase(Amount length) implements CarSaid {}

    record Track(Amount length) implements CarSaid {}

    /**
     * Where a pad touches.
     *
     * @param aside from the middle
     * @param left of the middle, else right of it
     */
    record LiftPoint(Corner corner, Amount behind, Amount aside, boolean left) implements CarSaid {}

    record OfAxle(Axle axle, Said what) implements CarSaid {}

    record AfterMachining(Amount thickness) implements CarSaid {}

    record Each(Amount mass) implements CarSaid {}

    record Across(Amount diameter) implements CarSaid {}

    record AtMost(Amount temperature) implements CarSaid {}

    record FluidChanged(LocalDate day) implements CarSaid {}

    record FluidEvery(Amount years) implements CarSaid {}

    record WarningKind(boolean direct) implements CarSaid {}

    record Learns(PressureWarning.Learning learning) implements CarSaid {}

    record Sensor(String type) implements CarSaid {}

    record SensorBattery(LocalDate day) implements CarSaid {}

    record RimNotKnown() implements CarSaid {}

    record NoWheels() implements CarSaid {}

    record NotKnown() implements CarSaid {}

    record NothingCopied() implements CarSaid {}

    /**
     * How the brakes are closed.
     *
     * @param by whether by wire
     */
    record ByWire(boolean by) implements CarSaid {}

    record NoSuchSheet(String kind) implements CarSaid {}

    record NoCarForSheet(String car) implements CarSaid {}

    record NoCarOfKind(String kind) implements CarSaid {}

    record SheetKept(String name) implements CarSaid {}

    record CopiedFrom(String car) implements CarSaid {}
}
