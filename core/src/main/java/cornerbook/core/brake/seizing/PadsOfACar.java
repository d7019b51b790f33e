package cornerbook.core.brake.seizing;

/**
 * How the pads of one car hang together: some cars rust, whatever their use, and where one pad seizes others follow. Each
 * pad's hazard is the car's own factor Z times the one that its exposure gives, Z gamma of mean 1 and variance θ; the hazard
 * learned from all cars is the mean over Z. With S the survival that it gives (Clayton 1978, Biometrika 65:141; Duchateau and
 * Janssen, The Frailty Model, 2008, chapter 4),
 *
 * <pre>
 *   H = (S^−θ − 1)/θ,   P(all free until b | free now) = ((1/θ + Σ H_now)/(1/θ + Σ H_b))^(1/θ + m)        (1)
 * </pre>
 *
 * with the sums over all pads of the car, those of earlier services with what they had run when they were last seen, and m
 * of them seized. θ = {@value #FACTOR_VARIANCE}: cars differ as if their lives differed by half (common practice, no source).
 */
public final class PadsOfACar {
    /** θ of (1). */
    public static final double FACTOR_VARIANCE = 0.7;

    private double shape = 1 / FACTOR_VARIANCE;
    private double hazard = 1 / FACTOR_VARIANCE;
    private double hazardToCome;

    /** A pad of an earlier service, seized or cleaned by now, with the chance that it would have seized by then. */
    public void past(double chance, boolean seized) {
        hazard += ofCar(chance);
        shape += seized ? 1 : 0;
    }

    /**
     * A pad that is free now.
     *
     * @param chanceUntilNow that it would have seized by now, since its service
     * @param chanceUntilThen the same until the day asked
     */
    public void free(double chanceUntilNow, double chanceUntilThen) {
        hazard += ofCar(chanceUntilNow);
        hazardToCome += ofCar(chanceUntilThen) - ofCar(chanceUntilNow);
    }

    /**
     * How much of the car's factor comes from its own pads, 0 to 1, the rest from 1, that of cars like it. The factor's mean is
     * (1/θ + m) / (1/θ + Σ H) = c m/ΣH + (1 − c), with c = ΣH / (1/θ + ΣH) this share: the credibility of Bühlmann (1967,
     * ASTIN Bulletin 4:199; from memory).
     */
    public double ownShare() {
        return 1 - 1 / (FACTOR_VARIANCE * hazard);
    }

    /** That at least one pad that is free now seizes by the day asked. */
    public double chance() {
        return -Math.expm1(shape * Math.log(hazard / (hazard + Math.max(0, hazardToCome))));
    }

    /**
     * The chance of one pad at which, of so many pads cleaned now, at least one has seized with this chance: (1) turned round.
     *
     * @param chance above 0 and below 1
     * @param pads cleaned together, 1 or more
     */
    public double chanceOfOne(double chance, int pads) {
        double ofOne = hazard * Math.expm1(-Math.log1p(-chance) / shape) / pads;
        return -Math.expm1(-Math.log1p(FACTOR_VARIANCE * ofOne) / FACTOR_VARIANCE);
    }

    /** H of (1). */
    private static double ofCar(double chance) {
        return Math.expm1(-FACTOR_VARIANCE * Math.log1p(-Math.min(chance, 1 - 1e-12))) / FACTOR_VARIANCE;
    }
}
