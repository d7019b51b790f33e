package cornerbook.core.tread.learn;

import cornerbook.core.tread.WearParameter;
import cornerbook.core.tread.WearParameters;
import java.util.EnumMap;

/** Wear parameters as one place on their scales, by {@link WearParameter}. */
final class LearningScale {
    static final int PARAMETERS = WearParameter.values().length;

    private LearningScale() {}

    static WearParameter parameter(int place) {
        return WearParameter.values()[place];
    }

    static double[] place(WearParameters parameters) {
        var at = new double[PARAMETERS];
        for (var parameter : WearParameter.values()) {
            at[parameter.ordinal()] = parameter.onScale(parameters.of(parameter));
        }
        return at;
    }

    static WearParameters parameters(double[] at) {
        var values = new EnumMap<WearParameter, Double>(WearParameter.class);
        for (var parameter : WearParameter.values()) {
            values.put(parameter, parameter.fromScale(at[parameter.ordinal()]));
        }
        return new WearParameters(values);
    }
}
