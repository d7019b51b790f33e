package cornerbook.app.desk.asked;

import cornerbook.core.car.Measure;
import cornerbook.core.car.Measure.Carrier;
import cornerbook.core.car.ServiceSteps;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WorkStep;
import cornerbook.core.car.WorkStep.Wheels;
import cornerbook.core.corner.Corner;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Every place for a reading that a visit has, by the car's configuration and the wheels that it came and leaves on. */
public record VisitSlots(Vehicle vehicle, Visit visit) {
    /** The wheel that the car came on; none where no wheel is known. */
    public List<Slot> arrived(Corner corner) {
        return ofWheels(corner, EnumSet.of(Wheels.ARRIVED));
    }

    /** The wheel that the car leaves on; none until it is recorded. */
    public List<Slot> leaving(Corner corner) {
        return ofWheels(corner, EnumSet.of(Wheels.FROM_STORE, Wheels.LEAVING));
    }

    private List<Slot> ofWheels(Corner corner, Collection<Wheels> wheels) {
        return Arrays.stream(Measure.values())
                .flatMap(measure -> Arrays.stream(WorkStep.values())
                        .filter(step -> step != WorkStep.LOOK_OVER)
                        .filter(step -> measure.isReadIn(step) && wheels.contains(step.wheels()))
                        .flatMap(step -> ofWheel(step, measure, corner)))
                .toList();
    }

    /** What is read of the wheels in one step. */
    public Stream<Slot> ofWheels(WorkStep step) {
        return Arrays.stream(Corner.values())
                .flatMap(corner -> step.measures(Carrier.WHEEL, vehicle, corner.axle()).stream()
                        .flatMap(measure -> ofWheel(step, measure, corner)));
    }

    private Stream<Slot> ofWheel(WorkStep step, Measure measure, Corner corner) {
        var tag = inHand(step.wheels(), corner);
        return tag == null || measure.carrier() != Carrier.WHEEL || !measure.isOn(vehicle, corner.axle())
                ? Stream.empty()
                : Slot.at(corner, tag, measure);
    }

    private @Nullable String inHand(Wheels wheels, Corner corner) {
        var arrived = visit.arrivedOn().get(corner);
        var leaves = visit.leftOn().get(corner);
        return switch (wheels) {
            case ARRIVED -> arrived;
            case LEAVING -> leaves;
            case FROM_STORE -> leaves == null || leaves.equals(arrived) ? null : leaves;
        };
    }

    /** The steps at a corner of the car; when it is looked over, its wheel comes first. */
    public List<AskedStep> atCorner(Corner corner) {
        return AskedStep.of(corner, ServiceSteps.atCorner(vehicle, corner.axle())).stream()
                .map(asked -> asked.step() == WorkStep.LOOK_OVER ? withItsWheel(asked, corner) : asked)
                .toList();
    }

    private AskedStep withItsWheel(AskedStep asked, Corner corner) {
        var ofWheel = asked.step().measures(Carrier.WHEEL, vehicle, corner.axle()).stream()
                .flatMap(measure -> ofWheel(asked.step(), measure, corner));
        return new AskedStep(
                asked.of(), Stream.concat(ofWheel, asked.slots().stream()).toList());
    }

    /** The steps of the whole car, those among them that are care and ask for nothing. */
    public List<AskedStep> ofVehicle() {
        return AskedStep.of(null, ServiceSteps.ofVehicle(vehicle));
    }

    /** All of them, corner by corner in the order of the work. */
    public List<Slot> all() {
        var atCorners = Arrays.stream(Corner.values())
                .flatMap(corner -> Stream.of(arrived(corner), slots(atCorner(corner)), leaving(corner)))
                .flatMap(List::stream);
        return Stream.concat(atCorners, slots(ofVehicle()).stream()).toList();
    }

    private static List<Slot> slots(List<AskedStep> steps) {
        return steps.stream().flatMap(step -> step.slots().stream()).toList();
    }
}
