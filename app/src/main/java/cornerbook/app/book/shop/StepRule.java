package cornerbook.app.book.shop;

import cornerbook.core.car.Vehicle;
import cornerbook.core.say.Said;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the order of the steps may not turn round, as each says. Common practice, no source; the vehicle manufacturer's procedure
 * comes first.
 */
public enum StepRule implements Said {
    LIFTED_BEFORE_WHEELS_OFF(SheetStep.LIFT, SheetStep.OFF),
    LIFTED_BEFORE_BRAKES(SheetStep.LIFT, SheetStep.BRAKES),
    /** Only where something inside a drum, or a disc that is one, is looked at. */
    OFF_BEFORE_DRUMS(SheetStep.OFF, SheetStep.BRAKES),
    BRAKES_BEFORE_PEDAL(SheetStep.BRAKES, SheetStep.PEDAL),
    OFF_BEFORE_ON(SheetStep.OFF, SheetStep.ON),
    BRAKES_BEFORE_ON(SheetStep.BRAKES, SheetStep.ON),
    ON_BEFORE_PRESSURE(SheetStep.ON, SheetStep.PRESSURE),
    ON_BEFORE_TORQUE(SheetStep.ON, SheetStep.TORQUE),
    PEDAL_BEFORE_DRIVE(SheetStep.PEDAL, SheetStep.BURNISH),
    PRESSURE_BEFORE_DRIVE(SheetStep.PRESSURE, SheetStep.BURNISH),
    TORQUE_BEFORE_DRIVE(SheetStep.TORQUE, SheetStep.BURNISH);

    private final SheetStep first;
    private final SheetStep then;

    StepRule(SheetStep first, SheetStep then) {
        this.first = first;
        this.then = then;
    }

    public SheetStep then() {
        return then;
    }

    /**
     * Whether it is asked.
     *
     * @param car null for whatever car: then only what every car needs
     */
    public boolean isAskedOf(@Nullable Vehicle car) {
        return this != OFF_BEFORE_DRUMS || (car != null && car.hasShoes());
    }

    private boolean isKeptBy(List<SheetStep> steps) {
        return steps.indexOf(first) < steps.indexOf(then);
    }

    /**
     * The first rule that an order breaks.
     *
     * @param car null for whatever car
     */
    static Optional<StepRule> brokenBy(List<SheetStep> steps, @Nullable Vehicle car) {
        return Arrays.stream(values())
                .filter(rule -> rule.isAskedOf(car) && !rule.isKeptBy(steps))
                .findFirst();
    }
}
