package cornerbook.core.tread;

/**
 * What is believed of wear parameters before any reading: each is log-normal about its centre.
 *
 * @param rateSpread standard deviation of the logarithm of the two rates
 * @param otherSpread standard deviation of the logarithm of all others
 */
public record WearPrior(WearParameters centre, double rateSpread, double otherSpread) {
    public WearPrior {
        if (!(rateSpread > 0 && otherSpread > 0)) {
            throw new IllegalArgumentException(
                    "spreads are %s and %s, expected above 0".formatted(rateSpread, otherSpread));
        }
    }

    /** Spread of the logarithm of a parameter, by its place as {@link SetLikelihood} has it. */
    double spread(int parameter) {
        return parameter == SetLikelihood.FRONT_RATE || parameter == SetLikelihood.REAR_RATE ? rateSpread : otherSpread;
    }

    /** For a drive layout and season kind, about the defaults. Spread: common practice, no source. */
    public static WearPrior about(WearParameters defaults) {
        return new WearPrior(defaults, 0.4, 0.4);
    }

    /** For one tyre model, about what was learned from all models. Spread: common practice, no source. */
    public static WearPrior ofModel(WearParameters allModels) {
        return new WearPrior(allModels, 0.15, 0.2);
    }
}
