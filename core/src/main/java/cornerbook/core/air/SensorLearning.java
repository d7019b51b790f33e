package cornerbook.core.air;

import cornerbook.core.air.AirSaid.Computed;
import cornerbook.core.air.AirSaid.Origin;
import cornerbook.core.air.AirSaid.ToLearn;
import cornerbook.core.air.AirSaid.Way;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.List;

/**
 * What a car needs after other wheels went on, so that its pressure warning knows them.
 *
 * @param sentence what to do, without its first capital and full stop
 */
public record SensorLearning(PressureWarning warning, ToLearn sentence, Explanation explanation) implements Explained {
    private static final int WHEELS = 4;

    /** By how the car warns; the vehicle maker's procedure outranks it. */
    public static SensorLearning of(PressureWarning warning) {
        boolean turning = warning.kind() == PressureWarning.Kind.INDIRECT;
        return new SensorLearning(
                warning,
                turning ? ToLearn.RESET : ofSensors(warning),
                new Explanation(
                        List.of(),
                        List.of(new Step(
                                Computed.SENSORS_TO_LEARN,
                                turning ? Way.NO_SENSOR : Way.A_SENSOR_IN_EACH,
                                turning ? 0 : WHEELS,
                                "",
                                Origin.MAKERS_PROCEDURE))));
    }

    private static ToLearn ofSensors(PressureWarning warning) {
        var how = warning.learning();
        return how == null
                ? ToLearn.LOOK_UP
                : switch (how) {
                    case BY_ITSELF -> ToLearn.BY_ITSELF;
                    case BY_TOOL -> ToLearn.BY_TOOL;
                    case BY_DRIVING -> ToLearn.BY_DRIVING;
                };
    }
}
