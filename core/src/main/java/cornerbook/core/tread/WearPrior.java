package cornerbook.core.tread;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * What is believed of wear parameters before any reading: each is log-normal about its centre, the slowing normal.
 *
 * @param spreads standard deviation of each on its scale
 */
public record WearPrior(WearParameters centre, Map<WearParameter, Double> spreads) {
    /** So little that readings do not move it. */
    private static final double ALL_BUT_KNOWN = 1e-4;

    public WearPrior {
        spreads = Map.copyOf(spreads);
    }

    /** For a drive layout and season kind, about the defaults. Spread: common practice, no source. */
    public static WearPrior about(WearParameters defaults) {
        return of(defaults, false);
    }

    /** For one tyre model, about what was learned from all models. Spread: common practice, no source. */
    public static WearPrior ofModel(WearParameters allModels) {
        return of(allModels, true);
    }

    /**
     * About what other shops' cars taught. A shop is taken to differ from others no more than a tyre model differs from all models:
     * common practice, no source. To that comes how surely it is known there; never wider than what is usual.
     *
     * @param centre what is expected here
     * @param there how surely it is known elsewhere
     */
    public static WearPrior ofOthers(WearParameters centre, LearnedWear there, boolean ofModel) {
        var spreads = new EnumMap<WearParameter, Double>(WearParameter.class);
        for (var parameter : WearParameter.values()) {
            double error = Objects.requireNonNull(there.standardErrors().get(parameter));
            spreads.put(parameter, Math.min(parameter.spread(ofModel), Math.hypot(error, parameter.spread(true))));
        }
        return new WearPrior(centre, spreads);
    }

    private static WearPrior of(WearParameters centre, boolean ofModel) {
        var spreads = new EnumMap<WearParameter, Double>(WearParameter.class);
        for (var parameter : WearParameter.values()) {
            spreads.put(parameter, parameter.spread(ofModel));
        }
        return new WearPrior(centre, spreads);
    }

    /** The same with a parameter that is known. */
    public WearPrior knowing(WearParameter parameter, double value) {
        var known = new EnumMap<>(spreads);
        known.put(parameter, ALL_BUT_KNOWN);
        return new WearPrior(centre.with(parameter, value), known);
    }

    public double spread(WearParameter parameter) {
        return Objects.requireNonNull(spreads.get(parameter));
    }
}
