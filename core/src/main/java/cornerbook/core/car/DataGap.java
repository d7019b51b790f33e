package cornerbook.core.car;

import cornerbook.core.corner.Axle;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What nobody has looked up of a car yet. Its words say what is not judged until then.
 *
 * @param axle null for what is of the whole car, or missing of both axles
 */
public record DataGap(Part part, @Nullable Axle axle) implements Said {
    /** The part of the car's data that is missing, in the order of its form, with the step at which it is met. */
    public enum Part {
        /** Which axles are driven. */
        DRIVE(WorkStep.LIFT),
        /** Electricity, an engine, or both. */
        POWER(WorkStep.LIFT),
        /** Whose law it is judged by. */
        PLACE(WorkStep.RECEIVE),
        AXLE_LOAD(WorkStep.PRESSURE),
        /** Load index and speed symbol that the placard asks for. */
        SERVICE(WorkStep.PRESSURE),
        PLACARD_PRESSURE(WorkStep.PRESSURE),
        BRAKE(WorkStep.PADS_AND_MOVEMENT),
        /** Nuts or bolts of the wheels, with their torque. */
        FASTENER(WorkStep.TORQUE),
        /** The 12 V battery as its label says. */
        BATTERY(WorkStep.BATTERY),
        /** Model, load index and speed symbol of a tyre, whether it is directional, and its depth when new. */
        TYRE(WorkStep.WHEELS_OFF);

        private final WorkStep step;

        Part(WorkStep step) {
            this.step = step;
        }

        /** Where it is met, and asked for. */
        public WorkStep step() {
            return step;
        }
    }

    /** Everything that a car's judges would use and nobody has looked up. */
    public static List<DataGap> of(CarHistory history) {
        var car = history.vehicle();
        var gaps = new ArrayList<DataGap>();
        Stream.of(
                        known(Part.DRIVE, car.drive() != null),
                        known(Part.POWER, car.drivesElectric() != null),
                        known(Part.PLACE, !car.jurisdiction().equals(Vehicle.ANY_PLACE)),
                        ofAxles(car, Part.AXLE_LOAD, axle -> axle.axleLoadKg() != null),
                        ofAxles(car, Part.SERVICE, axle -> axle.loadIndex() != null && axle.speedSymbol() != null),
                        ofAxles(car, Part.PLACARD_PRESSURE, axle -> axle.placardPressureKpa() != null),
                        ofAxles(car, Part.BRAKE, axle -> axle.brake().isKnown()),
                        known(Part.FASTENER, car.fastener() != null),
                        known(Part.BATTERY, car.battery() != null),
                        known(Part.TYRE, history.sets().stream().allMatch(DataGap::isKnown)))
                .forEach(gaps::addAll);
        return List.copyOf(gaps);
    }

    private static List<DataGap> known(Part part, boolean known) {
        return known ? List.of() : List.of(new DataGap(part, null));
    }

    private static List<DataGap> ofAxles(Vehicle car, Part part, Predicate<AxleSpecification> known) {
        var missing = Arrays.stream(Axle.values())
                .filter(axle -> !known.test(car.axle(axle)))
                .toList();
        return missing.size() == Axle.values().length
                ? List.of(new DataGap(part, null))
                : missing.stream().map(axle -> new DataGap(part, axle)).toList();
    }

    private static boolean isKnown(WheelSet set) {
        return set.wheels().stream()
                .map(Wheel::tyre)
                .filter(tyre -> !tyre.isTemporarySpare())
                .allMatch(tyre -> tyre.model() != null
                        && tyre.loadIndex() != null
                        && tyre.speedSymbol() != null
                        && tyre.directional() != null
                        && tyre.newDepthMm() != null);
    }
}
