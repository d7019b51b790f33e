package cornerbook.app.desk.asked;

import cornerbook.app.request.Told;
import cornerbook.core.car.Measure;
import cornerbook.core.car.ServiceStep;
import cornerbook.core.car.ServiceSteps;
import cornerbook.core.car.Vehicle;
import cornerbook.core.corner.Corner;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The steps of the work at the brakes with the places for their readings, as the car's equipment asks for them. */
public record BrakeGroups(Vehicle vehicle) {
    /** One step, and a slot for each reading that it has. */
    public record Step(ServiceStep step, List<Slot> slots) {
        public Step {
            slots = List.copyOf(slots);
        }

        /** The first caution stands beside the title. */
        public String note() {
            return step.cautions().stream().findFirst().map(Told::say).orElse("");
        }

        /** The other cautions, then what goes where. */
        public List<String> hints() {
            return Stream.concat(
                            step.cautions().stream().skip(1).map(Told::say),
                            step.lubricants().stream()
                                    .map(lubricant -> Told.labels("app/desk/asked")
                                            .of(
                                                    "lubricant",
                                                    "place",
                                                    Told.begin(lubricant.place()),
                                                    "kind",
                                                    lubricant.kind(),
                                                    "reason",
                                                    lubricant.reason())))
                    .toList();
        }
    }

    public List<Step> at(Corner corner) {
        return steps(corner, ServiceSteps.atCorner(vehicle, corner.axle()));
    }

    public List<Step> before() {
        return steps(null, ServiceSteps.before(vehicle));
    }

    public List<Step> after() {
        return steps(null, ServiceSteps.after(vehicle));
    }

    public List<Step> ofVehicle() {
        return Stream.concat(before().stream(), after().stream())
                .filter(step -> !step.slots().isEmpty())
                .toList();
    }

    private static List<Step> steps(@Nullable Corner corner, List<ServiceStep> steps) {
        return steps.stream()
                .map(step ->
                        new Step(step, Slot.at(corner, null, step.measures().toArray(Measure[]::new))))
                .toList();
    }
}
