package cornerbook.core.air;

import cornerbook.core.say.Said;

import cornerbook.core.why.Explained;
import cornerbook.core.why.Step;
import java.util.List;

/**
 * What a car needs after other wheels went on, so that its pressure warning knows them.
 *
 * @param sentence what to do, without its first capital and full stop
 */
public record SensorLearning(PressureWarning warning, String sentence, List<Said> cautions, List<Step> steps)
        implements Explained {
    private static final int WHEELS = 4;

    public SensorLearning {
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }

    /** By how the car warns; the vehicle maker's procedure outranks it. */
    public static SensorLearning of(PressureWarning warning) {
        boolean turning = warning.kind() == PressureWarning.Kind.INDIRECT;
        return new SensorLearning(
                warning,
                turning
                        ? "it goes by the turning of the wheels; reset it after the pressures are set"
                        : "other wheels are on; " + ofSensors(warning),
                List.of(),
                List.of(new Step(
                        "sensors that the car has to learn",
                        turning ? "none: the warning is indirect" : "one in each of the four wheels that go on",
                        turning ? 0 : WHEELS,
                        "",
                        "vehicle maker's procedure, as noted with the car")));
    }

    private static String ofSensors(PressureWarning warning) {
        var how = warning.learning();
        return how == null
                ? "look up how this car learns their sensors"
                : switch (how) {
                    case BY_ITSELF -> "the car learns their sensors by itself";
                    case BY_TOOL -> "their sensors have to be taught with the tool";
                    case BY_DRIVING -> "their sensors are learned while driving; tell the customer";
                };
    }
}
