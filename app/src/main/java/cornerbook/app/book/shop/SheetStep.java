package cornerbook.app.book.shop;

import cornerbook.app.book.work.WorkTick;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WorkStep;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The steps of the bay sheet, in the order in which it has them where a shop never said otherwise. */
@SuppressWarnings("ImmutableEnumChecker") // every set is given out as a copy
public enum SheetStep {
    RECEIVE(WorkTick.RECEIVED, EnumSet.of(WorkStep.RECEIVE)),
    LIFT(WorkTick.ROCKED, EnumSet.of(WorkStep.LOOK_ROUND, WorkStep.BEFORE_THE_BRAKES)),
    OFF(null, EnumSet.of(WorkStep.WHEELS_OFF)),
    /** A step for each corner, in the order in which the person walks round the car. */
    BRAKES(null, EnumSet.range(WorkStep.LOOK_OVER, WorkStep.CLOSED)),
    /** Pedal, parking brake and fluid. */
    PEDAL(null, EnumSet.of(WorkStep.PEDAL_AND_PARKING_BRAKE, WorkStep.BRAKE_FLUID)),
    ON(null, EnumSet.of(WorkStep.WHEELS_ON, WorkStep.LOOK_OVER_STORED, WorkStep.SIDEWALLS)),
    PRESSURE(null, EnumSet.of(WorkStep.TEMPERATURES, WorkStep.PRESSURE, WorkStep.SENSORS)),
    TORQUE(WorkTick.SECOND_CHECK, EnumSet.of(WorkStep.TORQUE)),
    BATTERY(null, EnumSet.of(WorkStep.BATTERY, WorkStep.BATTERY_CHARGED)),
    /** The drive that beds the brakes in. */
    BURNISH(WorkTick.BURNISHED, EnumSet.of(WorkStep.AFTER_THE_DRIVE)),
    DEPART(null, EnumSet.noneOf(WorkStep.class));

    private final @Nullable String tick;
    private final Set<WorkStep> work;

    SheetStep(@Nullable String tick, Set<WorkStep> work) {
        this.tick = tick;
        this.work = work;
    }

    /** Whether a shop may move it: a car is received first and handed over last. */
    public boolean isMovable() {
        return this != RECEIVE && this != DEPART;
    }

    /** The steps of the work whose readings are taken in it. */
    public Set<WorkStep> work() {
        return EnumSet.copyOf(work);
    }

    /** The step in which something is ticked, by the name of the tick. */
    public static SheetStep ofTick(String tick) {
        return Arrays.stream(values())
                .filter(step -> tick.equals(step.tick))
                .findFirst()
                // Only fasteners have more than one tick.
                .orElse(TORQUE);
    }

    /**
     * The step in which something is read at a visit. A wheel that the car came on and one that it did not come on are read alike,
     * but not in the same step.
     *
     * @param wheelTag empty where it is read of no wheel
     */
    public static SheetStep ofReading(Measure measure, String wheelTag, Visit visit) {
        return Arrays.stream(values())
                .filter(step -> step.work.stream()
                        .anyMatch(work -> measure.isReadIn(work) && isInHand(work.wheels(), wheelTag, visit)))
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException("measure is %s, expected one of a step".formatted(measure)));
    }

    private static boolean isInHand(WorkStep.Wheels wheels, String wheelTag, Visit visit) {
        return wheelTag.isEmpty()
                || switch (wheels) {
                    case ARRIVED -> visit.arrivedOn().containsValue(wheelTag);
                    case FROM_STORE -> !visit.arrivedOn().containsValue(wheelTag);
                    case LEAVING -> true;
                };
    }
}
